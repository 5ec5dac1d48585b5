import type { Span } from "../base/index.ts";
import type { Claim, Instruction } from "../notation/index.ts";
import type { NamedPart } from "./named-parts.ts";
import type { WorkedRow } from "./piece.ts";
import type { PieceWork, RowDone } from "./piece-work.ts";
import { workRowsAgain } from "./rows-again.ts";
import { workEven, workSchedules } from "./rows-shaped.ts";
import type { Segment } from "./segments.ts";
import type { Trouble } from "./trouble.ts";

/** What the plan of a line may ask of the pattern beyond its own piece. */
export interface PatternRows {
  /** A piece or section by name. */
  part(name: string): NamedPart | undefined;
  /** A row of this number in an earlier piece. */
  elsewhere(number: number): WorkedRow | undefined;
  /** A row by a name of its own. */
  called(name: string): WorkedRow | undefined;
  /** The rows of a stitch pattern by its name. */
  stitchPattern(name: string): readonly WorkedRow[];
}

/** What the rows of one instruction came to. */
export interface PlanDone {
  readonly rows: number;
  readonly made: RowDone["made"];
  readonly unknown: string | null;
  readonly trust: boolean;
  readonly flipsFirst: number | null;
  readonly misnamed: readonly { readonly span: Span; readonly code: string }[];
}

/** More rows than any piece has. */
const MOST_ROWS = 5000;

/** The rows of one instruction in one size, stretch by stretch: its own, rows repeated, rows worked even, schedules. */
export class Plan {
  private rows = 0;
  private made: RowDone["made"] = "nothing";
  private unknown: string | null = null;
  private trust = false;
  private flipsFirst: number | null = null;
  private readonly misnamed: { readonly span: Span; readonly code: string }[] = [];

  constructor(
    private readonly piece: PieceWork,
    private readonly pattern: PatternRows,
    private readonly instruction: Instruction,
    private readonly claims: readonly Claim[],
    private readonly troubles: Trouble[],
    private number: number | null,
  ) {}

  /** @param count  rows the label asks for; null where it does not */
  work(segments: readonly Segment[], count: number | null): PlanDone {
    this.workSegments(segments, segments.length === 1 ? count : null, this.claims);
    const { rows, made, unknown, trust, flipsFirst, misnamed } = this;
    return { rows, made, unknown, trust, flipsFirst, misnamed };
  }

  private workSegments(segments: readonly Segment[], count: number | null, claims: readonly Claim[]): void {
    for (const [at, segment] of segments.entries()) {
      switch (segment.is) {
        case "own":
          this.workOwn(segment, count, claims, claimsBehind(segments, at, claims));
          break;
        case "repeat":
          this.workAgain(segment, count, claims);
          break;
        case "cycle": {
          const { stop } = segment.clause;
          const times = stop.by === "times" ? (this.piece.number(stop.times) ?? 0) : 1;
          for (let time = 0; time < Math.min(times, MOST_ROWS); time++)
            this.workSegments(segment.segments, null, []);
          if (times === 0 && this.made === "nothing") this.made = this.piece.state.wasRound ? "round" : "row";
          break;
        }
        case "even":
        case "schedule":
          this.workShaped(segment, count);
      }
    }
  }

  private workOwn(
    segment: Extract<Segment, { is: "own" }>,
    count: number | null,
    claims: readonly Claim[],
    behind: readonly Claim[],
  ): void {
    const { piece, instruction, troubles } = this;
    const times = count !== null && instruction.label ? Math.min(count, MOST_ROWS) : 1;
    for (let time = 0; time < times; time++) {
      const indexed = claims.filter((claim) => claim.index === time);
      const own = indexed.length > 0 ? indexed : time === times - 1 ? behind : [];
      const done = piece.workOneRow(instruction, segment.clauses, this.number, own, troubles, null);
      // "Fasten off" behind several rows comes after the last of them.
      if (time < times - 1) piece.state.fastened = false;
      this.flipsFirst ??= done.startFlips;
      this.misnamed.push(...done.misnamed);
      this.unknown ??= done.unknown;
      this.trust ||= done.trust;
      if (done.made !== "nothing") this.made = done.made;
      if (done.made === "row" || done.made === "round") {
        this.rows++;
        if (this.number !== null) this.number++;
      }
      if (done.stop) return;
    }
  }

  private workAgain(
    segment: Extract<Segment, { is: "repeat" }>,
    count: number | null,
    claims: readonly Claim[],
  ): void {
    const { piece, instruction, troubles } = this;
    const done = workRowsAgain(
      piece,
      instruction,
      segment.clause,
      this.number,
      count,
      claims,
      this.pattern,
      troubles,
    );
    this.flipsFirst ??= done.startFlips;
    this.unknown ??= done.unknown;
    this.trust ||= done.trust;
    this.rows += done.rows;
    this.number = done.next;
    this.made = piece.state.wasRound ? "round" : "row";
  }

  private workShaped(segment: Extract<Segment, { is: "even" | "schedule" }>, count: number | null): void {
    const { piece, instruction, troubles } = this;
    const { label } = instruction;
    const asked = label && (label.rows.length > 0 || label.next) ? count : null;
    const done =
      segment.is === "even"
        ? workEven(piece, instruction, segment.clause, asked, this.pattern, troubles)
        : workSchedules(piece, instruction, segment.clauses, asked, troubles);
    this.flipsFirst ??= piece.state.flips;
    this.unknown ??= done.unknown;
    this.rows += done.rows ?? 1;
    this.number = this.number === null || done.rows === null ? null : this.number + done.rows;
    if (done.rows !== 0) this.made = piece.state.wasRound ? "round" : "row";
  }
}

/** The printed counts that stand behind one stretch of an instruction: "25 sts. Rep last row 5 times. 15 sts." */
export function claimsBehind(
  segments: readonly Segment[],
  at: number,
  claims: readonly Claim[],
): readonly Claim[] {
  const next = segments[at + 1];
  const from = at === 0 ? Number.NEGATIVE_INFINITY : startOf(segments[at]);
  const to = next ? startOf(next) : Number.POSITIVE_INFINITY;
  return claims.filter(
    (claim) => claim.index === undefined && claim.span.from >= from && claim.span.from < to,
  );
}

function startOf(segment: Segment | undefined): number {
  if (!segment) return Number.POSITIVE_INFINITY;
  const first = segment.is === "own" || segment.is === "schedule" ? segment.clauses[0] : segment.clause;
  return first?.span.from ?? Number.POSITIVE_INFINITY;
}
