import type { Span } from "../../src/base/index.ts";
import type { Amount, Clause, PatternTree } from "../../src/notation/index.ts";
import type { Mutation } from "./mutation.ts";
import { isMeasure } from "./numerals.ts";
import { allClauses, bodyOf, covers, type Placed, placeAll } from "./pattern-text.ts";

/*
 * Which changes lead no maker astray, written down by hand. Each operator says why, and looks at the words alone: what the
 * proof makes of a change is never asked. In doubt a change counts as a fault.
 */

export interface Operator {
  readonly reason: string;
  harms(change: Mutation, pattern: Pattern): boolean;
}

/** A pattern with its instructions in order, and what the operators ask of it. */
export class Pattern {
  readonly placed: readonly Placed[];
  constructor(readonly tree: PatternTree) {
    this.placed = placeAll(tree);
  }

  at(index: number): Placed {
    return this.placed[index] as Placed;
  }

  clausesOf(index: number): Clause[] {
    return allClauses(this.at(index).instruction.clauses).map(({ clause }) => clause);
  }

  /** The innermost clause around a place. */
  clauseAt(index: number, span: Span): Clause | undefined {
    return this.clausesOf(index)
      .filter((clause) => covers(clause.span, span))
      .at(-1);
  }
}

const BEGINS = new Set(["join-yarn", "facing", "chain"]);
const IDLE = new Set(["fasten-off", "aside", "marker", "remark", "leave"]);
const MOVES = new Set(["turn", "join", "join-yarn", "colour", "facing", "aside"]);
const STARTS_AGAIN = new Set(["fasten-off", "join-yarn"]);

/** Whether nothing is worked on the instruction's last row: the yarn is cut there, or the next rows begin on something else. */
function endsStrand(pattern: Pattern, index: number): boolean {
  if (pattern.clausesOf(index).some((clause) => clause.kind === "fasten-off")) return true;
  const next = pattern.placed[index + 1];
  if (!next) return true;
  const [first] = next.instruction.clauses;
  return next.instruction.label === null && first !== undefined && STARTS_AGAIN.has(first.kind);
}

const USES_LENGTH =
  /row[- ]ends?|\bends? of (?:each|every|the|next|\d+|first|last)\b[^.]{0,20}\brows?|\b\d+\)? (?:[a-z]+ )?(?:rows|rnds|rounds)\b|\bmeasures?\b(?=[^.]{0,40}\d)/i;

/** Whether a row more or less at this place can be told from nothing else in the text. */
function lengthIsFree(pattern: Pattern, index: number): boolean {
  const { instruction } = pattern.at(index);
  const own = pattern.tree.text.slice(
    instruction.label?.span.to ?? instruction.span.from,
    instruction.span.to,
  );
  return (
    endsStrand(pattern, index) &&
    !/\bRS|\bWS|side\b|\bend(?:ing)?\b/.test(own) &&
    !USES_LENGTH.test(own + pattern.tree.text.slice(instruction.span.to))
  );
}

/** Whether a chain begins a row, behind nothing but slip stitches, or ends one before the turn. */
function turnsOrStarts(pattern: Pattern, index: number, chain: Clause): boolean {
  const { clauses } = pattern.at(index).instruction;
  const at = clauses.indexOf(chain);
  if (at < 0) return false;
  if (clauses[at + 1]?.kind === "turn") return true;
  const before = clauses.slice(0, at);
  const moves = before.every(
    (clause) => (clause.kind === "work" && clause.stitch === "sl st") || MOVES.has(clause.kind),
  );
  return moves && pattern.at(index).instruction.label !== null;
}

/** Whether a row has as many stitches as the one before: every stitch worked once, nothing else. */
function keepsCount(pattern: Pattern, index: number): boolean {
  return pattern.clausesOf(index).every((clause) => {
    if (clause.kind === "work")
      return (
        clause.target.ref === "each" &&
        !clause.target.until?.at.match(/last|place|count/) &&
        !clause.count &&
        !/inc|dec|tog/.test(clause.stitch)
      );
    return ["chain", "turn", "join", "fasten-off", "aside", "colour", "loops"].includes(clause.kind);
  });
}

/** The rows from one beginning with new yarn to the next, with the sentences that stand before them. */
function strandOf(pattern: Pattern, index: number): Placed[] {
  const unlabelled = (at: number): boolean => pattern.at(at).instruction.label === null;
  const begins = (at: number): boolean =>
    unlabelled(at) && pattern.at(at).instruction.clauses.some((clause) => BEGINS.has(clause.kind));
  let from = index;
  while (from > 0 && !begins(from)) from--;
  while (from > 0 && unlabelled(from - 1)) from--;
  let to = index + 1;
  while (
    to < pattern.placed.length &&
    (!begins(to) || pattern.placed.slice(index, to).every(({ at }) => unlabelled(at)))
  )
    to++;
  return pattern.placed.slice(from, to);
}

const lastRangeEnd = (instruction: Placed["instruction"]): Amount | null => {
  const range = instruction.label?.rows.at(-1);
  return range && range.to.span.from !== range.from.span.from ? range.to : null;
};

/** Whether a number only says where in its row something lies: what comes last takes up one stitch more or fewer. */
function isTakenUp(pattern: Pattern, index: number, span: Span): boolean {
  const { clauses } = pattern.at(index).instruction;
  const at = clauses.findIndex((clause) => covers(clause.span, span));
  const clause = clauses[at];
  if (clause?.kind !== "work" || clause.count || !clause.target.count) return false;
  if (!covers(clause.target.count.span, span) || !["first", "next"].includes(clause.target.ref)) return false;
  // Nothing between them may depend on where it begins.
  const end = clauses.findIndex(
    (later, i) =>
      i > at &&
      later.kind === "work" &&
      later.stitch === clause.stitch &&
      !later.count &&
      later.target.ref === "each" &&
      later.target.what.is !== "space" &&
      (later.target.until === undefined || later.target.until.at === "end"),
  );
  const between = end < 0 ? [] : clauses.slice(at + 1, end);
  return end > at && between.every(({ kind }) => ["work", "group", "chain", "skip"].includes(kind));
}

export const OPERATORS: readonly Operator[] = [
  {
    reason: "a measure: another length or width is another garment, and its rows still work",
    harms: (change, { tree }) =>
      !(/number|count|stop|swapped/.test(change.kind) && isMeasure(tree.text, change.span)),
  },
  {
    reason: "the height of a turning or starting chain that is not counted as a stitch",
    harms: (change, pattern) => {
      const clause = pattern.clauseAt(change.instruction, change.span);
      if (change.kind !== "number in a row" || clause?.kind !== "chain") return true;
      const chains = clause.count.values[0] ?? 0;
      if (chains > 4 || !turnsOrStarts(pattern, change.instruction, clause)) return true;
      if (clause.countsAs) return clause.countsAs.parts.length > 0;
      const said = pattern.tree.notes.flatMap(({ says }) =>
        says.about === "turning-chain" && (says.chains ?? chains) === chains ? [says] : [],
      );
      if (said.length > 0) return said.some(({ parts }) => parts.length > 0);
      // Common practice, no source: a chain of one is not counted unless the pattern says so.
      const words = new RegExp(
        `\\b(?:${chains} ch|ch ${chains})\\b[^\\n]{0,160}(?:never|not|n't) count`,
        "i",
      );
      return chains !== 1 && !words.test(pattern.tree.text);
    },
  },
  {
    reason: "where in a row something lies: the stitches to its end take up one more or fewer",
    harms: (change, pattern) =>
      change.kind !== "number in a row" || !isTakenUp(pattern, change.instruction, change.span),
  },
  {
    reason: "where on a finished piece another is sewn: one round higher is another look",
    harms: (change, pattern) => {
      const { span, label } = pattern.at(change.instruction).instruction;
      const { text } = pattern.tree;
      if (label !== null || !/\b(?:sew|pin|embroider)/i.test(text.slice(span.from, span.to))) return true;
      return !/\b(?:over|between|at|above|below) (?:Rnds?|Rows?|Rounds?) (?:\d+ (?:and|to) )?$/.test(
        text.slice(0, change.span.from),
      );
    },
  },
  {
    reason: "a note says that every row is turned",
    harms: (change, { tree }) =>
      !(
        change.kind === "turn dropped" && tree.notes.some(({ says }) => says.about === "turn" && says.turned)
      ),
  },
  {
    reason: "a turn at the end of a piece, with nothing worked after it",
    harms: (change, pattern) => {
      if (change.kind !== "turn dropped") return true;
      const { label, clauses } = pattern.at(change.instruction).instruction;
      const goesOn = clauses.some(({ kind, span }) => span.from >= change.span.to && !IDLE.has(kind));
      return label === null || goesOn || !endsStrand(pattern, change.instruction);
    },
  },
  {
    reason: "the same row in other words: another number for a row that is worked alike",
    harms: (change, pattern) => {
      const clause = pattern.clauseAt(change.instruction, change.span);
      if (
        change.kind !== "number in a row" ||
        clause?.kind !== "repeat-rows" ||
        clause.rows.are !== "numbered"
      )
        return true;
      const { tree, placed } = pattern;
      const was = Number.parseInt(tree.text.slice(change.span.from, change.span.to), 10);
      const now = Number.parseInt(change.text, 10);
      const body = (row: number): string | null => {
        const mine = placed.filter(
          ({ piece, instruction }) =>
            piece === pattern.at(change.instruction).piece &&
            instruction.label?.rows[0]?.from.values[0] === row,
        );
        return mine[0] ? bodyOf(tree.text, mine[0].instruction) : null;
      };
      return body(was) === null || body(was) !== body(now);
    },
  },
  {
    reason: "a loop for the look of the fabric: no later row uses the loop that is left free",
    harms: (change, pattern) => {
      if (change.kind !== "loop exchanged") return true;
      const clause = pattern.clauseAt(change.instruction, change.span);
      if (clause?.kind !== "work" && clause?.kind !== "loops") return true;
      const row = pattern.at(change.instruction).instruction.label?.rows[0]?.from.values[0] ?? null;
      const later = pattern.tree.text.slice(pattern.at(change.instruction).instruction.span.to);
      const uses = [
        ...later.matchAll(
          /\bfree (?:front |back )?loops?[^.]{0,30}?(?:Rnd|Rnds|Row|Rows|Round) (\d+)|\b(?:front|back) loops? of (?:Rnd|Row|Round) (\d+)|\bunused (?:front |back )?loops?/gi,
        ),
      ];
      return uses.some((use) => {
        const named = use[1] ?? use[2];
        return named === undefined || row === null || Number(named) === row - 1;
      });
    },
  },
  {
    reason:
      "one row more or less at the end of a piece, where nothing is worked along its rows and no length is said",
    harms: (change, pattern) => {
      const { instruction } = pattern.at(change.instruction);
      if (change.kind === "row deleted")
        return !(lengthIsFree(pattern, change.instruction) && keepsCount(pattern, change.instruction));
      const end = lastRangeEnd(instruction);
      const atEnd = end !== null && covers(end.span, change.span);
      if (change.kind === "number in a label" || (change.kind === "sizes swapped" && atEnd))
        return !(atEnd && lengthIsFree(pattern, change.instruction));
      return true;
    },
  },
  {
    reason: "the only side named between two beginnings: which side is called right is the designer's to say",
    harms: (change, pattern) => {
      if (change.kind !== "side tag") return true;
      const { text } = pattern.tree;
      const strand = strandOf(pattern, change.instruction);
      // A seam says how finished pieces lie.
      const worked = strand.filter(
        ({ instruction }) => !instruction.clauses.some(({ kind }) => kind === "seam"),
      );
      const sides = worked.flatMap(({ instruction }) => [
        ...text
          .slice(instruction.span.from, instruction.span.to)
          .matchAll(/\b(?:RS|WS|right side|wrong side)\b/g),
      ]);
      return sides.length > 1;
    },
  },
  {
    reason: "the materials list no hook by its size",
    harms: (change, { tree }) =>
      !(change.kind === "hook size" && tree.materials.hooksMm.every(({ mm }) => mm.length === 0)),
  },
];

/** The change, marked with the first reason why it harms nobody. */
export function markHarmless(change: Mutation, pattern: Pattern): Mutation {
  const operator = OPERATORS.find((one) => !one.harms(change, pattern));
  return operator ? { ...change, harmless: operator.reason } : change;
}
