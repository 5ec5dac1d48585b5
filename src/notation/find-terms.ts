import type { Span } from "../base/index.ts";
import { LONGEST_SIGN, termSign } from "../stitches/index.ts";

/*
 * Whose terms a text uses: said in words, or told by words that only one side uses.
 */

export interface TermsFound {
  readonly terms: "US" | "UK";
  readonly from: "stated" | "told" | "assumed";
}

const NATION =
  "(?:us(?:a)?|u\\.s\\.(?:a\\.)?|american|north american|uk|u\\.k\\.|british|english|australian)";
const STATED: readonly RegExp[] = [
  new RegExp(
    `\\b(${NATION})\\s(?:standard\\s)?(?:crochet\\s)?(?:stitch\\s)?(?:terms?|terminology|abbreviations|stitch names|notation|crochet terms)\\b`,
    "gi",
  ),
  new RegExp(
    `\\b(?:terms?|terminology|abbreviations)\\b\\s?(?:[:=-]|used(?: are| is)?:?|are|is in|in|\\()\\s?(?:standard\\s)?(${NATION})\\b`,
    "gi",
  ),
  new RegExp(`\\bwritten\\s(?:in|using|with)\\s(?:standard\\s)?(${NATION})\\b`, "gi"),
];

/** The text before this length decides; the words of terms stand early and often. */
const ENOUGH = 200_000;

/** @param assumed  what a caller says for a text that does not tell */
export function findTerms(plain: string, assumed?: "US" | "UK"): TermsFound {
  const text = plain.slice(0, ENOUGH);
  const stated = statedTerms(text);
  if (stated) return { terms: stated, from: "stated" };
  const told = toldTerms(text);
  if (told) return { terms: told, from: "told" };
  return { terms: assumed ?? "US", from: assumed ? "stated" : "assumed" };
}

/** "US terms", "UK terminology", "Abbreviations (British)"; where both are said ("tr = US dc"), the one said first. */
function statedTerms(text: string): "US" | "UK" | null {
  let best: { at: number; terms: "US" | "UK" } | null = null;
  for (const pattern of STATED) {
    for (const found of text.matchAll(pattern)) {
      // "see the notes for US terms", "not US terms": says where else to look.
      if (
        /\b(?:not|for|see|convert|instead of|into|to)\s(?:the\s)?$/i.test(
          text.slice(Math.max(0, found.index - 14), found.index),
        )
      )
        continue;
      if (best === null || found.index < best.at)
        best = { at: found.index, terms: /^(?:u\.?s|am|north)/i.test(found[1] as string) ? "US" : "UK" };
    }
  }
  return best?.terms ?? null;
}

/** The words that say whose terms they are, wherever the text says so: "US" in "US terms". In order. */
export function statedWords(plain: string): Span[] {
  const text = plain.slice(0, ENOUGH);
  return STATED.flatMap((pattern) =>
    [...text.matchAll(pattern)].map((found) => {
      const word = found[1] as string;
      const from =
        found.index +
        found[0]
          .toLowerCase()
          .lastIndexOf(
            word.toLowerCase(),
            found[0].toLowerCase().startsWith(word.toLowerCase()) ? 0 : undefined,
          );
      return { from, to: from + word.length };
    }),
  )
    .sort((a, b) => a.from - b.from)
    .filter((span, at, all) => at === 0 || span.from !== (all[at - 1] as Span).from);
}

function toldTerms(text: string): "US" | "UK" | null {
  let us = 0;
  let uk = 0;
  const words = text.toLowerCase().match(/[a-z][a-z0-9.]*[a-z0-9]|[a-z]/g) ?? [];
  for (let i = 0; i < words.length; i++) {
    for (let length = LONGEST_SIGN; length >= 1; length--) {
      const sign = termSign(words.slice(i, i + length).join(" "));
      if (!sign) continue;
      if (sign.terms === "US") us += sign.weight;
      else uk += sign.weight;
      i += length - 1;
      break;
    }
  }
  // Three chains standing for a treble are British, whatever else is said.
  const chains =
    text.match(
      /\b3\s?ch\b[^.;\n]{0,40}\b(?:counts?|stands?|=)[^.;\n]{0,20}\b(?:1\s|first\s|1st\s|a\s)?tr\b|\bch\s?3\b[^.;\n]{0,30}\bcounts? as (?:a |1 |first |1st )?tr\b/gi,
    )?.length ?? 0;
  uk += chains * 10;
  if (us === uk) return null;
  const most = Math.max(us, uk);
  return most >= 3 ? (us > uk ? "US" : "UK") : null;
}
