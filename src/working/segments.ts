import {
  type Clause,
  type EvenClause,
  firstRead,
  noteMoved,
  type RepeatClause,
  type RepeatRowsClause,
  type ScheduleClause,
  type WorkClause,
} from "../notation/index.ts";
import { isOneOff } from "./end-changes.ts";

/** A stretch of one instruction: clauses of its own row, rows repeated, rows worked even, a schedule of shaping rows. */
export type Segment =
  | { readonly is: "own"; readonly clauses: readonly Clause[] }
  | { readonly is: "repeat"; readonly clause: RepeatRowsClause }
  | { readonly is: "even"; readonly clause: EvenClause }
  | { readonly is: "schedule"; readonly clauses: readonly ScheduleClause[] }
  /** Several of these, so many times over: "(Plain rnd 3 times, Decrease rnd once) 8 times". */
  | { readonly is: "cycle"; readonly segments: readonly Segment[]; readonly clause: RepeatClause };

const NOTHING_MADE: ReadonlySet<Clause["kind"]> = new Set([
  "aside",
  "hook",
  "marker",
  "colour",
  "seam",
  "size-end",
  "facing",
  "do-not-turn",
  "do-not-join",
  "hold",
  "loops",
]);

const STITCHES: ReadonlySet<Clause["kind"]> = new Set([
  "work",
  "group",
  "repeat",
  "chain",
  "understood",
  "choice",
  "evenly",
  "in-pattern",
  "skip",
  "remark",
]);

/** Whether a clause has anything to do with rows. */
export const makesSomething = (clause: Clause): boolean => !NOTHING_MADE.has(clause.kind);

/** Whether a clause moves the hook along an edge. */
export const makesStitches = (clause: Clause): boolean => STITCHES.has(clause.kind);

/** An instruction cut into stretches, with what is said after them all. */
export interface Cut {
  readonly segments: readonly Segment[];
  /** A turn or fastening off said after rows that are repeated or worked even: it belongs to the last of them. */
  readonly turnsAfter: boolean;
  readonly fastensAfter: boolean;
  /** "Rep Row 2. 85 dc.": stitches with no place behind rows that are repeated are their count. */
  readonly countBehind: WorkClause | null;
}

const cuts = new WeakMap<readonly Clause[], Cut>();

/** Cuts the clauses of an instruction into stretches; the same clauses are cut once, for all sizes. */
export function cutSegments(clauses: readonly Clause[]): Cut {
  let cut = cuts.get(clauses);
  if (!cut) {
    cut = cutAnew(clauses);
    cuts.set(clauses, cut);
    const first = firstRead(clauses);
    if (first.clauses !== clauses) noteOwn(cut, cutSegments(first.clauses), first.by);
  }
  return cut;
}

/** Stretches of clauses that are a copy of others, moved, are copies of their stretches. */
function noteOwn(cut: Cut, first: Cut, by: number): void {
  cut.segments.forEach((segment, at) => {
    const other = first.segments[at];
    if (segment.is === "own" && other?.is === "own") noteMoved(segment.clauses, other.clauses, by);
  });
}

function cutAnew(clauses: readonly Clause[]): Cut {
  const segments: Segment[] = [];
  let own: Clause[] = [];
  const flush = (): void => {
    if (saysFabric(own)) own = [];
    if (own.some(makesSomething)) segments.push({ is: "own", clauses: own });
    own = [];
  };
  // Shaping told once for a row that has stitches of its own belongs to that row.
  const others = clauses.filter((clause) => clause.kind !== "schedule");
  const hasStitches =
    others.some((clause) => makesStitches(clause) && clause.kind !== "chain" && clause.kind !== "remark") &&
    !saysFabric(others);
  const rowsTold = clauses.some((clause) => clause.kind === "repeat-rows" || clause.kind === "even");
  for (const clause of clauses) {
    if (clause.kind === "schedule" && hasStitches && !rowsTold && isOneOff(clause)) {
      own.push(clause);
      continue;
    }
    if (
      clause.kind === "repeat" &&
      clause.body.some((each) => each.kind === "repeat-rows" || each.kind === "even")
    ) {
      flush();
      segments.push({ is: "cycle", segments: cutSegments(clause.body).segments, clause });
    } else if (clause.kind === "repeat-rows") {
      flush();
      segments.push({ is: "repeat", clause });
    } else if (clause.kind === "even") {
      flush();
      segments.push({ is: "even", clause });
    } else if (clause.kind === "schedule") {
      flush();
      const last = segments[segments.length - 1];
      if (last?.is === "schedule")
        segments[segments.length - 1] = { is: "schedule", clauses: [...last.clauses, clause] };
      else segments.push({ is: "schedule", clauses: [clause] });
    } else own.push(clause);
  }
  if (segments.length === 0) {
    return {
      segments: own.length > 0 ? [{ is: "own", clauses: own }] : [],
      turnsAfter: false,
      fastensAfter: false,
      countBehind: null,
    };
  }
  const making = own.filter(makesStitches);
  const [only] = making;
  const countBehind =
    making.length === 1 && only?.kind === "work" && only.count && only.target.ref === "here" ? only : null;
  // "Rep Rnd 4, join, ch 1": how the rounds end.
  const onlyEnds = own.some((clause) => clause.kind === "join") && making.every(isSingleChain);
  if (making.length > 0 && !countBehind && !onlyEnds) {
    segments.push({ is: "own", clauses: own });
    return { segments, turnsAfter: false, fastensAfter: false, countBehind: null };
  }
  return {
    segments,
    turnsAfter: own.some((clause) => clause.kind === "turn"),
    fastensAfter: own.some((clause) => clause.kind === "fasten-off"),
    countBehind,
  };
}

/** "Ch 1", which stands for nothing. */
function isSingleChain(clause: Clause): boolean {
  return (
    clause.kind === "chain" &&
    clause.count.values.length === 1 &&
    clause.count.values[0] === 1 &&
    !clause.countsAs
  );
}

/** "Work in sc" before shaping or even rows tells the fabric, not a row. */
function saysFabric(clauses: readonly Clause[]): boolean {
  const making = clauses.filter(makesStitches);
  const [only] = making;
  return making.length === 1 && only?.kind === "work" && only.target.ref === "here" && !only.count;
}

/** Whether the work is turned before the first stitch: "Row 4: Turn, ch 1, ...". */
export function turnsBeforeWork(clauses: readonly Clause[]): boolean {
  for (const clause of clauses) {
    if (clause.kind === "turn") return true;
    if (makesStitches(clause) && clause.kind !== "chain") return false;
  }
  return false;
}

/** "With RS facing". */
export function facingOf(clauses: readonly Clause[]): "RS" | "WS" | null {
  for (const clause of clauses) {
    if (clause.kind === "facing") return clause.side;
    if (clause.kind === "join-yarn" && clause.side) return clause.side;
  }
  return null;
}

const ofSizes = new WeakMap<readonly Clause[], (readonly Clause[] | undefined)[]>();

/** Clauses for other sizes are left out, so that a line for some sizes only asks nothing of the rest. */
export function clausesOfSize(clauses: readonly Clause[], size: number): readonly Clause[] {
  let bySize = ofSizes.get(clauses);
  if (!bySize) {
    bySize = [];
    ofSizes.set(clauses, bySize);
  }
  let own = bySize[size];
  if (!own) {
    own = clauses.some((clause) => clause.kind === "size-only")
      ? clauses.flatMap((clause) =>
          clause.kind === "size-only" ? (clause.sizes.includes(size) ? clause.body : []) : [clause],
        )
      : clauses;
    bySize[size] = own;
    const first = firstRead(clauses);
    if (own !== clauses && first.clauses !== clauses)
      noteMoved(own, clausesOfSize(first.clauses, size), first.by);
  }
  return own;
}
