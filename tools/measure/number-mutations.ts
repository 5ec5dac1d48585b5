import type { Span } from "../../src/base/index.ts";
import type { Amount, Clause } from "../../src/notation/index.ts";
import type { Kind, Mutation } from "./mutation.ts";
import { dress, findFigures, type Numeral, readWord } from "./numerals.ts";
import { allClauses, amountsIn, covers, type Placed } from "./pattern-text.ts";
import { drawSome, seedOf } from "./random.ts";

/** Of a list with a value for every size, so many values are changed, one at a time. */
const SIZES_TRIED = 2;

/** Every number of an instruction up and down by one, and the values of neighbouring sizes exchanged. */
export function changeNumbers(text: string, { at, instruction }: Placed): Mutation[] {
  const { span, label, clauses, claims, answers } = instruction;
  const amounts = amountsIn([label, clauses, claims]);
  const lists = new Map<Amount | null, Numeral[]>();
  for (const numeral of numeralsIn(text, span, amounts)) {
    if (answers.some((answer) => covers(answer.span, numeral.span))) continue;
    const list =
      amounts.filter((amount) => amount.values.length > 1 && covers(amount.span, numeral.span))[0] ?? null;
    const kept = lists.get(list) ?? [];
    kept.push(numeral);
    lists.set(list, kept);
  }
  const placed = allClauses(clauses).map(({ clause }) => clause);
  const stops = stopSpans(placed);
  const kindAt = (where: Span): Kind => {
    if (claims.some((claim) => covers(claim.span, where))) return "printed count";
    if (label && covers(label.span, where)) return "number in a label";
    if (stops.some((stop) => covers(stop, where))) return "repeat's stop";
    const inside = placed.filter((clause) => covers(clause.span, where)).at(-1);
    if (inside?.kind === "hook") return "hook size";
    return inside === undefined || inside.kind === "aside" || inside.kind === "remark"
      ? "number not read"
      : "number in a row";
  };
  const change = (numeral: Numeral, value: number, kind = kindAt(numeral.span)): Mutation[] => {
    const words = dress(text, numeral, value);
    if (words === null) return [];
    return [
      {
        kind,
        instruction: at,
        span: numeral.span,
        text: words,
        words: `${text.slice(numeral.span.from, numeral.span.to)} → ${words}`,
      },
    ];
  };
  const oneUpOneDown = (numeral: Numeral, listed: boolean): Mutation[] => {
    const kind = kindAt(numeral.span);
    if (kind === "hook size") return [];
    const least = listed ? 0 : 1;
    return [numeral.value - 1, numeral.value + 1]
      .filter((value) => value >= least)
      .flatMap((value) => change(numeral, value, kind));
  };
  return [...lists].flatMap(([list, numerals]) => {
    if (list === null) return numerals.flatMap((numeral) => oneUpOneDown(numeral, false));
    const some = drawSome(
      numerals,
      SIZES_TRIED,
      seedOf(text.slice(list.span.from, list.span.to)) + list.span.from,
    );
    return [...some.flatMap((numeral) => oneUpOneDown(numeral, true)), ...exchange(text, at, numerals)];
  });
}

/** Figures anywhere in the instruction, and number words where the reader took them for numbers. */
function numeralsIn(text: string, span: Span, amounts: readonly Amount[]): Numeral[] {
  const words = amounts.flatMap((amount) => readWord(text, amount.span) ?? []);
  return [...findFigures(text, span), ...words].sort((a, b) => a.span.from - b.span.from);
}

/** Where repeats of stitches and of rows stop. */
function stopSpans(clauses: readonly Clause[]): Span[] {
  return clauses.flatMap((clause) => {
    if (clause.kind === "repeat") return [clause.stop.span];
    if (clause.kind === "repeat-rows") return clause.times ? [clause.times.span] : [];
    if (clause.kind === "work" || clause.kind === "in-pattern")
      return clause.target.until && clause.target.until.at !== "end" ? [clause.target.until.span] : [];
    return [];
  });
}

/** Two neighbours of a list exchanged: the first pair that differs and, in a long list, one from its end. */
function exchange(text: string, instruction: number, numerals: readonly Numeral[]): Mutation[] {
  const pairs = numerals.slice(1).flatMap((second, before) => {
    const first = numerals[before] as Numeral;
    return first.value === second.value ? [] : [[first, second] as const];
  });
  const last = pairs.at(-1);
  const chosen = pairs.length > 2 && last ? [pairs[0] as (typeof pairs)[number], last] : pairs.slice(0, 1);
  return chosen.flatMap(([first, second]) => {
    const to = dress(text, first, second.value);
    const from = dress(text, second, first.value);
    if (to === null || from === null) return [];
    const span = { from: first.span.from, to: second.span.to };
    const between = text.slice(first.span.to, second.span.from);
    return [
      {
        kind: "sizes swapped",
        instruction,
        span,
        text: `${to}${between}${from}`,
        words: `${text.slice(span.from, span.to)} → ${to}${between}${from}`,
      },
    ];
  });
}
