import type { Span } from "../base/index.ts";
import { hasStitch, lookupStitch } from "../stitches/index.ts";
import { splitSentences } from "./sentences.ts";

/*
 * Definitions of special stitches: "Shell: 5 dc in next st", "V-st = (dc, ch 1, dc) in same st", "Beginning shell (beg shell): ...".
 */

/** A definition as it stands on the page; its words are read once all names are known. */
export interface DefinitionFound {
  readonly span: Span;
  /** Lower case, the name first, then what stands in brackets behind it. */
  readonly names: readonly string[];
  /** The words that say how it is worked. */
  readonly words: Span;
  readonly countsAs?: number;
}

const NAME =
  /^[\s*_"'([{]{0,4}([\p{L}\d][\p{L}\d\s'/,-]{0,60}?)[*_"']{0,2}\s?(?:\(([^()]{1,40})\)|\[([^[\]]{1,40})\])?[*_"']{0,2}\s{0,2}(?:[:=]|,-{1,2}|(?<=[\s)\]])-{1,2}|-{1,2}(?=\s)|\.{2,}|(?<=\)\s{0,2})(?=\p{Lu}|\())\s{0,3}(?=\S)/u;

/** Several definitions side by side in one paragraph, each as its own stretch: "Shell: 5 dc in one st. Picot: ch 3, ..." */
export function splitDefinitions(flat: string, from: number, to: number): Span[] {
  const spans: Span[] = [];
  for (const sentence of splitSentences(flat, from, to)) {
    const last = spans.at(-1);
    const begins = /^\p{Lu}[\p{L}\d' /-]{1,30}(?:\([^()]{1,24}\))?\s?:\s/u.test(
      flat.slice(sentence.from, Math.min(sentence.to, sentence.from + 64)),
    );
    if (last && !begins) spans[spans.length - 1] = { from: last.from, to: sentence.to };
    else spans.push(sentence);
  }
  return spans;
}

/** The definitions in a stretch of flat text: one, or several that share their words ("FPdc, BPdc: ..."); none where no name stands. */
export function readDefinitions(flat: string, from: number, to: number): DefinitionFound[] {
  const found = NAME.exec(flat.slice(from, Math.min(to, from + 160)));
  if (!found) return [];
  const begin = from + found[0].length;
  if (begin >= to) return [];
  let end = to;
  while (end > begin && /\s/.test(flat[end - 1] as string)) end--;
  const counts = /\bcounts? as\s(?:a\s)?(\d{1,2}|one|two|three|four|five)\s(?:sts?|stitch|dc|sc|hdc)/i.exec(
    flat.slice(begin, end),
  );
  const number = counts
    ? ({ one: 1, two: 2, three: 3, four: 4, five: 5 }[(counts[1] as string).toLowerCase()] ??
      Number(counts[1]))
    : undefined;
  return namesIn(found[1] as string, found[2] ?? found[3]).map((names) => ({
    span: { from, to: end },
    names,
    words: { from: begin, to: end },
    ...(number !== undefined && !Number.isNaN(number) ? { countsAs: number } : {}),
  }));
}

/** The names of each stitch: "V-stitch (V-st)" is one with two, "FPdc, BPdc" are two stitches told in one sentence. */
function namesIn(name: string, bracket: string | undefined): string[][] {
  const stitches = name.split(/\s*,\s*(?:and\s)?|\s+and\s+/).filter((part) => part.trim() !== "");
  return stitches
    .map((stitch) =>
      cleanNames(
        stitches.length > 1
          ? stitch.split(/\bor\b/)
          : [...stitch.split(/\bor\b/), ...(bracket ?? "").split(/\s*(?:,|\bor\b|;)\s*/)],
      ),
    )
    .filter((names) => names.length > 0);
}

function cleanNames(parts: readonly string[]): string[] {
  const all = parts.map((part) =>
    part
      .replace(/^(?:abbreviated as|abbr\.?)\s/i, "")
      .replace(/["'*]/g, "")
      .replace(/\s+/g, " ")
      .trim()
      .toLowerCase(),
  );
  return [...new Set(all)].filter(
    (part) =>
      part !== "" && part.length <= 50 && !/^(?:note|us|uk|make \d|multiple|worked?|over|rs|ws)\b/.test(part),
  );
}

/** Every way a defined name is likely to be written in rows, to its first name. Names of the dictionary are left to it. */
export function specialSpellings(
  definitions: readonly DefinitionFound[],
  terms: "US" | "UK",
): Map<string, string> {
  const specials = new Map<string, string>();
  for (const { names } of definitions) {
    const first = names[0] as string;
    for (const name of names)
      for (const spelling of variants(name))
        if (!specials.has(spelling) && !isPlain(spelling, terms)) specials.set(spelling, first);
  }
  return specials;
}

/** "dc2tog" and "FPdc" explained in a list are still the dictionary's; "shell" or "cluster" is the pattern's own. */
function isPlain(spelling: string, terms: "US" | "UK"): boolean {
  const stitch = lookupStitch(spelling, terms);
  return stitch !== undefined && hasStitch(stitch.code) && stitch.varies !== true;
}

function variants(name: string): string[] {
  const forms = new Set([name, name.replace(/-/g, " "), name.replace(/[- ]/g, "")]);
  for (const form of [...forms]) {
    if (/\bstitch$/.test(form))
      forms.add(form.replace(/\bstitch$/, "st")).add(form.replace(/[- ]?stitch$/, ""));
    else if (/[- ]st$/.test(form)) forms.add(form.replace(/[- ]st$/, " stitch"));
    if (/^beginning\b/.test(form)) forms.add(form.replace(/^beginning\b/, "beg"));
  }
  for (const form of [...forms]) if (!form.endsWith("s")) forms.add(`${form}s`);
  return [...forms].filter((form) => form.length > 1);
}
