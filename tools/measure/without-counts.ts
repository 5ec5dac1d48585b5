import type { Span } from "../../src/base/index.ts";
import { type Instruction, type PatternTree, readPattern } from "../../src/notation/index.ts";
import { allClauses, placeAll } from "./pattern-text.ts";
import { drawSome } from "./random.ts";

/** A pattern text that prints fewer of its counts. */
export interface FewerCounts {
  readonly text: string;
  readonly removed: number;
  readonly printed: number;
}

/**
 * Takes a share of the printed counts out of a pattern, drawn by lot. A count that cannot be taken out without leaving
 * words behind that the reader does not understand stays where it is.
 */
export function removeCounts(tree: PatternTree, share: number, seed: number): FewerCounts {
  const all = placeAll(tree).flatMap(({ instruction }) =>
    instruction.label === null && instruction.clauses.length === 0
      ? []
      : statements(tree.text, instruction).map((span) => ({ instruction, span: gapOf(tree.text, span) })),
  );
  let chosen = drawSome(all, Math.round(all.length * share), seed);
  // Reading again may show words left behind; putting those back may be needed for a neighbour too, so a few times.
  for (let round = 0; round < 3; round++) {
    const text = cut(
      tree.text,
      chosen.map(({ span }) => span),
    );
    const spoilt = spoiltBy(
      tree,
      chosen.map(({ span }) => span),
      readPattern(text),
    );
    if (spoilt.size === 0) return { text, removed: chosen.length, printed: all.length };
    chosen = chosen.filter(({ instruction }) => !spoilt.has(instruction));
  }
  return {
    text: cut(
      tree.text,
      chosen.map(({ span }) => span),
    ),
    removed: chosen.length,
    printed: all.length,
  };
}

/** Counts that stand together are one statement, "(22, 30, 38 sts)", with the brackets around them. */
function statements(text: string, { claims }: Instruction): Span[] {
  const spans: { from: number; to: number }[] = [];
  for (const { span } of [...claims].sort((a, b) => a.span.from - b.span.from)) {
    const last = spans.at(-1);
    if (last && span.from < last.to + 3 && !/[()[\]{}]/.test(text.slice(last.to, span.from)))
      last.to = Math.max(last.to, span.to);
    else spans.push({ ...span });
  }
  return spans.map(({ from, to }) => {
    const closed = /[([{]$/.test(text.slice(0, from)) ? /^[^()[\]{}]{0,16}[)\]}]/.exec(text.slice(to)) : null;
    return closed ? { from: from - 1, to: to + closed[0].length } : { from, to };
  });
}

/** The count with the sign before it and, where it was a sentence of its own, its full stop. */
function gapOf(text: string, { from, to }: Span): Span {
  const before = /[\s=:—–-]*$/.exec(text.slice(0, from))?.[0].length ?? 0;
  const sentence = /[.;]$/.test(text.slice(0, from - before)) && /^\s?\./.test(text.slice(to));
  return { from: from - before, to: to + (sentence ? (/^\s?\./.exec(text.slice(to))?.[0].length ?? 0) : 0) };
}

function cut(text: string, spans: readonly Span[]): string {
  let result = "";
  let at = 0;
  for (const { from, to } of [...spans].sort((a, b) => a.from - b.from)) {
    if (from < at) continue;
    result += text.slice(at, from);
    at = to;
  }
  return result + text.slice(at);
}

/** The instructions that hold more unread words than before, or that are no longer found where they stood. */
function spoiltBy(tree: PatternTree, gaps: readonly Span[], after: PatternTree): Set<Instruction> {
  const moved = (offset: number): number =>
    offset - gaps.reduce((sum, { from, to }) => sum + Math.max(0, Math.min(to, offset) - from), 0);
  const now = new Map(placeAll(after).map(({ instruction }) => [instruction.span.from, instruction]));
  const unread = ({ clauses }: Instruction): number =>
    allClauses(clauses).filter(({ clause }) => clause.kind === "remark").length;
  const spoilt = new Set<Instruction>();
  for (const { instruction } of placeAll(tree)) {
    const same = now.get(moved(instruction.span.from));
    if (!same || unread(same) > unread(instruction) || same.clauses.length !== instruction.clauses.length)
      spoilt.add(instruction);
  }
  return spoilt;
}
