import { type Span, valueAt } from "../base/index.ts";
import type {
  Amount,
  AsPieceClause,
  Claim,
  Clause,
  Instruction,
  Label,
  PieceTree,
} from "../notation/index.ts";
import { ChainMeaningsSaid } from "./chain-meanings.ts";
import { checkClaims } from "./claims.ts";
import type { Edge } from "./edge.ts";
import { trustedEdge } from "./free-edges.ts";
import { lastSectionNamed, partNamed, rowsOfStitchPattern } from "./named-parts.ts";
import { nameKey, rowCalled, rowTold } from "./named-rows.ts";
import { countRows, type PieceState, type WorkedRow } from "./piece.ts";
import { PieceWork, type SizeContext } from "./piece-work.ts";
import { claimsBehind, type PatternRows, Plan } from "./plan.ts";
import { hasRemark } from "./remarks.ts";
import { firstColour, lastColour } from "./row.ts";
import { workRowList } from "./rows-again.ts";
import { checkRowsTold } from "./rows-told.ts";
import {
  edgeOfSample,
  makesFoundation,
  namesStitchPattern,
  ruleBetween,
  type Sample,
  sampleFor,
  sampleOfChain,
} from "./samples.ts";
import { clausesOfSize, cutSegments, facingOf, makesSomething, makesStitches } from "./segments.ts";
import { checkNumber, workStanding } from "./standing-rows.ts";
import { isUnknown, UNKNOWN_EDGE } from "./targets.ts";
import type { Trouble } from "./trouble.ts";

/** How one instruction came out in one size. */
export interface LineOutcome {
  /** The size works this line. */
  readonly worked: boolean;
  readonly first: number | null;
  readonly last: number | null;
  readonly rows: number;
  /** Which piece of this size it belongs to. */
  readonly piece: number;
  /** Rows tied by turns, and the turns within at the line's first and last row. */
  readonly strand: number;
  readonly flipsFirst: number;
  readonly flips: number;
  /** "With RS facing" at the join where the strand begins. */
  readonly facing: "RS" | "WS" | null;
  readonly edge: Edge | null;
  readonly troubles: readonly Trouble[];
  /** Why the counts are not known, where they are not. */
  readonly unknown: string | null;
  /** The count was taken from what is printed. */
  readonly trust: boolean;
  readonly made: "nothing" | "foundation" | "row" | "round" | "edge";
  readonly misnamed: readonly { readonly span: Span; readonly code: string }[];
  /** The sample that the counts are of, where the text leaves the width open. */
  readonly sample: Sample | null;
}

/** Works a whole pattern in one size, instruction by instruction. */
export class Maker {
  /** Every piece worked, in order. */
  readonly pieces: PieceState[] = [];
  private work: PieceWork;
  private readonly meanings: ChainMeaningsSaid;
  private newSection = true;
  /** Where the last instruction that was worked ends. */
  private readTo = 0;
  /** Rows that are told under a name, to be worked when they are called. */
  private readonly told = new Map<string, WorkedRow>();

  constructor(private readonly context: SizeContext) {
    this.meanings = new ChainMeaningsSaid(context.tree.notes);
    this.work = new PieceWork(context, "", 0, this.meanings);
  }

  /** One outcome for each instruction of the pattern. */
  workAll(): readonly LineOutcome[] {
    const outcomes: LineOutcome[] = [];
    for (const [at, piece] of this.context.tree.pieces.entries()) {
      this.enter(piece, at);
      for (const instruction of piece.instructions) outcomes.push(this.workInstruction(instruction));
      this.finishStanding();
    }
    return outcomes;
  }

  /** A heading begins a piece, or a section of the piece that is being worked. */
  private enter(piece: PieceTree, at: number): void {
    this.newSection = true;
    const { state } = this.work;
    if (
      piece.level > 1 &&
      state.rows.length === 0 &&
      state.foundation === null &&
      this.pieces.includes(state)
    ) {
      // The first section of a piece whose heading stands alone.
      this.work.section = { name: piece.name, at };
      return;
    }
    const begun = state.rows.length > 0 || state.foundation !== null || state.begin !== null;
    if (begun && !state.sample && (piece.level > 1 || goesOn(piece, state, this.context.size))) {
      this.work.section = { name: piece.name, at };
      state.standing.length = 0;
      return;
    }
    this.work = new PieceWork(this.context, piece.name, at, this.meanings, () => [...this.pieces].reverse());
    this.pieces.push(this.work.state);
  }

  /** A row under a name of its own that has no count and is called later: it is told here and worked there. */
  private isToldAhead({ label, claims }: Instruction): boolean {
    if (label?.is !== "named" || label.rows.length > 0) return false;
    return (
      this.context.called.has(nameKey(label.words)) && claims.every((claim) => claim.change !== undefined)
    );
  }

  /* ------------------------------------------------------------- samples */

  /** A stitch pattern that is told without a width is worked on a sample; what follows it with a chain of its own is another piece. */
  private beginSample(instruction: Instruction, clauses: readonly Clause[]): void {
    const { choices, sampleWidth, tree } = this.context;
    const { label, span } = instruction;
    const from = this.readTo;
    this.readTo = span.to;
    const own = makesFoundation(clauses);
    const chained = sampleOfChain(clauses, sampleWidth);
    if (chained || (own && this.work.state.sample)) {
      if (this.work.state.edge !== null) this.beginAnew(this.work.section.name);
      if (chained) this.work.state.sample = chained;
      return;
    }
    if (own || !label || clauses.length === 0) return;
    const number = label.is === "named" ? undefined : label.rows[0]?.from.values[0];
    if (number !== undefined && number !== 1) return;
    const rule = ruleBetween(tree, from, span.to);
    const { state, section } = this.work;
    const fresh = state.edge === null && state.begin === null && !state.everUnread;
    if (!rule && !(fresh && number === 1 && !label.rounds && namesStitchPattern(section.name))) return;
    const where = { span: label.span, name: section.name };
    const sample = sampleFor(clauses, rule, where, choices, sampleWidth);
    if (!sample) return;
    if (state.edge !== null) this.beginAnew(sample.name);
    const piece = this.work.state;
    piece.sample = sample;
    piece.edge = edgeOfSample(sample, clauses);
    if (sample.chains) piece.foundation = piece.edge;
  }

  private beginAnew(name: string): void {
    const { at } = this.work.section;
    this.work = new PieceWork(this.context, name, at, this.meanings, () => [...this.pieces].reverse());
    this.pieces.push(this.work.state);
    this.newSection = true;
  }

  /* ------------------------------------------------------- one instruction */

  private workInstruction(instruction: Instruction): LineOutcome {
    const { state } = this.work;
    const { size } = this.context;
    const others = instruction.sizes.length > 0 && !instruction.sizes.includes(size);
    if (others || state.ended) return this.outcome({ worked: false });
    const clauses = clausesOfSize(instruction.clauses, size);
    if (clauses.some((clause) => clause.kind === "size-end" && clause.sizes.includes(size)))
      state.ended = true;
    const vouched = instruction.answers.find((answer) => answer.is === "vouched");
    if (vouched) return this.takeVouched(instruction, vouched.count ? this.work.number(vouched.count) : null);
    if (
      !instruction.label &&
      clauses.every(
        (clause) =>
          (clause.kind === "join" && !(clause.ring && state.edge === null)) ||
          clause.kind === "fasten-off" ||
          !makesSomething(clause) ||
          slips(clause),
      )
    )
      return this.endRow(instruction, clauses);
    if (!instruction.label && hasRemark(clauses) && !this.beginsFor(clauses)) return this.passUnread(clauses);
    if (this.isToldAhead(instruction)) {
      this.told.set(nameKey(instruction.label?.words ?? ""), rowTold(instruction, clauses));
      return this.outcome({});
    }
    const troubles: Trouble[] = [];
    this.beginSample(instruction, clauses);
    const span = this.numbersOf(instruction, troubles);
    if (span === null) {
      checkRowsTold(state, clauses, (amount) => this.work.number(amount), troubles);
      return this.outcome({ worked: false, troubles });
    }
    this.newSection = false;
    const asPiece = clauses.find((clause) => clause.kind === "as-piece");
    if (asPiece?.kind === "as-piece") {
      // "Work as small, then 2 sc in each st around": a row of its own comes after, and the count is of that row.
      const after = clauses.slice(clauses.indexOf(asPiece) + 1);
      const goesOn = !asPiece.reversing && after.some(({ kind }) => ROWS_OWN.has(kind));
      const outcome = this.workAsPiece(
        goesOn ? { ...instruction, claims: [] } : instruction,
        asPiece,
        troubles,
        instruction.label?.rows.length ? span.count : null,
      );
      if (!goesOn || !this.work.state.edge || this.work.state.everUnread) return outcome;
      this.work.state.fastened = false;
      return this.workPlan(instruction, after, null, null, troubles);
    }
    return this.workPlan(instruction, clauses, span.first, span.count, troubles);
  }

  /**
   * Which rows the label asks for in this size; null where it asks for none. Rows told ahead that come before are worked, those that
   * come later are kept.
   */
  private numbersOf(
    instruction: Instruction,
    troubles: Trouble[],
  ): { readonly first: number | null; readonly count: number | null } | null {
    const { state } = this.work;
    const { label } = instruction;
    const next = state.number === null ? null : state.number + 1;
    if (!label) return { first: next, count: null };
    // "Decrease rnd 2" is a name, not the second row.
    const listed = label.is === "named" ? [] : this.listedRows(label);
    if (listed.length === 0) {
      // "Next rows: Work the increase row 4 times": without a number the row's own words say how many.
      const alone = label.is === "next" ? null : 1;
      const count = label.next ? this.work.number(label.next) : alone;
      return count === 0 ? null : { first: next, count };
    }
    const [range] = listed as [RowNumbers, ...RowNumbers[]];
    if (range.to < range.from || (range.from === 0 && range.to === 0)) return null;
    workStanding(state, range.from, false, (entry, number) => {
      const own = clausesOfSize(entry.instruction.clauses, this.context.size);
      this.workPlan({ ...entry.instruction, claims: [] }, own, number, 1, troubles);
    });
    checkNumber(state, range.from, instruction, this.newSection, troubles);
    if (range.from === 1) state.standing.length = 0;
    // "Rows 3, 5 and 7" works the third now and tells the others ahead, for other rows stand between.
    const several = listed.length > 1;
    if (several) {
      if (range.to > range.from) state.standing.push({ from: range.from + 1, to: range.to, instruction });
      for (const later of listed.slice(1)) state.standing.push({ ...later, instruction });
    }
    if (label.open) {
      const { step } = label.open;
      state.standing.push({ from: range.from + step, to: Number.POSITIVE_INFINITY, step, instruction });
    }
    return { first: range.from, count: several ? 1 : range.to - range.from + 1 };
  }

  private listedRows(label: Label): readonly RowNumbers[] {
    const listed: RowNumbers[] = [];
    for (const range of label.rows) {
      const from = this.work.number(range.from);
      const to = this.work.number(range.to);
      if (from === null || to === null) continue;
      const before = listed.at(-1);
      // "Rows 3 and 4" are one stretch of rows.
      if (before && from === before.to + 1 && to >= from)
        listed[listed.length - 1] = { from: before.from, to };
      else listed.push({ from, to });
    }
    return listed;
  }

  /** Works the rows of one instruction, its own or those it repeats. */
  private workPlan(
    instruction: Instruction,
    clauses: readonly Clause[],
    first: number | null,
    count: number | null,
    troubles: Trouble[],
  ): LineOutcome {
    const { work } = this;
    const { state } = work;
    const cut = cutSegments(clauses);
    state.colour = firstColour(clauses) ?? state.colour;
    const claims = instruction.claims.filter((claim) => claim.ofRow === undefined);
    if (cut.countBehind?.count) claims.push(claimOf(cut.countBehind.count));
    const below = state.edge;
    const facing = facingOf(clauses) ?? (state.begin ? state.beginFacing : null);
    const plan = new Plan(work, this.pattern, instruction, claims, troubles, first);
    const done = plan.work(cut.segments, count);
    // "Rep Row 2, changing to B in the last st": the rows after it are worked in B.
    const told = clauses.findLastIndex(({ kind }) => kind === "repeat-rows" || kind === "even");
    if (told !== -1) state.colour = lastColour(clauses.slice(told + 1)) ?? state.colour;
    if (cut.turnsAfter) state.turnPending = true;
    if (cut.fastensAfter) state.fastened = true;
    const last = cut.segments[cut.segments.length - 1];
    const settled =
      last !== undefined &&
      last.is !== "own" &&
      this.settleClaims(claimsBehind(cut.segments, cut.segments.length - 1, claims), below, troubles);
    for (const claim of instruction.claims) {
      const row = claim.ofRow ? state.rowNumbered(work.number(claim.ofRow) ?? -1) : undefined;
      if (row && !isUnknown(row.edge))
        troubles.push(...checkClaims(work.claimContext, row.edge, [claim], null));
    }
    checkRowsTold(state, clauses, (amount) => work.number(amount), troubles);
    return this.outcome({
      first: done.rows === 0 ? null : first,
      last: done.rows === 0 ? null : state.number,
      rows: done.rows,
      flipsFirst: done.flipsFirst ?? state.flips,
      facing,
      edge: state.edge,
      troubles,
      unknown: done.unknown,
      trust: done.trust || settled,
      made: done.made,
      misnamed: done.misnamed,
    });
  }

  /** Holds printed counts against the end of several rows; true where the count was taken on trust. */
  private settleClaims(claims: Instruction["claims"], below: Edge | null, troubles: Trouble[]): boolean {
    const { work } = this;
    const { state } = work;
    if (claims.length === 0 || !state.edge) return false;
    const found =
      isUnknown(state.edge) || state.asFar ? [] : checkClaims(work.claimContext, state.edge, claims, below);
    // Where rows are missing before this one, its count says nothing against it.
    const doubt = found.length > 0 && troubles.some(({ is }) => is === "number-skips");
    if (isUnknown(state.edge) || state.asFar || doubt) {
      const total = work.printedTotal(claims, below);
      const last = state.rows.pop();
      if (total === null || !last) {
        if (last) state.rows.push(last);
        return false;
      }
      state.edge = trustedEdge(total, state.edge.closed);
      state.asFar = false;
      state.rows.push({ ...last, edge: state.edge });
      return true;
    }
    troubles.push(...found);
    work.keepPrinted(found);
    return false;
  }

  /** "Join. (66 sts)" in a sentence of its own: the end of the row before, and its count. */
  private endRow(instruction: Instruction, clauses: readonly Clause[]): LineOutcome {
    const { state } = this.work;
    const troubles: Trouble[] = [];
    state.colour = lastColour(clauses) ?? state.colour;
    if (clauses.some((clause) => clause.kind === "join") && state.edge && state.rows.length > 0)
      this.work.closeLastRow();
    if (clauses.some((clause) => clause.kind === "fasten-off")) state.fastened = true;
    const trust = state.rows.length > 0 && this.settleClaims(instruction.claims, null, troubles);
    checkRowsTold(state, clauses, (amount) => this.work.number(amount), troubles);
    return this.outcome({ troubles, trust });
  }

  /** Whether a sentence says for certain what it is about, whatever else stands in it. */
  private beginsFor(clauses: readonly Clause[]): boolean {
    const { state } = this.work;
    const fresh = state.edge === null || state.fastened;
    return clauses.some((clause) => BEGINS.has(clause.kind) && (clause.kind !== "chain" || fresh));
  }

  /** A sentence that was not understood: whether it makes a row is not known, and neither is the edge after it. */
  private passUnread(clauses: readonly Clause[]): LineOutcome {
    const { state } = this.work;
    state.lastUnread = true;
    state.everUnread = true;
    if (clauses.some((clause) => clause.kind === "fasten-off")) state.fastened = true;
    else if (clauses.some(makesStitches)) state.edge = UNKNOWN_EDGE;
    return this.outcome({ unknown: "words that were not understood" });
  }

  /** A line that the designer vouches for: its count is taken as said. */
  private takeVouched(instruction: Instruction, count: number | null): LineOutcome {
    const { work } = this;
    const { state } = work;
    const listed = instruction.label ? this.listedRows(instruction.label) : [];
    const first = listed[0]?.from ?? (state.number === null ? null : state.number + 1);
    const last = listed[listed.length - 1]?.to ?? first;
    const edge = count === null ? UNKNOWN_EDGE : trustedEdge(count, state.edge?.closed ?? false);
    const rows = first === null || last === null ? 1 : last - first + 1;
    const round = instruction.label?.is === "round";
    if (!edge.closed && !round) state.flips += rows;
    work.addRow(instruction, instruction.clauses, edge, last, round, { rows });
    state.turnPending = !edge.closed && !round;
    state.lastUnread = true;
    state.everUnread = true;
    state.asFar = false;
    return this.outcome({
      first,
      last,
      rows,
      edge,
      trust: true,
      made: round ? "round" : "row",
      unknown: "vouched for",
    });
  }

  /** "Work as for Left Front": what that piece came to is what this one comes to. */
  private workAsPiece(
    instruction: Instruction,
    clause: AsPieceClause,
    troubles: Trouble[],
    count: number | null,
  ): LineOutcome {
    const { work } = this;
    const { state } = work;
    const part = this.pattern.part(clause.piece);
    if (!part || (part.whole && part.piece === state)) {
      const named = clause.piece.toLowerCase();
      const known =
        named === "" || this.context.tree.pieces.some((piece) => piece.name.toLowerCase().includes(named));
      // A name is written with a capital; "as for first side" only points back.
      if (!known && /^\p{Lu}/u.test(clause.piece))
        troubles.push({ is: "piece-not-found", span: instruction.span, asked: clause.piece });
      state.lastUnread = true;
      state.everUnread = true;
      state.fastened = true;
      return this.outcome({ troubles });
    }
    const first = state.number === null ? null : state.number + 1;
    if (state.edge && !state.fastened && (state.rows.length === 0 || !part.whole)) {
      // Worked on an edge of its own: the rows are worked again.
      const rows = part.rows.slice(0, count ?? part.rows.length);
      const cycle =
        rows.length === 0
          ? []
          : Array.from(
              { length: count ?? rows.length },
              (_, at) => rows[at] ?? (rows[rows.length - 1] as WorkedRow),
            );
      const done = workRowList(work, instruction, cycle, first, troubles);
      const trust = this.settleClaims(instruction.claims, null, troubles);
      return this.outcome({
        first,
        last: state.number,
        rows: done.rows,
        edge: state.edge,
        made: state.wasRound ? "round" : "row",
        unknown: done.unknown,
        trust,
        troubles,
      });
    }
    const until = part.whole
      ? lastSectionNamed(this.context.tree.text.slice(instruction.span.from, instruction.span.to), part.piece)
      : null;
    state.takeFrom(part.piece, until);
    state.fastened = until === null && clause.until === undefined;
    const trust = this.settleClaims(instruction.claims, null, troubles);
    return this.outcome({
      first: 1,
      last: state.number,
      rows: countRows(state.rows) ?? state.rows.length,
      edge: state.edge,
      made: state.wasRound ? "round" : "row",
      trust,
      troubles,
    });
  }

  /** What the plan of a line may ask of the pattern beyond its own piece. */
  private readonly pattern: PatternRows = {
    part: (name) => partNamed(name, this.pieces),
    /** "As 4th row" in a front means the back's, where the front has none. */
    elsewhere: (number) => {
      for (const piece of [...this.pieces].reverse()) {
        const row = piece === this.work.state ? undefined : piece.rowNumbered(number);
        if (row) return row;
      }
      return undefined;
    },
    stitchPattern: (name) => rowsOfStitchPattern(name, this.pieces),
    called: (name) =>
      this.told.get(nameKey(name)) ?? rowCalled(name, [this.work.state, ...[...this.pieces].reverse()]),
  };

  private finishStanding(): void {
    const { state } = this.work;
    const troubles: Trouble[] = [];
    workStanding(state, Number.POSITIVE_INFINITY, true, (entry, number) => {
      const own = clausesOfSize(entry.instruction.clauses, this.context.size);
      this.workPlan({ ...entry.instruction, claims: [] }, own, number, 1, troubles);
    });
    state.standing.length = 0;
  }

  private outcome(parts: Partial<LineOutcome>): LineOutcome {
    const { strand, flips, sample } = this.work.state;
    return {
      sample,
      worked: true,
      first: null,
      last: null,
      rows: 0,
      piece: this.pieces.length,
      strand,
      flips,
      flipsFirst: flips,
      facing: null,
      edge: null,
      troubles: [],
      unknown: null,
      trust: false,
      made: "nothing",
      misnamed: [],
      ...parts,
    };
  }
}

/**
 * Whether the rows under a heading go on with the edge of the piece before: no chain, ring or yarn is begun there, or the row
 * numbers go on.
 */
function goesOn(piece: PieceTree, state: PieceState, size: number): boolean {
  const first = piece.instructions.find(
    ({ label, clauses }) => label !== null || clauses.some(makesStitches),
  );
  if (!first) return false;
  // "Join yarn in the next unworked st": a part that an earlier one has left.
  const joins = first.clauses.find((clause) => clause.kind === "join-yarn" || clause.kind === "skip");
  if (state.held.length > 0 && joins && "target" in joins && joins.target?.what.is === "skipped") return true;
  if (state.fastened) return false;
  const from = first.label?.rows[0]?.from;
  const number = from ? valueAt(from.values, size) : undefined;
  if (number !== undefined && number !== null && number > 1)
    return state.number === null || number > state.number;
  if (first.label?.is === "foundation") return false;
  for (const clause of first.clauses) {
    if (
      clause.kind === "join-yarn" ||
      clause.kind === "as-piece" ||
      clause.kind === "along" ||
      clause.kind === "repeat-rows"
    )
      return false;
    if (clause.kind === "chain")
      return (
        first.label !== null &&
        !first.clauses.some((each) => each.kind === "work" && each.target.from === "hook")
      );
    if (clause.kind === "work" || clause.kind === "group")
      return clause.target.what.is !== "ring" && clause.target.what.is !== "row-end";
    if (clause.kind === "repeat") return true;
  }
  return false;
}

/** Clauses that say for certain what a sentence is about, whatever else stands in it. */
const BEGINS: ReadonlySet<Clause["kind"]> = new Set([
  "chain",
  "join-yarn",
  "repeat-rows",
  "even",
  "schedule",
  "as-piece",
  "along",
]);

/** "Sl st in next st": a last slip stitch or two that even out the edge make no row. */
function slips(clause: Clause): boolean {
  return (
    clause.kind === "work" &&
    clause.stitch === "sl st" &&
    clause.target.ref !== "each" &&
    (clause.target.count?.values[0] ?? 1) <= 3
  );
}

/** A printed total. */
function claimOf(amount: Amount): Claim {
  return { span: amount.span, parts: [{ span: amount.span, amount, kind: "any", words: "" }] };
}

/** What is worked into a piece that was made as another. */
const ROWS_OWN: ReadonlySet<Clause["kind"]> = new Set(["work", "group", "repeat"]);

interface RowNumbers {
  readonly from: number;
  readonly to: number;
}
