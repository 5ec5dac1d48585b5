import type { Span } from "../base/index.ts";
import { valueAt } from "../base/index.ts";
import {
  type Amount,
  type Claim,
  type Clause,
  type Definition,
  firstRead,
  type Instruction,
  type PatternTree,
} from "../notation/index.ts";
import { hasStitch, stitchOf } from "../stitches/index.ts";
import type { ChainMeaningsSaid } from "./chain-meanings.ts";
import type { Choices } from "./choices.ts";
import { type ClaimContext, checkClaims } from "./claims.ts";
import { chainsByNotes, chainsCounted, countStitches } from "./counting.ts";
import { Edge } from "./edge.ts";
import { foundationFromBelow, freeLoopsOf, rowEndsOf, trustedEdge } from "./free-edges.ts";
import type { Table } from "./hands.ts";
import { namesDefined, tellsKindsApart } from "./kinds-told.ts";
import { saysParting } from "./named-parts.ts";
import { nameKey } from "./named-rows.ts";
import { PieceState, type WorkedRow } from "./piece.ts";
import { hasRemark } from "./remarks.ts";
import { firstColour, type RowAfter, type RowBefore, workRow } from "./row.ts";
import { type RowStart, startOfRow, type TurningHabit } from "./row-start.ts";
import { keepRow, Listener, recallRow, type Telling } from "./rows-kept.ts";
import type { SampleWidth } from "./samples.ts";
import { facingOf } from "./segments.ts";
import { isTrusted, isUnknown, UNKNOWN_EDGE } from "./targets.ts";
import { stopsMaker, type Trouble } from "./trouble.ts";

/** What one row, worked or not, did to the piece. */
export interface RowDone {
  readonly made: "nothing" | "foundation" | "row" | "round";
  readonly unknown: string | null;
  readonly trust: boolean;
  /** The row could not be worked: rows like it are not tried again. */
  readonly stop: boolean;
  readonly misnamed: readonly { readonly span: Span; readonly code: string }[];
  readonly startFlips: number;
}

/** Rows told by reference: which row of the pattern is worked again, and the how manieth time. */
export interface Again {
  readonly repeated: string;
  readonly time: number;
  /** Colour that the row was worked in, where the rows worked again are of several. */
  readonly colour?: string | null;
}

/** A row as it was tried, and how its printed counts differ. */
interface TriedRow {
  readonly after: RowAfter;
  readonly check: readonly Trouble[];
}

/** What does not change while one size is worked. */
export interface SizeContext {
  readonly tree: PatternTree;
  readonly size: number;
  readonly choices: Choices;
  readonly specials: ReadonlyMap<string, Definition>;
  readonly habit: TurningHabit;
  /** Names that rows are called by. */
  readonly called: ReadonlySet<string>;
  /** How wide the samples are on which stitch patterns without a width are worked. */
  readonly sampleWidth: SampleWidth;
  /** Tells the pattern's own stitches from those of any other pattern. */
  readonly definitions: string;
}

/** The work on one piece in one size: rows are worked one after the other, and the piece moves on. */
export class PieceWork {
  readonly state: PieceState;
  section: { readonly name: string; readonly at: number };
  private readonly memo = new Map<readonly Clause[], Map<string, RowAfter>>();
  private readonly telling: Telling;
  private readonly listener: Listener;
  private readonly table: Table;
  /** Turns since the yarn was joined, at the row that is being worked. */
  private flips = 0;
  private lookedBeyond = false;

  constructor(
    readonly context: SizeContext,
    name: string,
    at: number,
    private readonly meanings: ChainMeaningsSaid,
    /** The pieces before, last first: loops that they left free may be worked into. */
    private readonly before: () => readonly PieceState[] = () => [],
  ) {
    const state = new PieceState(name, at);
    this.state = state;
    this.section = { name, at };
    this.telling = { choices: context.choices, meanings, mainStitch: () => state.mainStitch };
    this.listener = new Listener(this.telling);
    this.table = this.layTable();
  }

  /** What printed counts are held against beside the edge. */
  get claimContext(): ClaimContext {
    const { size, choices, tree } = this.context;
    return { size, choices, notes: tree.notes };
  }

  /** Stitches of an edge as the pattern counts them, with the chains between them where it counts those. */
  countOf(edge: Edge): number {
    const { choices, tree } = this.context;
    const { stitches, chains } = countStitches(edge);
    if (chains === 0) return stitches;
    const counted =
      chainsByNotes(tree.notes) ?? (choices.taken.get("chains-in-counts") === 1 ? "all" : "none");
    return stitches + chainsCounted(edge, counted);
  }

  /** The value of a number in this size; null where the list has none for it. */
  number(amount: Amount): number | null {
    const value = valueAt(amount.values, this.context.size);
    return value === undefined ? null : (value ?? 0);
  }

  /**
   * Works one row, compares its printed counts, and moves the piece on.
   *
   * @param number    the row's number; null where it has none
   * @param troubles  takes what went wrong
   */
  workOneRow(
    instruction: Instruction,
    clauses: readonly Clause[],
    number: number | null,
    claims: readonly Claim[],
    troubles: Trouble[],
    again: Again | null,
  ): RowDone {
    const { state } = this;
    const { label } = instruction;
    const own: Trouble[] = [];
    const round =
      label?.is === "round" ||
      label?.rounds === true ||
      (label === null && state.wasRound && state.edge?.closed === true);
    const start = startOfRow(state, instruction, clauses, round, this.context.habit, own);
    const tried = this.tryDoubtful(this.tryRow(instruction, clauses, claims, start, round));
    const below = start.edge === null || isUnknown(start.edge);
    const inferred =
      below && tried.after.edge === null ? this.inferBelow(instruction, clauses, claims, start, round) : null;
    const { after, check } = inferred ? { after: inferred, check: [] } : leaveKinds(tried, start.edge);
    state.printed = null;
    // What stands on a row that could not be worked to its end is not at fault itself.
    const onAsFar = state.asFar && !start.rejoined && start.edge !== null;
    if (inferred) own.push(...tried.after.troubles.filter((trouble) => trouble.is === "worked-on-nothing"));
    if (!onAsFar) own.push(...after.troubles, ...check);
    const confirmed = claims.length > 0 && check.length === 0;
    const closesAgain =
      round && start.edge?.closed === true && after.edge?.closed === true && instruction.bothLayers !== true;
    for (const trouble of own) {
      // A row that stops early and comes to its printed count was meant so; a round that closes again was not.
      const meant =
        confirmed || (trouble.is === "left-over" && trouble.left > 1 && this.partsHere(after, round));
      if (trouble.is === "left-over" && !trouble.announced && meant && !closesAgain) continue;
      // Through both layers a tube of twelve takes six.
      if (trouble.is === "left-over" && instruction.bothLayers && trouble.left * 2 === trouble.have) continue;
      if (trouble.is === "evenly-unsaid" && claims.length > 0) continue;
      if (again === null || trouble.is === "count-differs" || !stopsMaker(trouble)) troubles.push(trouble);
      else if (trouble.is === "change-differs") troubles.push({ ...trouble, row: again.repeated });
      else {
        const { repeated, time } = again;
        troubles.push({ is: "repeated-row", span: instruction.span, repeated, time, inner: trouble });
      }
    }
    const done = {
      unknown: after.unknown,
      trust: false,
      stop: false,
      misnamed: after.misnamed,
      startFlips: start.flips,
    };
    // "Rows 5-6 (B): rep Rows 1 and 2" is worked in B whatever those rows say.
    const called = label?.colour ?? (again && (firstColour(instruction.clauses) ?? again.colour));
    const colour = called ?? after.colour ?? state.colour;
    if (after.foundation) {
      state.foundation = after.foundation;
      state.foundations.push({ edge: after.foundation, colour, at: instruction.span.from });
    }
    state.colour = (again && called) || (after.colourAfter ?? colour);
    if (!after.made && after.edge !== null) return { ...done, made: this.moveOn(after, clauses) };
    const failed = after.edge === null || (onAsFar && check.length > 0);
    const total = failed ? this.printedTotal(claims, start.edge) : null;
    const trusted = total === null ? null : trustedEdge(total, round || after.joined);
    // A row that is printed with a count is that or nothing.
    const asFar = claims.length === 0 ? after.asFar : null;
    const edge = (failed ? trusted : null) ?? after.edge ?? asFar ?? UNKNOWN_EDGE;
    const goesOn = onAsFar || after.edge === null;
    state.asFar = goesOn && trusted === null && !isUnknown(edge) && (failed || !confirmed);
    state.flips = start.flips;
    state.strand = start.strand;
    if (after.mainStitch && hasStitch(after.mainStitch)) state.mainStitch = stitchOf(after.mainStitch).family;
    const first = start.edge?.runs[0]?.unit[0];
    const intoRing = state.ring;
    this.addRow(instruction, clauses, edge, number, round, {
      singly: after.singly,
      colour,
      begins: state.fastened || clauses.some((clause) => clause.kind === "join-yarn"),
      onFoundation: first?.role === "foundation",
      joined: after.joined,
    });
    state.lastSide = label?.side ?? null;
    // The chains of a ring are left for nobody: the round went into the ring.
    if (after.held && !intoRing)
      state.held.push({ edge: after.held, row: number, side: label?.side ?? null });
    state.turnPending = after.turnsAfter > 0;
    state.chainBefore = after.chainAfter;
    state.fastened = after.fastened;
    state.lastJoined = after.joined;
    state.unjoined = !after.joined && (after.saidNoJoin || state.unjoined);
    state.lastUnread = after.unknown !== null || after.edge === null || isUnknown(edge) || state.asFar;
    if (state.lastUnread) state.everUnread = true;
    this.keepPrinted(check);
    const why =
      after.edge === null && after.troubles.length > 0
        ? "the row could not be worked"
        : onAsFar && (check.length > 0 || after.troubles.some(stopsMaker)) && this.asksBelow(clauses)
          ? "a row before it could not be worked to its end"
          : isUnknown(edge) || inferred
            ? "the edge below is not known"
            : null;
    return {
      ...done,
      made: round || after.joined ? "round" : "row",
      unknown: after.unknown ?? why,
      trust: (failed && total !== null) || onAsFar || inferred !== null,
      stop: after.edge === null,
    };
  }

  /** After a gap in the row numbers a row that does not come true is not held against an edge that may not be its own. */
  private tryDoubtful(tried: TriedRow): TriedRow {
    const { state } = this;
    const { after, check } = tried;
    const doubt = state.doubtful && after.made && (after.troubles.length > 0 || check.length > 0);
    state.doubtful = false;
    return doubt
      ? {
          after: { ...after, edge: null, held: null, troubles: [], unknown: "rows before it are missing" },
          check: [],
        }
      : tried;
  }

  /** Closes the last row to a round: the join stood in a sentence of its own. */
  closeLastRow(): void {
    const { state } = this;
    const last = state.rows.pop();
    if (!last) return;
    const edge = isUnknown(last.edge) ? last.edge : new Edge(last.edge.runs, true);
    state.rows.push({ ...last, edge, round: true });
    state.edge = edge;
    state.lastJoined = true;
  }

  /** Keeps a printed count that differed, to try the next row on it. */
  keepPrinted(found: readonly Trouble[]): void {
    const differs = found.find((trouble) => trouble.is === "count-differs" && trouble.of === null);
    const { edge } = this.state;
    if (differs?.is === "count-differs")
      this.state.printed = trustedEdge(differs.printed, edge?.closed ?? false);
    const change = found.find((trouble) => trouble.is === "change-differs");
    if (change?.is !== "change-differs" || !edge || isUnknown(edge)) return;
    const off = change.printed - change.worked;
    const total = countStitches(edge).stitches + (change.change === "inc" ? off : -off);
    this.state.printed = trustedEdge(total, edge.closed);
  }

  /** Puts a row that was worked onto the piece. */
  addRow(
    instruction: Instruction,
    clauses: readonly Clause[],
    edge: Edge,
    number: number | null,
    round: boolean,
    more: Partial<WorkedRow> = {},
  ): void {
    const { state, section } = this;
    state.rows.push({
      number,
      label: instruction.label?.words ?? "",
      heading: nameKey(headOf(this.context.tree.text, instruction)),
      section: section.name,
      sectionAt: section.at,
      clauses,
      round: round || edge.closed,
      edge,
      flips: state.flips,
      strand: state.strand,
      singly: { front: 0, back: 0 },
      at: instruction.span.from,
      rows: 1,
      untilCm: null,
      stitchesBefore: null,
      colour: state.colour,
      begins: false,
      onFoundation: false,
      joined: false,
      ...more,
    });
    state.edge = edge;
    state.number = number;
    state.ring = false;
    state.begin = null;
    if (clauses.some(goesAlongRowEnds)) state.crossed = true;
    if (state.rowsWorked !== null) state.rowsWorked += more.rows ?? (more.rows === null ? 0 : 1);
  }

  /** The printed total of a row, where there is one. */
  printedTotal(claims: readonly Claim[], below: Edge | null): number | null {
    for (const claim of claims) {
      const stitches = claim.parts.filter((part) => !["ch-sp", "unit", "ch"].includes(part.kind));
      if (claim.eachSide || stitches.length === 0 || stitches.length < claim.parts.length) continue;
      if (
        stitches.some(
          ({ kind }) =>
            this.context.specials.has(kind) ||
            (hasStitch(kind) && stitchOf(kind).special && stitchOf(kind).makes !== 1),
        )
      )
        continue;
      const values = stitches.map((part) => this.number(part.amount));
      if (values.some((value) => value === null)) continue;
      const total = values.reduce<number>((sum, value) => sum + (value ?? 0), 0);
      if (!claim.change) return total;
      if (!below || isUnknown(below)) continue;
      const before = countStitches(below).stitches;
      return claim.change === "inc" ? before + total : before - total;
    }
    return null;
  }

  /* --------------------------------------------------------------- helpers */

  /**
   * Works a row and holds its printed counts against it. Where the row before was printed otherwise than it was worked, and this
   * row comes true on what was printed, that was meant.
   */
  private tryRow(
    instruction: Instruction,
    clauses: readonly Clause[],
    claims: readonly Claim[],
    start: RowStart,
    round: boolean,
  ): TriedRow {
    const { state } = this;
    const before = {
      edge: start.edge,
      chainBefore: state.chainBefore,
      round,
      labelled: instruction.label !== null && instruction.label.is !== "foundation",
    };
    const after = this.workOrRecall(start.flips, before, clauses, instruction.span);
    const check = this.compare(after, claims, start.edge);
    const fine = after.troubles.length === 0 && check.length === 0 && after.unknown === null;
    if (fine || !state.printed || !start.edge || start.rejoined || claims.length === 0)
      return { after, check };
    const printed = start.turned ? state.printed.reversed() : state.printed;
    const second = this.workOrRecall(start.flips, { ...before, edge: printed }, clauses, instruction.span);
    const secondCheck = this.compare(second, claims, printed);
    const better = second.troubles.length === 0 && secondCheck.length === 0 && second.unknown === null;
    return better ? { after: second, check: [] } : { after, check };
  }

  /** Whether a row can only be worked where the number of stitches below is known. */
  private asksBelow(clauses: readonly Clause[]): boolean {
    const before = { edge: UNKNOWN_EDGE, chainBefore: null, round: false, labelled: true };
    return this.recall(0, before, clauses, NOWHERE).unknown !== null;
  }

  /**
   * A row on an edge that is not known, with its own count printed: where the words come to that count over one number of stitches
   * alone, so many there were.
   */
  private inferBelow(
    instruction: Instruction,
    clauses: readonly Clause[],
    claims: readonly Claim[],
    start: RowStart,
    round: boolean,
  ): RowAfter | null {
    const counted = claims.filter((claim) => !claim.change && !claim.eachSide && !claim.ofRow);
    const most = Math.max(
      0,
      ...counted.flatMap((claim) => claim.parts.map((part) => this.number(part.amount) ?? 0)),
    );
    if (most === 0 || most > MOST_INFERRED || hasRemark(clauses) || this.state.held.length > 0) return null;
    let found: RowAfter | null = null;
    for (let stitches = 1; stitches <= 2 * most + 12; stitches++) {
      const edge = trustedEdge(stitches, round);
      const after = this.recall(
        start.flips,
        {
          edge,
          chainBefore: this.state.chainBefore,
          round,
          labelled: instruction.label !== null && instruction.label.is !== "foundation",
        },
        clauses,
        instruction.span,
      );
      if (!after.edge || !after.made || after.troubles.length > 0 || after.unknown !== null) continue;
      if (this.compare(after, claims, edge).length > 0) continue;
      if (found?.edge && found.edge.key !== after.edge.key) return null;
      found = after;
    }
    return found;
  }

  /** The first row under "To Shape Neck" that ends with its turn leaves the rest for the other side. */
  private partsHere(after: RowAfter, round: boolean): boolean {
    const { state, section } = this;
    return (
      !round &&
      after.turnsAfter > 0 &&
      section.name !== state.name &&
      saysParting(section.name) &&
      !state.rows.some((row) => row.sectionAt === section.at)
    );
  }

  private compare(after: RowAfter, claims: readonly Claim[], below: Edge | null): Trouble[] {
    if (!after.edge || isUnknown(after.edge) || (!after.made && !after.foundation)) return [];
    return checkClaims(this.claimContext, after.edge, claims, below);
  }

  /** Where nothing was made but the hook moved: a foundation, a ring, a join. */
  private moveOn(after: RowAfter, clauses: readonly Clause[]): RowDone["made"] {
    const { state } = this;
    if (after.foundation || after.ring) {
      state.edge = after.ring ? after.edge : after.foundation;
      state.asFar = false;
      state.ring = after.ring;
      state.flips = 0;
      state.turnPending = false;
      state.fastened = after.fastened;
      return "foundation";
    }
    if (clauses.some((clause) => clause.kind === "join-yarn" || clause.kind === "along")) {
      state.begin = after.rest ?? after.edge;
      state.beginFacing = facingOf(clauses);
    }
    if (clauses.some((clause) => clause.kind === "turn")) state.turnPending = !state.turnPending;
    if (after.fastened) state.fastened = true;
    return "nothing";
  }

  /**
   * Works a row, or finds it worked before: a row's outcome depends on its words, the edge it starts on and this size's numbers.
   * Rows that look beyond their edge, into earlier rows or along the side, are worked each time.
   */
  private workOrRecall(flips: number, before: RowBefore, clauses: readonly Clause[], span: Span): RowAfter {
    const { edge } = before;
    if (edge && !tellsKindsApart(clauses, this.context.specials)) {
      const after = this.recall(flips, { ...before, edge: edge.ofOneKind }, clauses, span);
      // What stays of the edge below keeps its kinds.
      if (after.made && after.held === null && after.rest === null) return after;
    }
    return this.recall(flips, before, clauses, span);
  }

  private recall(flips: number, before: RowBefore, clauses: readonly Clause[], span: Span): RowAfter {
    const { state } = this;
    const { size, specials, definitions, sampleWidth } = this.context;
    const chain = before.chainBefore;
    const chained = chain ? `${chain.chains}:${chain.parts?.join() ?? "?"}` : "";
    const start = `${before.edge?.key ?? ""}|${before.round}|${before.labelled}|${chained}`;
    const key = `${start}|${state.mainStitch}|${this.meanings.version}`;
    let known = this.memo.get(clauses);
    if (!known) {
      known = new Map();
      this.memo.set(clauses, known);
    }
    const found = known.get(key);
    if (found) return found;
    const { by } = firstRead(clauses);
    const whole = `${start}|${size}|${sampleWidth}|${span.from - by}|${span.to - by}|${definitions}`;
    const defined = namesDefined(clauses, specials);
    const kept = recallRow(clauses, whole, this.telling, defined);
    if (kept) {
      known.set(key, kept);
      return kept;
    }
    this.lookedBeyond = false;
    this.flips = flips;
    this.listener.begin();
    const after = workRow(this.table, before, clauses, span);
    if (this.lookedBeyond) return after;
    keepRow(clauses, whole, this.listener, after);
    known.set(key, after);
    return after;
  }

  private layTable(): Table {
    const { state, listener } = this;
    const { size, specials, sampleWidth } = this.context;
    const beyond = <T>(look: () => T): T => {
      this.lookedBeyond = true;
      return look();
    };
    return {
      choices: listener.choices,
      meanings: listener.meanings,
      mainStitch: () => listener.mainStitch(),
      size,
      sampleWidth,
      specials,
      manner: {
        get chainsArePlaces() {
          return listener.choices.take("chains-are-places", 2, NOWHERE) === 0;
        },
      },
      edgeOfRow: (number) =>
        beyond(() => {
          const row = state.rowNumbered(number);
          if (!row) return null;
          return (row.flips + this.flips) % 2 === 0 ? row.edge : row.edge.reversed();
        }),
      freeLoops: (number, loops) =>
        beyond(() => {
          for (const piece of [state, ...this.before()]) {
            const edge = freeLoopsOf(piece, number, loops, piece === state ? this.flips : null);
            if (edge) return edge;
          }
          return [state, ...this.before()].some((piece) => piece.everUnread) ? UNKNOWN_EDGE : null;
        }),
      rowEnds: () => beyond(() => (state.rowsWorked ? rowEndsOf(state.rowsWorked) : UNKNOWN_EDGE)),
      foundation: () => beyond(() => foundationFromBelow(state)),
    };
  }
}

/** On an edge whose kinds of stitch were taken on trust no count of a kind is held against a row. */
function leaveKinds(tried: TriedRow, below: Edge | null): TriedRow {
  if (!below || isUnknown(below) || !isTrusted(below)) return tried;
  if (!tried.check.some((trouble) => trouble.is === "count-differs" && trouble.of !== null)) return tried;
  const unknown = "the edge was taken on trust";
  return { after: { ...tried.after, edge: null, held: null, troubles: [], unknown }, check: [] };
}

const goesAlongRowEnds = (clause: Clause): boolean =>
  (clause.kind === "along" && clause.edge === "row-ends") ||
  (clause.kind === "work" && clause.target.what.is === "row-end");

/** The words of a row up to its first clause. */
function headOf(text: string, { span, clauses }: Instruction): string {
  const first = clauses[0]?.span.from ?? span.to;
  return text.slice(span.from, Math.min(first, span.from + 80));
}

/** Rows with more stitches are not tried over every number of stitches below. */
const MOST_INFERRED = 160;

const NOWHERE: Span = { from: 0, to: 0 };
