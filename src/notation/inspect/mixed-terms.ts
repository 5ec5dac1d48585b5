import { type Finding, Kept, type Span } from "../../base/index.ts";
import { LONGEST_SIGN, type TermSign, termSign } from "../../stitches/index.ts";
import { termsMixed } from "../findings/index.ts";
import { plainText } from "../glyphs.ts";
import { Explained } from "./explained.ts";
import { inRow, type RowSeen, type Seen } from "./seen.ts";

/*
 * Words in rows that cannot be of the pattern's own terms: "htr" in American terms, "sc" in British ones. Words that only
 * lean, such as "miss", stand in texts of both and are let be.
 */

/** Only a word with this weight decides by itself. */
const DECIDES = 10;
/** Named in British terms and known in America as well. */
const IN_BOTH = /^(?:quadruple treble|qtr)$/u;
const WORD = /[\p{L}][\p{L}\p{M}\d'.]*/gu;

export function findMixedTerms(seen: Seen): Finding[] {
  const { tree } = seen;
  if (tree.termsFrom === "assumed") return [];
  const explained = new Explained(tree);
  const own = new Set<string>();
  const foreign = new Map<string, { readonly row: RowSeen; readonly span: Span; readonly word: string }>();
  for (const row of seen.rows)
    for (const { span, sign } of signsIn(row, tree.text)) {
      if (sign.weight < DECIDES || IN_BOTH.test(sign.words)) continue;
      if (sign.terms === tree.terms) own.add(sign.words);
      else if (!foreign.has(sign.words) && !standsBeside(tree.text, span)) {
        foreign.set(sign.words, { row, span, word: tree.text.slice(span.from, span.to) });
      }
    }
  // Terms that are told by their words need such a word among the rows too.
  if (tree.termsFrom === "told" && own.size === 0) return [];
  return [...foreign.values()]
    .filter(({ word }) => !explained.hasSpelling(word))
    .map(({ row, span, word }) =>
      termsMixed.at(inRow(row, span), { word, terms: tree.terms, because: because(seen, own) }),
    );
}

interface SignFound {
  readonly from: number;
  readonly to: number;
  readonly sign: TermSign;
}

/** The signs in a row. */
function signsIn(row: RowSeen, text: string): { readonly span: Span; readonly sign: TermSign }[] {
  const { from, to } = row.instruction.span;
  const words = text.slice(from, to);
  let found = signs.get(words);
  if (!found) {
    found = signsOf(words);
    signs.set(words, found);
  }
  return found.map((one) => ({ span: { from: from + one.from, to: from + one.to }, sign: one.sign }));
}

/** Signs in words met before. */
const signs = new Kept<string, readonly SignFound[]>(3000);

/** Longest first where one holds another. */
function signsOf(text: string): readonly SignFound[] {
  const words = [...plainText(text).matchAll(WORD)];
  const found: SignFound[] = [];
  for (let i = 0; i < words.length; i += 1) {
    for (let length = LONGEST_SIGN; length > 0; length -= 1) {
      const run = words.slice(i, i + length);
      const last = run.at(-1);
      const first = run[0];
      if (first === undefined || last === undefined || run.length < length) continue;
      const sign = termSign(run.map(([word]) => word.replace(/'s$/u, "")).join(" "));
      if (sign === undefined) continue;
      // A full stop behind the word ends the sentence.
      const end = last.index + last[0].replace(/\.$/u, "").length;
      found.push({ from: first.index, to: end, sign });
      i += length - 1;
      break;
    }
  }
  return found;
}

/** "hdc (UK htr)", "dc/htr", "htr = hdc": the word stands beside its own translation. */
function standsBeside(text: string, { from, to }: Span): boolean {
  const around = text.slice(Math.max(0, from - 16), to + 16);
  const before = text.slice(Math.max(0, from - 2), from);
  const behind = text.slice(to, to + 2);
  return (
    /\b(?:US|UK|USA|British|American|Brit|terms?)\b/iu.test(around) ||
    /[/=([]\s?$/u.test(before) ||
    /^\s?[/=]/u.test(behind)
  );
}

function because({ tree }: Seen, own: ReadonlySet<string>): string {
  if (tree.termsFrom === "stated") return "the pattern says so";
  const [first, second] = [...own];
  return second === undefined ? `it has ${first}` : `it has ${first} and ${second}`;
}
