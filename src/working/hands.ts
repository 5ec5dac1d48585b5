import { type Span, valueAt } from "../base/index.ts";
import type { Amount, Clause, Definition, LoopWord, Target } from "../notation/index.ts";
import { workChain } from "./chains.ts";
import type { Choices } from "./choices.ts";
import { Cursor, Edge, EdgeMaker, flatten, type Position, type Run } from "./edge.ts";
import { changeAtEnds } from "./end-changes.ts";
import { workEvenly } from "./evenly.ts";
import { withoutGroupCut } from "./first-group.ts";
import { workGroup } from "./groups.ts";
import { togetherFrom, workTogether } from "./interleaving.ts";
import { closeRound, joinYarn, workAlong } from "./joining.ts";
import { placeMarker } from "./marks.ts";
import type { Place } from "./place.ts";
import { workRepeat } from "./repeats.ts";
import type { SampleWidth } from "./samples.ts";
import { countLeft, type Manner, type Seeker, seekAny } from "./seeking.ts";
import { leaveStitches, skipPlaces } from "./skips.ts";
import { workStitches } from "./stitching.ts";
import { needSeeker, seekerFor } from "./targets.ts";
import { Stuck, type Trouble, Unknowable } from "./trouble.ts";

/** What a starting or turning chain was said to stand for, by the text itself. */
export interface ChainMeanings {
  /** Codes it stands for; empty: it does not count; null: nothing was said. */
  said(chains: number, stitch: string | null): readonly string[] | null;
  say(chains: number, stitch: string | null, parts: readonly string[]): void;
  /** Notes what a row says of its chain; true where the text said otherwise before. */
  differs(chains: number, stitch: string | null, counts: boolean): boolean;
}

/** What lies on the maker's table beside the row: the size, the readings taken, the stitches the pattern defines. */
export interface Table {
  readonly size: number;
  readonly sampleWidth: SampleWidth;
  readonly choices: Pick<Choices, "take">;
  readonly manner: Manner;
  readonly specials: ReadonlyMap<string, Definition>;
  readonly meanings: ChainMeanings;
  /** The edge of an earlier row of the piece as it would be seen now, null where there is no such row. */
  edgeOfRow(number: number): Edge | null;
  /** Loops left free by a row ("front" or "back" as seen now), null where it left none. */
  freeLoops(number: number | null, loops: LoopWord | undefined): Edge | null;
  /** The stitch the piece is mostly made of, for an increase before any stitch was named. */
  mainStitch(): string;
  /** Rows worked so far in the piece; the places along its side. */
  rowEnds(): Edge;
  /** The foundation chain from its other side, null where the piece has none. */
  foundation(): Edge | null;
}

/** A chain made at the end of a row, before the turn. */
export interface ChainBefore {
  readonly chains: number;
  readonly parts: readonly string[] | null;
  readonly span: Span;
}

/** Where a row begins. */
export interface RowStart {
  /** The edge as the maker sees it; null before a foundation. */
  readonly edge: Edge | null;
  readonly chainBefore: ChainBefore | null;
  readonly span: Span;
  /** Whether the label calls it a round. */
  readonly round: boolean;
  /** Whether it has a label that is not the foundation's. */
  readonly labelled: boolean;
}

/** Where the last stitch went. */
export type Entered = "nowhere" | "place" | "ring";

/** The hands of a maker at work on one row of one size: where the hook is, and what has been made. */
export class Hands {
  below: Edge | null;
  cursor: Cursor | null;
  out = new EdgeMaker();
  entered: Entered = "nowhere";
  /** The last stitch went into a space. */
  enteredSpace = false;
  /** Code of the stitch last made, for "inc", "dec" and bare numbers. */
  lastStitch: string | null = null;
  loops: LoopWord | null = null;
  /** Colour that the row begins in, where it says so. */
  colour: string | null = null;
  /** Whether a stitch of this row stands already. */
  started = false;
  /** How the row's own chain stands: not yet, counted, not counted. */
  turned = { before: 0, after: 0 };
  joined = false;
  ring = false;
  fastened = false;
  saidNoTurn = false;
  saidNoJoin = false;
  chainAfter: ChainBefore | null = null;
  /** Places left on purpose: the number said, or Infinity. */
  left: number | null = null;
  /** Something passed over by naming: lace. */
  lace = false;
  /** The most stitches that naming one place passed over. */
  passedMost = 0;
  /** What a chain that lengthens the foundation is said to count as, with the chains passed before the first stitch. */
  passedCountsAs: readonly string[] | null = null;
  /** Chains passed before the first stitch on a foundation. */
  passedAtStart = 0;
  /** Places passed on purpose earlier in this row. */
  skipped = 0;
  /** Places entered under one loop only. */
  readonly singly = { front: 0, back: 0 };
  /** Foundation chain that this row made. */
  madeFoundation: Edge | null = null;
  /** Changed to work along another edge in mid row. */
  along = false;
  /** Stitches of the shell last worked into that lie behind the one that was named. */
  leftOfGroup = 0;
  /** Stitches slipped along at the start of a round, which may be left at its end. */
  slippedOver = 0;
  /** Worked between stitches: where the gap last entered lies, as the length of edge left. */
  amongGaps = false;
  gapAt: number | null = null;
  /** Stitches that the row gains or loses at its ends by its own words: "sc across, inc 1 st each end". */
  changeAtEnds = 0;
  /** A stitch other than a slip stitch stands. */
  madeStitch = false;
  /** The row's own chain stands, whether it counts or not. */
  stood = false;
  /** The row's own chain stands for a stitch. */
  chainStands = false;
  /** How many repeats the clause at hand stands in. */
  inRepeat = 0;
  /** What the innermost repeat works at every turn; null outside of repeats. */
  repeating: readonly Clause[] | null = null;
  /** The group at hand is the first thing in its row. */
  groupBegins = false;
  /** Inside a group: everything goes into the one place. */
  holding = false;
  /** Kinds of stitch named where the edge has none of them. */
  readonly misnamed: { readonly span: Span; readonly code: string }[] = [];
  readonly troubles: Trouble[] = [];

  constructor(
    readonly table: Table,
    readonly start: RowStart,
  ) {
    this.at = start.span;
    this.below = start.edge;
    this.cursor = start.edge ? new Cursor(start.edge) : null;
  }

  /** The value of a number in this size. @throws {Unknowable} when the list has none for it. */
  number(amount: Amount): number {
    const value = valueAt(amount.values, this.table.size);
    if (value === undefined) throw new Unknowable("a list has no value for this size");
    return value ?? 0;
  }

  /** The cursor. @throws {Stuck} when there is nothing to work into. */
  needCursor(span: Span): Cursor {
    if (!this.cursor) throw new Stuck({ is: "worked-on-nothing", span });
    return this.cursor;
  }

  /** Stitches of the edge not yet reached, up to where no more than this length is left. */
  countLeft(limitLeft = 0): number {
    return this.cursor ? countLeft(this.cursor, this.table.manner, limitLeft) : 0;
  }

  /** Puts the work on another edge. */
  moveTo(edge: Edge): void {
    this.below = edge;
    this.cursor = new Cursor(edge);
    this.entered = "nowhere";
    this.along = true;
  }

  /** Stitch tops not yet reached; chains are left out, since lace passes over them. */
  countStitchesLeft(): number {
    if (!this.cursor) return 0;
    const manner = this.lace ? { chainsArePlaces: false } : this.table.manner;
    return countLeft(this.cursor, manner);
  }

  /** Nothing stands in the row yet but slip stitches, by which the hook went along the edge. */
  nothingButSlips(): boolean {
    return !this.madeStitch && !this.stood;
  }

  /**
   * On a round, stitches slipped along before the first one come last: the round is begun anew where the hook is, and what was
   * slipped over may be left.
   *
   * @param inSame  the first stitch goes where the hook stands, so that this place does not come round again
   */
  beginRoundHere(inSame: boolean): void {
    const { cursor } = this;
    if (
      !cursor?.edge.closed ||
      cursor.atEnd ||
      cursor.used > 0 ||
      !this.nothingButSlips() ||
      !this.started ||
      this.slippedOver > 0
    )
      return;
    const before = countLeft(new Cursor(cursor.edge), this.table.manner) - this.countLeft();
    const here = cursor.position();
    const { entered } = this;
    const { edge } = cursor;
    // A space that the round begins in is worked by what begins there, and does not come round again.
    const worked = this.enteredSpace || (inSame && entered === "place");
    const passed = edge.before(worked ? lastBefore(edge, here) : here);
    const behind = withoutGroupCut(passed, cursor.place);
    this.below = new Edge([...edge.from(here, (place) => place).runs, ...behind], true);
    this.cursor = new Cursor(this.below);
    this.entered = entered;
    this.slippedOver = Math.max(0, before);
  }

  /** Whether the row is worked into the piece's foundation chain. */
  onFoundation(): boolean {
    return this.below?.runs.length === 1 && this.below.runs[0]?.unit[0]?.role === "foundation";
  }

  /** Length of the edge that has been worked into: from the first place entered to the hook. */
  workedLength(): number {
    const length = this.below?.length ?? 0;
    return length - (this.cursor?.left ?? 0) - this.passedAtStart;
  }

  /** All stitches of the edge the row is worked into. */
  countAll(): number {
    return this.below ? countLeft(new Cursor(this.below), this.table.manner) : 0;
  }

  /** What a target looks for, or any stitch where the edge has nothing of the kind. */
  seekerOrAny(target: Target): Seeker {
    const { edge } = this.needCursor(target.span);
    const seeker = seekerFor(this, target);
    if (edge.some((place) => seeker.takes(place) > 0)) return seeker;
    if (target.what.is === "stitch" || target.what.is === "chain") return seekAny(edge, this.table.manner);
    return needSeeker(this, target);
  }

  /** @throws {Unknowable} always: the edge at hand is not known */
  unknowable(): never {
    throw new Unknowable("the edge is not known");
  }

  /** A new row to add to; the caller puts the old one back. */
  freshOut(): EdgeMaker {
    const { colour } = this.out;
    this.out = new EdgeMaker();
    this.out.colour = colour;
    return this.out;
  }

  /** From here on the work is made in another colour; before the first stitch it is the row's own. */
  changeColour(colour: string): void {
    if (this.started || this.out.last || this.holding) this.out.colour = colour;
    else this.colour = colour;
  }

  /** Works clauses into the place where the hook is, apart from the row. */
  makeApart(clauses: readonly Clause[]): {
    readonly runs: readonly Run[];
    readonly lastStitch: string | null;
  } {
    const { out, holding, started, lastStitch, entered } = this;
    const made = this.freshOut();
    this.holding = true;
    this.started = true;
    try {
      this.run(clauses);
      return { runs: made.snapshot(), lastStitch: this.lastStitch };
    } finally {
      Object.assign(this, { out, holding, started, lastStitch, entered });
    }
  }

  /** Works clauses along the edge, gathering what they make apart from the row. */
  makeHere(clauses: readonly Clause[]): readonly Place[] {
    const { out, started } = this;
    const made = this.freshOut();
    this.started = true;
    try {
      this.run(clauses);
      return flatten(made.snapshot());
    } finally {
      Object.assign(this, { out, started });
    }
  }

  /**
   * Works clauses in order.
   *
   * @param rest  what the row says after them, from the inside outwards: "across" has to stop where this begins
   */
  run(clauses: readonly Clause[], rest: readonly Clause[] = []): void {
    for (let i = 0; i < clauses.length; i++) {
      const clause = clauses[i] as Clause;
      if (clause.kind === "work" && clause.target.ref === "each" && !this.holding) {
        const together = togetherFrom(clauses, i);
        if (together.length > 1) {
          i += together.length - 1;
          this.at = clause.span;
          workTogether(this, together, [...clauses.slice(i + 1), ...rest]);
          continue;
        }
      }
      const after = () => (rest.length === 0 ? clauses.slice(i + 1) : [...clauses.slice(i + 1), ...rest]);
      this.work(clause, after, clauses[i - 1]);
    }
  }

  /** Place of the clause being worked. */
  at: Span;

  private work(clause: Clause, after: () => readonly Clause[], before: Clause | undefined): void {
    this.at = clause.span;
    switch (clause.kind) {
      case "chain":
        workChain(this, clause, after());
        return;
      case "work":
        workStitches(this, clause, after, before);
        return;
      case "understood":
        workStitches(
          this,
          {
            kind: "work",
            span: clause.span,
            stitch: this.lastStitch ?? "sc",
            stitchSpan: clause.span,
            count: clause.count,
            target: clause.target,
          },
          after,
          before,
        );
        return;
      case "skip":
        skipPlaces(this, clause, after());
        return;
      case "group":
        workGroup(this, clause, after);
        return;
      case "repeat":
        workRepeat(this, clause, after());
        return;
      case "choice": {
        const reading = this.table.choices.take(clause.form, clause.options.length, clause.span);
        this.run(clause.options[reading] ?? [], after());
        return;
      }
      case "turn":
        if (this.started || this.out.last) this.turned.after++;
        else this.turned.before++;
        return;
      case "join":
        closeRound(this, clause);
        return;
      case "do-not-turn":
        this.saidNoTurn = true;
        return;
      case "do-not-join":
        this.saidNoJoin = true;
        return;
      case "fasten-off":
        this.fastened = true;
        return;
      case "leave":
        leaveStitches(this, clause);
        return;
      case "loops":
        this.loops = clause.loops === "both" ? null : clause.loops;
        return;
      case "size-only":
        if (clause.sizes.includes(this.table.size)) this.run(clause.body, after());
        return;
      case "along":
        workAlong(this, clause);
        return;
      case "in-pattern":
        if (saysWhereToTurn(clause.target) && turnsNext(after())) this.left = Number.POSITIVE_INFINITY;
        workStitches(
          this,
          { kind: "work", span: clause.span, stitch: "?", stitchSpan: clause.span, target: clause.target },
          after,
          before,
        );
        return;
      case "remark":
        throw new Unknowable("words that were not understood");
      case "colour":
        this.changeColour(clause.colour);
        return;
      case "join-yarn":
        if (clause.colour) this.changeColour(clause.colour);
        joinYarn(this, clause);
        return;
      case "evenly":
        workEvenly(this, clause);
        return;
      case "marker":
        placeMarker(this, clause);
        return;
      case "schedule":
        changeAtEnds(this, clause);
        return;
      case "even":
      case "repeat-rows":
      case "as-piece":
      case "size-end":
      case "seam":
      case "hold":
      case "hook":
      case "facing":
      case "aside":
        return;
    }
  }

  /** Keeps everything that a try may change, to take it back. */
  keep(): () => void {
    const fields = { ...this };
    const { cursor, out, troubles, misnamed } = this;
    const { colour } = out;
    const position = cursor?.position();
    const runs = out.snapshot();
    const turned = { ...this.turned };
    const singly = { ...this.singly };
    const lengths = { troubles: troubles.length, misnamed: misnamed.length };
    return () => {
      Object.assign(this, fields, { turned: { ...turned }, singly: { ...singly } });
      if (cursor && position) cursor.go(position);
      out.restore(runs);
      out.colour = colour;
      troubles.length = lengths.troubles;
      misnamed.length = lengths.misnamed;
    };
  }
}

/** "Work 70 sts, turn", "work to last 6 sts, turn" in whatever the pattern is: where to turn is all that it says. */
function saysWhereToTurn({ ref, count, until }: Target): boolean {
  return (count !== undefined && ref !== "last") || until?.at === "last";
}

/** Whether nothing but a chain comes before the turn. */
function turnsNext(rest: readonly Clause[]): boolean {
  return rest.find((clause) => clause.kind !== "chain" && clause.kind !== "aside")?.kind === "turn";
}

/** The place just before a position, which is not the first. */
function lastBefore(edge: Edge, position: Position): Position {
  const cursor = new Cursor(edge);
  let last = cursor.position();
  for (const end = edge.before(position).length; edge.length - cursor.left < end; cursor.step())
    last = cursor.position();
  return last;
}
