import { type Span, valueAt } from "../base/index.ts";
import type {
  Amount,
  Claim,
  Clause,
  Definition,
  Instruction,
  LoopWord,
  PatternTree,
  PieceTree,
  RepeatRowsClause,
} from "../notation/index.ts";
import { hasStitch, stitchOf } from "../stitches/index.ts";
import type { Choices } from "./choices.ts";
import { checkClaims } from "./claims.ts";
import { countStitches } from "./counting.ts";
import { Edge } from "./edge.ts";
import type { ChainMeanings, Table } from "./hands.ts";
import { type HeldEdge, PieceState, type WorkedRow } from "./piece.ts";
import { placeOf, stitchPlace, UNKNOWN_PLACE } from "./place.ts";
import { type RowAfter, workRow } from "./row.ts";
import { unrollSchedule } from "./schedules.ts";
import { isTrusted, isUnknown, UNKNOWN_EDGE } from "./targets.ts";
import type { Trouble } from "./trouble.ts";

/** How one instruction came out in one size. */
export interface LineOutcome {
  /** The size works this line. */
  readonly worked: boolean;
  readonly first: number | null;
  readonly last: number | null;
  readonly rows: number;
  readonly strand: number;
  readonly flips: number;
  /** Turns at the line's first row. */
  readonly flipsFirst: number;
  /** "With RS facing" at a join, for the strand that begins there. */
  readonly facing: "RS" | "WS" | null;
  readonly edge: Edge | null;
  readonly troubles: readonly Trouble[];
  readonly unknown: string | null;
  readonly trust: boolean;
  /** Whether the line made rows or a foundation. */
  readonly made: "nothing" | "foundation" | "row" | "round" | "edge";
  readonly misnamed: readonly { readonly span: Span; readonly code: string }[];
}

/** The rows one instruction asks for, in order: which clauses, and which of them are the instruction's own. */
interface RowToWork {
  readonly clauses: readonly Clause[];
  readonly round: boolean;
  readonly label: string;
  /** Set where a row is a repeat of an earlier one. */
  readonly repeated: string | null;
}

/** Works a whole pattern in one size. */
export class Maker {
  readonly outcomes: LineOutcome[] = [];
  private readonly pieces = new Map<string, PieceState>();
  private state = new PieceState("");
  private readonly meaningsSaid = new Map<string, readonly string[]>();
  private readonly specials: ReadonlyMap<string, Definition>;
  private readonly writesTurns: boolean;
  /** Edge to begin the next row with, set by a join that made nothing. */
  private begin: { readonly edge: Edge; readonly side: "RS" | "WS" | null } | null = null;
  /** A second try at the edge after a count that differed: what is printed. */
  private printedEdge: Edge | null = null;

  constructor(
    private readonly tree: PatternTree,
    private readonly size: number,
    private readonly choices: Choices,
    specials: ReadonlyMap<string, Definition>,
    writesTurns: boolean,
  ) {
    this.specials = specials;
    this.writesTurns = writesTurns;
  }

  /** Works every instruction in order; one outcome each. */
  work(): readonly LineOutcome[] {
    for (const piece of this.tree.pieces) {
      this.enterPiece(piece);
      for (const instruction of piece.instructions) this.outcomes.push(this.workInstruction(instruction));
      this.finishStanding();
    }
    return this.outcomes;
  }

  private enterPiece(piece: PieceTree): void {
    if (piece.level > 1 && this.state.rows.length + (this.state.foundation ? 1 : 0) > 0) return;
    this.state = new PieceState(piece.name);
    this.pieces.set(piece.name.toLowerCase(), this.state);
    this.begin = null;
    this.printedEdge = null;
  }

  private number(amount: Amount): number | null {
    const value = valueAt(amount.values, this.size);
    return value === undefined ? null : (value ?? 0);
  }

  /* ------------------------------------------------------- one instruction */

  private workInstruction(instruction: Instruction): LineOutcome {
    const { state } = this;
    const skips = (instruction.sizes.length > 0 && !instruction.sizes.includes(this.size)) || state.ended;
    if (skips) return this.outcome(instruction, { worked: false });
    const clauses = this.ofThisSize(instruction.clauses);
    if (clauses.some((clause) => clause.kind === "size-end" && clause.sizes.includes(this.size)))
      state.ended = true;
    const vouched = instruction.answers.find((answer) => answer.is === "vouched");
    if (vouched) return this.takeVouched(instruction, vouched.count ?? null);
    const asPiece = clauses.find((clause) => clause.kind === "as-piece");
    if (asPiece?.kind === "as-piece") return this.workAsPiece(instruction, asPiece.piece);
    if (!instruction.label && !clauses.some(makesSomething))
      return this.outcome(instruction, { worked: true });
    return this.workRows(instruction, clauses);
  }

  /** Clauses for other sizes are left out at the top level, so that a line for some sizes only asks nothing of the rest. */
  private ofThisSize(clauses: readonly Clause[]): readonly Clause[] {
    if (!clauses.some((clause) => clause.kind === "size-only")) return clauses;
    return clauses.flatMap((clause) =>
      clause.kind === "size-only" ? (clause.sizes.includes(this.size) ? clause.body : []) : [clause],
    );
  }

  private takeVouched(instruction: Instruction, count: Amount | null): LineOutcome {
    const { state } = this;
    const value = count ? this.number(count) : null;
    const first = this.nextNumber(instruction);
    const last = this.lastNumber(instruction) ?? first;
    const edge = value === null ? UNKNOWN_EDGE : trusted(value, state.edge?.closed ?? false);
    this.pushRow(instruction, instruction.clauses, edge, last, instruction.label?.is === "round");
    return this.outcome(instruction, {
      worked: true,
      first,
      last,
      rows: 1,
      edge,
      trust: true,
      made: "row",
      unknown: "vouched for",
    });
  }

  /* ------------------------------------------------------------------ rows */

  private workRows(instruction: Instruction, clauses: readonly Clause[]): LineOutcome {
    const { state } = this;
    const troubles: Trouble[] = [];
    const label = instruction.label;
    let first: number | null = null;
    let last: number | null = null;
    if (label) {
      const listed = this.listedRows(instruction);
      first = listed[0]?.from ?? this.nextNumber(instruction);
      if (listed.length > 0) {
        this.catchUp(first as number, instruction, troubles);
        const many = listed.length > 1;
        last = many ? first : (listed[0]?.to ?? first);
        if (first !== null && last !== null && last < first)
          return this.outcome(instruction, { worked: false });
        // A size for which a range is empty or a row number is 0 does not work it.
        if (first === 0 && (last ?? 0) === 0) return this.outcome(instruction, { worked: false });
        for (const range of many
          ? [{ from: listed[0]!.from + 1, to: listed[0]!.to }, ...listed.slice(1)]
          : [])
          if (range.to >= range.from)
            state.standing.push({
              from: range.from,
              step: 1,
              until: range.to,
              instruction,
              index: this.outcomes.length,
            });
        if (label.open) {
          const step = label.open.step;
          state.standing.push({
            from: (first as number) + step,
            step,
            until: Number.POSITIVE_INFINITY,
            instruction,
            index: this.outcomes.length,
          });
        }
      } else {
        const rows = label.next ? this.number(label.next) : 1;
        if (rows === 0) return this.outcome(instruction, { worked: false });
        last = first === null || rows === null ? null : first + rows - 1;
      }
    }
    const count = first !== null && last !== null ? last - first + 1 : null;
    return this.workPlan(instruction, clauses, first, label ? count : null, troubles);
  }

  /** Works the rows of one instruction, its own or those it repeats. */
  private workPlan(
    instruction: Instruction,
    clauses: readonly Clause[],
    first: number | null,
    count: number | null,
    troubles: Trouble[],
  ): LineOutcome {
    const { state } = this;
    const before = { rows: state.rows.length };
    const misnamed: { readonly span: Span; readonly code: string }[] = [];
    let unknown: string | null = null;
    let trust = false;
    let made: LineOutcome["made"] = "nothing";
    let number = first;
    let worked = 0;
    this.firstStart = null;
    const segments = this.segmentsOf(clauses);
    for (const segment of segments) {
      if (segment.is === "repeat") {
        const result = this.repeatRows(
          instruction,
          segment.clause,
          number,
          segments.length > 1 ? null : count,
          troubles,
        );
        worked += result.worked;
        unknown ??= result.unknown;
        trust ||= result.trust;
        if (result.worked > 0) made = this.kindOfRow(instruction);
        number = result.numberAfter;
        continue;
      }
      if (segment.is === "even" || segment.is === "schedule") {
        const result =
          segment.is === "even"
            ? this.workEven(instruction, segment.clause, count, troubles)
            : this.workSchedule(instruction, segment.clauses, count, troubles);
        worked += result.rows ?? 1;
        unknown ??= result.unknown;
        if (made === "nothing") made = this.kindOfRow(instruction);
        number = number === null || result.rows === null ? null : number + result.rows;
        if (result.rows === null) state.number = null;
        continue;
      }
      const times = segments.length === 1 && count !== null ? Math.min(count, 5000) : 1;
      for (let time = 0; time < times; time++) {
        const claims = instruction.claims.filter(
          (claim) => claim.ofRow === undefined && (claim.index === undefined || claim.index === time),
        );
        const isLast = time === times - 1;
        const indexed = claims.some((claim) => claim.index !== undefined);
        const result = this.oneRow(
          instruction,
          segment.clauses,
          number,
          segments.length === 1 && (isLast || indexed) ? claims : [],
          troubles,
          {
            repeated: null,
            time: time + 1,
          },
        );
        misnamed.push(...result.misnamed);
        unknown ??= result.unknown;
        trust ||= result.trust;
        if (result.made !== "nothing") made = result.made;
        if (result.made !== "nothing" && result.made !== "foundation") {
          worked++;
          if (number !== null) number++;
        }
        if (result.stop) break;
      }
    }
    if (this.pendingFasten) state.fastened = true;
    this.pendingFasten = false;
    const multi = segments.length > 1 || (segments[0] && segments[0].is !== "own");
    if (multi) {
      const claims = instruction.claims.filter(
        (claim) => claim.ofRow === undefined && claim.index === undefined,
      );
      trust = this.settleClaims(instruction, claims, troubles, null) || trust;
    }
    this.checkClaimsOfRows(instruction, troubles);
    const lastRow = state.rows[state.rows.length - 1];
    const last = worked === 0 ? null : state.rows.length > before.rows ? (lastRow?.number ?? null) : null;
    return this.outcome(instruction, {
      worked: true,
      first: worked === 0 ? null : first,
      last,
      rows: worked,
      edge: state.edge,
      troubles,
      unknown,
      trust,
      made,
      misnamed,
      flipsFirst: this.firstStart ?? state.flips,
      facing: facingOf(clauses),
    });
  }

  /** Turns at the first row of the instruction at hand. */
  private firstStart: number | null = null;

  /** Cuts an instruction into stretches: own clauses, rows repeated, rows even, schedules. */
  private segmentsOf(clauses: readonly Clause[]): readonly Segment[] {
    const segments: Segment[] = [];
    let own: Clause[] = [];
    const flush = (): void => {
      if (own.some(makesSomething)) segments.push({ is: "own", clauses: own });
      own = [];
    };
    for (const clause of clauses) {
      if (clause.kind === "repeat-rows") {
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
    if (segments.length > 0) {
      // What stands after repeated rows, such as the turn or fastening off, belongs to the last of them.
      if (own.some((clause) => clause.kind === "turn")) this.state.turnPending = true;
      if (own.some((clause) => clause.kind === "fasten-off")) this.pendingFasten = true;
      if (own.some(makesStitches)) segments.push({ is: "own", clauses: own });
    } else if (own.length > 0) segments.push({ is: "own", clauses: own });
    return segments;
  }

  private pendingFasten = false;

  private kindOfRow(instruction: Instruction): LineOutcome["made"] {
    const label = instruction.label;
    if (label?.is === "round" || label?.rounds) return "round";
    return this.state.rows[this.state.rows.length - 1]?.round ? "round" : "row";
  }

  /** One row: works it, compares the printed counts, and moves the piece on. */
  private oneRow(
    instruction: Instruction,
    clauses: readonly Clause[],
    number: number | null,
    claims: readonly Claim[],
    troubles: Trouble[],
    repeat: { readonly repeated: string | null; readonly time: number },
  ): {
    readonly made: LineOutcome["made"];
    readonly unknown: string | null;
    readonly trust: boolean;
    readonly stop: boolean;
    readonly misnamed: LineOutcome["misnamed"];
  } {
    const { state } = this;
    const label = instruction.label;
    const own: Trouble[] = [];
    const round =
      label?.is === "round" ||
      label?.rounds === true ||
      (label === null && state.rows[state.rows.length - 1]?.round === true && state.edge?.closed === true);
    const start = this.startOf(instruction, clauses, round, own);
    const table = this.table(start.flips);
    let after = workRow(
      table,
      { edge: start.edge, chainBefore: state.chainBefore, round: round && !isFlatRow(clauses) },
      clauses,
      instruction.span,
    );
    let check = this.compare(after, claims, start.edge);
    if (
      this.printedEdge &&
      (after.troubles.length > 0 || check.length > 0 || after.unknown !== null) &&
      start.edge &&
      !start.rejoined
    ) {
      // The count before was printed otherwise than it was worked: where this row comes true on what was printed, that was meant.
      const turned = start.turned ? this.printedEdge.reversed() : this.printedEdge;
      const second = workRow(
        table,
        { edge: turned, chainBefore: state.chainBefore, round },
        clauses,
        instruction.span,
      );
      const secondCheck = this.compare(second, claims, turned);
      if (
        second.troubles.length === 0 &&
        secondCheck.length === 0 &&
        second.unknown === null &&
        claims.length > 0
      ) {
        after = second;
        check = [];
      }
    }
    this.printedEdge = null;
    own.push(...after.troubles, ...check);
    const settled = settleLeftOver(own, claims.length > 0 && check.length === 0, after);
    for (const trouble of settled)
      troubles.push(
        repeat.repeated === null
          ? trouble
          : {
              is: "repeated-row",
              span: instruction.span,
              repeated: repeat.repeated,
              time: repeat.time,
              inner: trouble,
            },
      );
    if (after.foundation) {
      state.foundation = after.foundation;
      if (!after.made) {
        state.edge = after.ring ? after.edge : after.foundation;
        state.ring = after.ring;
        state.flips = 0;
        state.turnPending = false;
        state.fastened = false;
        if (after.fastened) state.fastened = true;
        return { made: "foundation", unknown: null, trust: false, stop: false, misnamed: after.misnamed };
      }
    }
    if (!after.made && after.edge !== null && !after.foundation) {
      // Joined somewhere, or turned to another edge, without a stitch yet.
      if (this.rejoinsOnly(clauses))
        this.begin = { edge: after.rest ?? after.edge, side: facingOf(clauses) ?? label?.side ?? null };
      else if (after.ring) {
        state.edge = after.edge;
        state.ring = true;
        return { made: "foundation", unknown: null, trust: false, stop: false, misnamed: after.misnamed };
      }
      if (after.turnsAfter > 0 || clauses.some((clause) => clause.kind === "turn"))
        state.turnPending = !state.turnPending;
      if (after.fastened) state.fastened = true;
      return { made: "nothing", unknown: after.unknown, trust: false, stop: false, misnamed: after.misnamed };
    }
    const trustedCount = after.edge === null ? this.printedTotal(claims, start.edge) : null;
    const closed = round || after.joined;
    const edge = after.edge ?? (trustedCount === null ? UNKNOWN_EDGE : trusted(trustedCount, closed));
    const countDiffers = check.find((trouble) => trouble.is === "count-differs" && trouble.of === null);
    state.flips = start.flips;
    state.strand = start.strand;
    this.firstStart ??= start.flips;
    if (after.mainStitch && hasStitch(after.mainStitch)) state.mainStitch = stitchOf(after.mainStitch).family;
    this.pushRow(instruction, clauses, edge, number, round, after.singly);
    if (after.held)
      state.held.push({ edge: after.held, row: number, flips: start.flips, strand: start.strand });
    state.turnPending = after.turnsAfter > 0;
    state.chainBefore = after.chainAfter;
    state.fastened = after.fastened;
    if (countDiffers?.is === "count-differs") this.printedEdge = trusted(countDiffers.printed, edge.closed);
    const failed = after.edge === null;
    return {
      made: round || after.joined ? "round" : "row",
      unknown:
        after.unknown ??
        (failed && after.troubles.length > 0
          ? "the row could not be worked"
          : isUnknown(edge)
            ? "the edge is not known"
            : null),
      trust: failed && trustedCount !== null,
      stop: failed,
      misnamed: after.misnamed,
    };
  }

  private rejoinsOnly(clauses: readonly Clause[]): boolean {
    return clauses.some((clause) => clause.kind === "join-yarn" || clause.kind === "along");
  }

  private compare(after: RowAfter, claims: readonly Claim[], below: Edge | null): Trouble[] {
    if (!after.edge || isUnknown(after.edge)) return [];
    if (after.foundation && !after.made)
      return checkClaims(after.edge, claims, below, this.size, this.choices);
    if (!after.made) return [];
    return checkClaims(after.edge, claims, below, this.size, this.choices);
  }

  /** The printed total of a row, where there is one. */
  private printedTotal(claims: readonly Claim[], below: Edge | null): number | null {
    for (const claim of claims) {
      if (claim.eachSide) continue;
      const stitches = claim.parts.filter(
        (part) => part.kind !== "ch-sp" && part.kind !== "unit" && part.kind !== "ch",
      );
      if (stitches.length === 0 || stitches.length < claim.parts.length) continue;
      let total = 0;
      for (const part of stitches) {
        const value = this.number(part.amount);
        if (value === null) return null;
        if (this.specials.has(part.kind)) return null;
        total += value;
      }
      if (claim.change) {
        if (!below || isUnknown(below)) return null;
        const before = countStitches(below).stitches;
        return claim.change === "inc" ? before + total : before - total;
      }
      return total;
    }
    return null;
  }

  /** Takes printed counts at the end of several rows; true where the count was taken on trust. */
  private settleClaims(
    instruction: Instruction,
    claims: readonly Claim[],
    troubles: Trouble[],
    below: Edge | null,
  ): boolean {
    const { state } = this;
    if (claims.length === 0 || !state.edge) return false;
    if (isUnknown(state.edge)) {
      const total = this.printedTotal(claims, below);
      if (total === null) return false;
      state.edge = trusted(total, state.edge.closed);
      this.replaceLastEdge(state.edge);
      return true;
    }
    const found = checkClaims(state.edge, claims, below, this.size, this.choices);
    troubles.push(...found);
    const differs = found.find((trouble) => trouble.is === "count-differs" && trouble.of === null);
    if (differs?.is === "count-differs") this.printedEdge = trusted(differs.printed, state.edge.closed);
    void instruction;
    return false;
  }

  private checkClaimsOfRows(instruction: Instruction, troubles: Trouble[]): void {
    for (const claim of instruction.claims) {
      if (!claim.ofRow) continue;
      const number = this.number(claim.ofRow);
      const row = number === null ? undefined : this.state.rowNumbered(number);
      if (row && !isUnknown(row.edge))
        troubles.push(...checkClaims(row.edge, [claim], null, this.size, this.choices));
    }
  }

  private replaceLastEdge(edge: Edge): void {
    const { rows } = this.state;
    const last = rows.pop();
    if (last) rows.push({ ...last, edge });
  }

  private pushRow(
    instruction: Instruction,
    clauses: readonly Clause[],
    edge: Edge,
    number: number | null,
    round: boolean,
    singly = { front: 0, back: 0 },
  ): void {
    const { state } = this;
    state.rows.push({
      number,
      label: instruction.label?.words ?? "",
      clauses,
      round: round || edge.closed,
      edge,
      flips: state.flips,
      strand: state.strand,
      singly,
    });
    state.edge = edge;
    state.number = number;
    state.ring = false;
    if (state.rowsWorked !== null) state.rowsWorked++;
    this.begin = null;
  }

  /* ------------------------------------------------------------ row starts */

  /** The edge as it lies before the maker at the start of a row. */
  private startOf(
    instruction: Instruction,
    clauses: readonly Clause[],
    round: boolean,
    troubles: Trouble[],
  ): {
    readonly edge: Edge | null;
    readonly flips: number;
    readonly strand: number;
    readonly turned: boolean;
    readonly rejoined: boolean;
  } {
    const { state } = this;
    const turnsFirst = turnsBeforeWork(clauses);
    if (this.begin) {
      const { edge } = this.begin;
      const flips = 0;
      return {
        edge,
        flips,
        strand: state.strand + (state.rows.length > 0 ? 1 : 0),
        turned: false,
        rejoined: true,
      };
    }
    const joins = clauses.find((clause) => clause.kind === "join-yarn");
    const newChain = startsNewPiece(clauses, state.fastened);
    if (state.edge === null || newChain)
      return {
        edge: null,
        flips: 0,
        strand: state.strand + (newChain && state.rows.length > 0 ? 1 : 0),
        turned: false,
        rejoined: newChain,
      };
    if (joins?.kind === "join-yarn" && (state.fastened || state.held.length > 0)) {
      const side = instruction.label?.side ?? facingOf(clauses) ?? joins.side ?? null;
      const held = this.heldFor(clauses);
      if (held) return { edge: held.edge, flips: 0, strand: state.strand + 1, turned: false, rejoined: true };
      const lastSide = this.state.rows[this.state.rows.length - 1];
      void lastSide;
      void side;
      const flat = !state.edge.closed;
      return {
        edge: flat ? state.edge.reversed() : state.edge,
        flips: 0,
        strand: state.strand + 1,
        turned: flat,
        rejoined: true,
      };
    }
    const onFoundation =
      state.rows.length === 0 && state.foundation !== null && state.edge === state.foundation;
    if (state.ring)
      return { edge: state.edge, flips: 0, strand: state.strand, turned: false, rejoined: false };
    if (onFoundation)
      return {
        edge: state.edge.closed ? state.edge : state.edge.reversed(),
        flips: 0,
        strand: state.strand,
        turned: true,
        rejoined: false,
      };
    const turned = turnsFirst || state.turnPending;
    if (turnsFirst && state.turnPending && this.writesTurns)
      troubles.push({ is: "turn-doubled", span: instruction.label?.span ?? instruction.span });
    const goesRound = state.edge.closed && (round || !turned);
    if (turned)
      return {
        edge: state.edge.reversed(),
        flips: state.flips + 1,
        strand: state.strand,
        turned: true,
        rejoined: false,
      };
    if (goesRound)
      return { edge: state.edge, flips: state.flips, strand: state.strand, turned: false, rejoined: false };
    // A flat row that nobody turned for: the work is turned all the same, since there is no other way on.
    if (this.writesTurns && !state.fastened && !this.notesTurn())
      troubles.push({ is: "turn-missing", span: instruction.label?.span ?? instruction.span });
    return {
      edge: state.edge.reversed(),
      flips: state.flips + 1,
      strand: state.strand,
      turned: true,
      rejoined: false,
    };
  }

  private notesTurn(): boolean {
    return this.tree.notes.some((note) => note.says.about === "turn");
  }

  /** The edge left for later that a join takes up: the last one held. */
  private heldFor(_clauses: readonly Clause[]): HeldEdge | null {
    return this.state.held.pop() ?? null;
  }

  private table(flips: number): Table {
    const { state, choices } = this;
    const span = { from: 0, to: 0 };
    const meanings: ChainMeanings = {
      said: (chains, stitch) => this.chainMeaning(chains, stitch),
      say: (chains, stitch, parts) => {
        this.meaningsSaid.set(`${chains}:${stitch ?? ""}`, parts);
        if (stitch !== null) this.meaningsSaid.set(`${chains}:`, parts);
      },
    };
    return {
      size: this.size,
      choices,
      specials: this.specials,
      meanings,
      manner: {
        get chainsArePlaces() {
          return choices.take("chains-are-places", 2, span) === 0;
        },
      },
      edgeOfRow: (number) => {
        const row = state.rowNumbered(number);
        if (!row) return null;
        return (row.flips + flips) % 2 === 0 ? row.edge : row.edge.reversed();
      },
      freeLoops: (number, loops) => freeLoopsOf(state, number, loops),
      mainStitch: () => state.mainStitch,
      rowEnds: () => (state.rowsWorked === null ? UNKNOWN_EDGE : rowEnds(state.rowsWorked)),
      foundation: () => foundationFromBelow(state),
    };
  }

  private chainMeaning(chains: number, stitch: string | null): readonly string[] | null {
    for (const note of this.tree.notes) {
      const { says } = note;
      if (says.about !== "turning-chain") continue;
      const chainsFit = says.chains === undefined ? true : says.chains === chains;
      const stitchFits = says.stitch === undefined || stitch === null || says.stitch === stitch;
      if (chainsFit && stitchFits) {
        if (says.parts.length === 0) return [];
        if (says.chains !== undefined) return says.parts;
      }
    }
    return this.meaningsSaid.get(`${chains}:${stitch ?? ""}`) ?? this.meaningsSaid.get(`${chains}:`) ?? null;
  }

  /* -------------------------------------------------------------- numbers */

  private listedRows(instruction: Instruction): { from: number; to: number }[] {
    const rows: { from: number; to: number }[] = [];
    for (const range of instruction.label?.rows ?? []) {
      const from = this.number(range.from);
      const to = this.number(range.to);
      if (from === null || to === null) continue;
      rows.push({ from, to });
    }
    return rows;
  }

  private nextNumber(instruction: Instruction): number | null {
    const listed = this.listedRows(instruction)[0];
    if (listed) return listed.from;
    return this.state.number === null ? null : this.state.number + 1;
  }

  private lastNumber(instruction: Instruction): number | null {
    const listed = this.listedRows(instruction);
    return listed[listed.length - 1]?.to ?? null;
  }

  /** Works the rows told ahead that come before a number, and says where numbers are missing or come twice. */
  private catchUp(next: number, instruction: Instruction, troubles: Trouble[]): void {
    const { state } = this;
    const span = instruction.label?.span ?? instruction.span;
    if (state.number === null || next === 0) return;
    while (state.number !== null && state.number + 1 < next) {
      const due: number = state.number + 1;
      const told = state.standing.find(
        (entry) => due >= entry.from && due <= entry.until && (due - entry.from) % entry.step === 0,
      );
      if (!told) break;
      this.workPlan(
        { ...told.instruction, claims: [] },
        this.ofThisSize(told.instruction.clauses),
        due,
        1,
        troubles,
      );
      if (state.number !== due) break;
    }
    if (state.number === null) return;
    const expected = state.number + 1;
    if (next === expected) return;
    if (next === 1) {
      // Numbers begin again with a section.
      state.standing.length = 0;
      if (
        state.number === 1 &&
        state.rows.length > 0 &&
        !state.fastened &&
        this.begin === null &&
        !this.newSection
      )
        troubles.push({ is: "number-repeats", span, found: 1 });
      return;
    }
    if (state.number === 0 && (state.rows.length > 0 || next === 2)) return;
    if (next > expected) troubles.push({ is: "number-skips", span, expected, found: next });
    else troubles.push({ is: "number-repeats", span, found: next });
  }

  private newSection = false;

  /** Works what was told ahead and has an end. */
  private finishStanding(): void {
    const { state } = this;
    const troubles: Trouble[] = [];
    for (let turns = 0; turns < 2000 && state.number !== null; turns++) {
      const due: number = state.number + 1;
      const told = state.standing.find(
        (entry) =>
          entry.until !== Number.POSITIVE_INFINITY &&
          due >= entry.from &&
          due <= entry.until &&
          (due - entry.from) % entry.step === 0,
      );
      if (!told) break;
      this.workPlan(
        { ...told.instruction, claims: [] },
        this.ofThisSize(told.instruction.clauses),
        due,
        1,
        troubles,
      );
      if (state.number !== due) break;
    }
    state.standing.length = 0;
  }

  /* ------------------------------------------------- repeated rows and more */

  private repeatRows(
    instruction: Instruction,
    clause: RepeatRowsClause,
    first: number | null,
    count: number | null,
    troubles: Trouble[],
  ): {
    readonly worked: number;
    readonly unknown: string | null;
    readonly trust: boolean;
    readonly numberAfter: number | null;
  } {
    const { state } = this;
    const cycle = this.rowsMeant(clause, troubles, first);
    if (cycle === null)
      return { worked: 0, unknown: "the rows to repeat are not known", trust: false, numberAfter: null };
    const said = clause.times ? this.number(clause.times) : null;
    const untilRows = clause.until?.rows ? this.number(clause.until.rows) : null;
    const untilStitches = clause.until?.stitches ? this.number(clause.until.stitches) : null;
    let rows: number;
    let open = false;
    if (count !== null) rows = count;
    else if (said !== null) rows = said * cycle.length;
    else if (untilRows !== null && state.number !== null) rows = Math.max(0, untilRows - state.number);
    else if (untilStitches !== null) rows = 5000;
    else {
      open = clause.until?.measure !== undefined;
      rows = cycle.length;
    }
    const numbered = instruction.label !== null && instruction.label.rows.length > 0;
    let number = first ?? (state.number === null ? null : state.number + 1);
    let unknown: string | null = null;
    let trust = false;
    let worked = 0;
    for (; worked < rows; worked++) {
      const row = cycle[worked % cycle.length] as WorkedRow;
      if (
        untilStitches !== null &&
        state.edge &&
        countStitches(state.edge).stitches === untilStitches &&
        worked > 0
      )
        break;
      const result = this.oneRow(
        {
          ...instruction,
          label: row.round
            ? { ...(instruction.label ?? noLabel(instruction.span)), is: "round", rounds: true }
            : instruction.label,
        },
        row.clauses,
        number,
        [],
        troubles,
        {
          repeated: row.label || `Row ${row.number ?? ""}`.trim(),
          time: Math.floor(worked / cycle.length) + 1,
        },
      );
      unknown ??= result.unknown;
      trust ||= result.trust;
      if (number !== null) number++;
      if (result.stop) {
        worked++;
        break;
      }
    }
    if (open) {
      state.number = null;
      state.rowsWorked = null;
      number = null;
    }
    void numbered;
    return { worked, unknown, trust, numberAfter: number };
  }

  /** The rows that a reference means, oldest first; null with a trouble where there are none. */
  private rowsMeant(
    clause: RepeatRowsClause,
    troubles: Trouble[],
    first: number | null,
  ): readonly WorkedRow[] | null {
    const { state } = this;
    const { rows } = clause;
    if (rows.are === "pattern") return null;
    if (rows.are === "last") {
      const count = this.number(rows.count) ?? 1;
      if (count > state.rows.length) {
        if (state.rows.length > 0)
          troubles.push({ is: "row-not-found", span: rows.span, asked: `the last ${count} rows` });
        return null;
      }
      return state.rows.slice(-count);
    }
    const from = rows.piece ? (this.pieceNamed(rows.piece) ?? state) : state;
    const found: WorkedRow[] = [];
    for (const range of rows.list) {
      const start = this.number(range.from);
      const end = this.number(range.to);
      if (start === null || end === null) return null;
      const step = start <= end ? 1 : -1;
      if (Math.abs(end - start) > 2000) return null;
      for (let number = start; step > 0 ? number <= end : number >= end; number += step) {
        const row = from.rowNumbered(number);
        if (!row) {
          if (from.rows.length > 0)
            troubles.push({ is: "row-not-found", span: rows.span, asked: `Row ${number}` });
          return null;
        }
        found.push(row);
      }
    }
    void first;
    return found.length > 0 ? found : null;
  }

  private pieceNamed(name: string): PieceState | undefined {
    const wanted = name.toLowerCase();
    const exact = this.pieces.get(wanted);
    if (exact) return exact;
    for (const [key, state] of this.pieces) if (key.includes(wanted) || wanted.includes(key)) return state;
    return undefined;
  }

  private workEven(
    instruction: Instruction,
    clause: Extract<Clause, { kind: "even" }>,
    count: number | null,
    _troubles: Trouble[],
  ): { readonly rows: number | null; readonly unknown: string | null } {
    const { state } = this;
    let rows = count ?? (clause.rows ? this.number(clause.rows) : null);
    if (rows === null && clause.until?.rows && state.number !== null)
      rows = Math.max(0, (this.number(clause.until.rows) ?? 0) - state.number);
    if (!state.edge || isUnknown(state.edge)) {
      this.pushRow(
        instruction,
        [],
        UNKNOWN_EDGE,
        rows === null || state.number === null ? null : state.number + rows,
        state.edge?.closed ?? false,
      );
      return { rows, unknown: "the edge is not known" };
    }
    const stitches = countStitches(state.edge).stitches;
    const plain = clause.inPattern ? UNKNOWN_PLACE : stitchPlace(clause.stitch ?? state.mainStitch);
    const edge = new Edge([{ unit: [plain], times: stitches }], state.edge.closed);
    const number = rows === null || state.number === null ? null : state.number + rows;
    state.flips += rows ?? 0;
    if (rows === null) {
      state.strand++;
      state.flips = 0;
      state.rowsWorked = null;
    } else if (state.rowsWorked !== null) state.rowsWorked += Math.max(0, rows - 1);
    state.turnPending = !edge.closed;
    this.pushRow(
      instruction,
      [{ kind: "even", span: clause.span, inPattern: clause.inPattern }],
      edge,
      number,
      edge.closed,
    );
    return { rows, unknown: null };
  }

  private workSchedule(
    instruction: Instruction,
    clauses: readonly Extract<Clause, { kind: "schedule" }>[],
    count: number | null,
    troubles: Trouble[],
  ): { readonly rows: number | null; readonly unknown: string | null } {
    const { state } = this;
    const before = state.edge && !isUnknown(state.edge) ? countStitches(state.edge).stitches : null;
    if (before === null) {
      this.pushRow(instruction, [], UNKNOWN_EDGE, null, state.edge?.closed ?? false);
      return { rows: null, unknown: "the edge is not known" };
    }
    let change = 0;
    let length = 0;
    for (const clause of clauses) {
      const unrolled = unrollSchedule(clause, (amount) => this.number(amount) ?? 0, before);
      if (!unrolled) {
        this.pushRow(instruction, [], UNKNOWN_EDGE, null, state.edge?.closed ?? false);
        return { rows: null, unknown: "the schedule does not say how often" };
      }
      change += unrolled.change * unrolled.rows.length;
      length = clause.together ? Math.max(length, unrolled.length) : length + unrolled.length;
    }
    const clause = clauses[0] as (typeof clauses)[number];
    if (count !== null && length > count)
      troubles.push({ is: "more-rows", span: clause.span, needs: length, has: count });
    const after = before + change;
    const edge =
      after > 0
        ? new Edge([{ unit: [stitchPlace(state.mainStitch)], times: after }], state.edge?.closed ?? false)
        : UNKNOWN_EDGE;
    if (after <= 0) troubles.push({ is: "not-enough", span: clause.span, have: before, need: -change + 1 });
    const rows = count ?? length;
    state.flips += rows;
    state.turnPending = !edge.closed;
    if (state.rowsWorked !== null) state.rowsWorked += Math.max(0, rows - 1);
    this.pushRow(instruction, [], edge, state.number === null ? null : state.number + rows, edge.closed);
    return { rows, unknown: null };
  }

  private workAsPiece(instruction: Instruction, name: string): LineOutcome {
    const { state } = this;
    const other = this.pieceNamed(name);
    if (other && other !== state && other.rows.length > 0) {
      state.rows = [...other.rows];
      state.edge = other.edge;
      state.number = other.number;
      state.foundation = other.foundation;
      state.rowsWorked = other.rowsWorked;
      state.mainStitch = other.mainStitch;
      state.fastened = true;
      state.held = [...other.held];
      return this.outcome(instruction, { worked: true, edge: state.edge, made: "other" as never });
    }
    const section = this.tree.pieces.find(
      (piece) => piece.level > 1 && piece.name.toLowerCase().includes(name.toLowerCase()),
    );
    if (section) {
      this.begin = null;
      return this.outcome(instruction, { worked: true, edge: null });
    }
    const known = this.tree.pieces.some((piece) => piece.name.toLowerCase().includes(name.toLowerCase()));
    return this.outcome(instruction, {
      worked: true,
      edge: null,
      troubles: known || name === "" ? [] : [{ is: "piece-not-found", span: instruction.span, asked: name }],
    });
  }

  private outcome(instruction: Instruction, parts: Partial<LineOutcome>): LineOutcome {
    void instruction;
    return {
      worked: true,
      first: null,
      last: null,
      rows: 0,
      strand: this.state.strand,
      flips: this.state.flips,
      flipsFirst: this.state.flips,
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

type Segment =
  | { readonly is: "own"; readonly clauses: readonly Clause[] }
  | { readonly is: "repeat"; readonly clause: RepeatRowsClause }
  | { readonly is: "even"; readonly clause: Extract<Clause, { kind: "even" }> }
  | { readonly is: "schedule"; readonly clauses: readonly Extract<Clause, { kind: "schedule" }>[] };

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
]);

/** Whether a clause has anything to do with rows. */
const makesSomething = (clause: Clause): boolean => !NOTHING_MADE.has(clause.kind);

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

const makesStitches = (clause: Clause): boolean => STITCHES.has(clause.kind);

/** An edge of so many stitches, of which nothing more is known. */
export function trusted(count: number, closed: boolean): Edge {
  return new Edge([{ unit: [UNKNOWN_PLACE], times: Math.max(0, count) }], closed);
}

function turnsBeforeWork(clauses: readonly Clause[]): boolean {
  for (const clause of clauses) {
    if (clause.kind === "turn") return true;
    if (makesStitches(clause) && clause.kind !== "chain") return false;
  }
  return false;
}

function facingOf(clauses: readonly Clause[]): "RS" | "WS" | null {
  for (const clause of clauses) {
    if (clause.kind === "facing") return clause.side;
    if (clause.kind === "join-yarn" && clause.side) return clause.side;
  }
  return null;
}

/** A chain at the start that is not a turning chain: a new piece begins, as after fastening off. */
function startsNewPiece(clauses: readonly Clause[], fastened: boolean): boolean {
  if (!fastened) return false;
  const first = clauses.find(makesStitches);
  return first?.kind === "chain" && !clauses.some((clause) => clause.kind === "join-yarn");
}

const isFlatRow = (clauses: readonly Clause[]): boolean =>
  clauses.every((clause) => clause.kind !== "join") && false;

function rowEnds(rows: number): Edge {
  return new Edge([{ unit: [placeOf("row-end", "row-end", true)], times: rows }], false);
}

/** Loops that a row left free, as places. */
function freeLoopsOf(state: PieceState, number: number | null, loops: LoopWord | undefined): Edge | null {
  const rows =
    number === null
      ? [...state.rows].reverse()
      : state.rows.filter((row) => row.number === number || row.number === number + 1).reverse();
  for (const row of rows) {
    const { front, back } = row.singly;
    const free = loops === "front" ? back : loops === "back" ? front : Math.max(front, back);
    if (free > 0)
      return new Edge([{ unit: [placeOf("loop", "free-loop", true)], times: free }], row.edge.closed);
  }
  return null;
}

/** The foundation chain seen from below: as many places as the first row worked into. */
function foundationFromBelow(state: PieceState): Edge | null {
  const { foundation } = state;
  if (!foundation) return null;
  const first = state.rows[0];
  const worked =
    first && !isUnknown(first.edge)
      ? Math.min(foundation.length, countStitches(first.edge).stitches)
      : foundation.length;
  return new Edge([{ unit: [placeOf("ch", "foundation", true, worked)], times: 1 }], false);
}

function noLabel(span: Span): NonNullable<Instruction["label"]> {
  return { span: { from: span.from, to: span.from }, is: "named", words: "", rows: [], rounds: false };
}

/** A row that stops early, says so by turning, and whose printed count agrees, was meant so. */
function settleLeftOver(
  troubles: readonly Trouble[],
  confirmed: boolean,
  after: RowAfter,
): readonly Trouble[] {
  if (!confirmed) return troubles;
  void after;
  return troubles.filter((trouble) => trouble.is !== "left-over" || trouble.announced);
}

export { isTrusted };
