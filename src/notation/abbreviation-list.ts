import { lookupStitch } from "../stitches/index.ts";
import type { AbbreviationEntry } from "./tree.ts";

/*
 * Lists of abbreviations: "sc = single crochet; dc = double crochet", "ch - chain", "ch, chain;", "sc: single crochet".
 */

const SHORT = "[\\p{L}\\d][\\p{L}\\d()/*.'-]{0,12}(?:\\s[\\p{L}\\d]{1,8}(?:\\((?:s|es)\\))?){0,2}";
const SEPARATORS: readonly RegExp[] = [
  new RegExp(`^\\s*[-*•(]?\\s?(${SHORT})\\s?\\)?\\s?=\\s?(.+)$`, "u"),
  new RegExp(`^\\s*[-*•(]?\\s?(${SHORT})\\s?:\\s?(.+)$`, "u"),
  new RegExp(`^\\s*[-*•(]?\\s?(${SHORT})\\s?(?:\\s-{1,2}|-{1,2}\\s|\\.{2,}|…)\\s?(.+)$`, "u"),
  new RegExp(`^\\s*(${SHORT})\\s?,\\s(.+)$`, "u"),
  new RegExp(`^\\s*(${SHORT})\\s\\((.+)\\)\\s*$`, "u"),
];
const REVERSED = /^\s*([\p{L}][\p{L} -]{3,40}?)\s?(?:\(|=\s?|:\s?|\s-\s)([\p{L}\d]{1,8}(?:\s?st)?)\)?\s*$/u;

/** The entries in a stretch of plain text, in order. Spans are exact; words that are no entry are passed over. */
export function readAbbreviations(
  text: string,
  plain: string,
  from: number,
  to: number,
  terms: "US" | "UK",
): AbbreviationEntry[] {
  const entries: AbbreviationEntry[] = [];
  for (const part of entryParts(plain, from, to)) {
    const words = plain.slice(part.from, part.to);
    const found = matchEntry(words);
    if (!found) continue;
    const [abbreviation, meaning] = found;
    const at = part.from + words.indexOf(abbreviation);
    const meant = part.from + words.lastIndexOf(meaning);
    const code = codeOf(abbreviation, meaning, terms);
    entries.push({
      span: { from: Math.min(at, meant), to: part.to },
      abbreviation: text.slice(at, at + abbreviation.length),
      meaning: text
        .slice(meant, meant + meaning.length)
        .replace(/\s+/g, " ")
        .replace(/[.;,]$/, "")
        .trim(),
      ...(code ? { code } : {}),
    });
  }
  return entries;
}

function matchEntry(words: string): [string, string] | null {
  const reversed = REVERSED.exec(words);
  if (
    reversed &&
    (reversed[2] as string).length < (reversed[1] as string).length &&
    lookupStitch(reversed[1] as string, "US") &&
    !lookupStitch(reversed[1] as string, "US")?.code.includes((reversed[1] as string).toLowerCase())
  ) {
    return [reversed[2] as string, reversed[1] as string];
  }
  for (const separator of SEPARATORS) {
    const found = separator.exec(words);
    if (!found) continue;
    const abbreviation = (found[1] as string).trim();
    const meaning = (found[2] as string).trim();
    if (meaning.length > 0 && meaning.length < 300 && abbreviation.length <= 18)
      return [abbreviation, meaning];
  }
  return null;
}

/** Lines, and inside a line the stretches between semicolons; a list with full stops between its entries is cut at those. */
function entryParts(plain: string, from: number, to: number): { from: number; to: number }[] {
  const parts: { from: number; to: number }[] = [];
  const words = plain.slice(from, to);
  const semicolons = words.split(";").length - 1;
  const equals = words.split(/\s?[=:]\s?/).length - 1;
  const stops = semicolons === 0 ? words.split(/\.\s(?=[a-z(])/i).length - 1 : 0;
  const commas = semicolons === 0 && stops < 2 && equals > 1;
  let start = from;
  let depth = 0;
  for (let at = from; at < to; at++) {
    const glyph = plain[at] as string;
    if (glyph === "(" || glyph === "[") depth++;
    if (glyph === ")" || glyph === "]") depth = Math.max(0, depth - 1);
    const cut =
      glyph === "\n" ||
      (depth === 0 &&
        (glyph === ";" ||
          (glyph === "." &&
            stops >= 2 &&
            /^\.\s+[\p{L}(]/u.test(plain.slice(at, at + 4)) &&
            !/\bsl$/i.test(plain.slice(at - 3, at))) ||
          (commas && glyph === "," && /^,\s?[\w() ]{1,12}\s?[=:]/.test(plain.slice(at, at + 20)))));
    if (!cut) continue;
    if (glyph === "\n") depth = 0;
    parts.push({ from: start, to: at });
    start = at + 1;
  }
  parts.push({ from: start, to });
  return parts.map((part) => trim(plain, part.from, part.to)).filter((part) => part.to > part.from);
}

function trim(plain: string, from: number, to: number): { from: number; to: number } {
  let start = from;
  let end = to;
  while (start < end && /\s/.test(plain[start] as string)) start++;
  while (end > start && /[\s.]/.test(plain[end - 1] as string)) end--;
  return { from: start, to: end };
}

/** The stitch that the meaning names in these terms, or else the abbreviation itself. */
function codeOf(abbreviation: string, meaning: string, terms: "US" | "UK"): string | undefined {
  const plainMeaning = meaning
    .replace(/\(.*$/, "")
    .replace(/[.,;:].*$/, "")
    .trim();
  const byMeaning = lookupStitch(plainMeaning, terms);
  if (byMeaning) return byMeaning.code;
  return lookupStitch(abbreviation.replace(/\(s\)$|\(es\)$/, ""), terms)?.code;
}
