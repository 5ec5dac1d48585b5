import type { Finding } from "../../base/index.ts";
import { allStitches, hasStitch, lookupAbbreviations, stitchOf } from "../../stitches/index.ts";
import { definedNotUsed } from "../findings/index.ts";
import type { AbbreviationEntry, PatternTree } from "../tree.ts";
import { codesOf, spellingsOf } from "./explained.ts";
import { Phrases } from "./phrases.ts";
import { outside, type Seen } from "./seen.ts";

/** No list that people read is longer; each entry is held against every word of the text. */
const MOST = 300;

/** Entries of the list of abbreviations that nothing in the pattern needs, in any spelling. */
export function findDefinedNotUsed(seen: Seen): Finding[] {
  const { tree } = seen;
  // A list without rows below it is a leaf of a longer pattern.
  if (tree.abbreviations.length === 0 || seen.rows.length < 2) return [];
  const used = new Phrases(...withoutList(tree));
  const usedCodes = stitchesUsed(seen);
  return tree.abbreviations
    .slice(0, MOST)
    .filter((entry) => !isUsed(entry, used, usedCodes, tree.terms))
    .map((entry) => definedNotUsed.at(outside(entry.span), { word: entry.abbreviation.trim() }));
}

/** The stretches of the text between the entries. */
function withoutList(tree: PatternTree): string[] {
  const spans = tree.abbreviations.map(({ span }) => span).toSorted((a, b) => a.from - b.from);
  const stretches: string[] = [];
  let at = 0;
  for (const { from, to } of spans) {
    if (from > at) stretches.push(tree.text.slice(at, from));
    at = Math.max(at, to);
  }
  stretches.push(tree.text.slice(at));
  return stretches;
}

function stitchesUsed(seen: Seen): ReadonlySet<string> {
  return new Set(
    seen.rows.flatMap((row) => row.clauses.flatMap((one) => (one.kind === "work" ? one.stitch : []))),
  );
}

function isUsed(
  entry: AbbreviationEntry,
  used: Phrases,
  usedCodes: ReadonlySet<string>,
  terms: PatternTree["terms"],
): boolean {
  const spellings = spellingsOf(entry);
  // Signs such as stars and brackets explain themselves wherever they stand.
  if (spellings.length === 0) return true;
  const meaning = entry.meaning.split(/[;:,.(]/u)[0] ?? "";
  if ([...spellings, meaning].some((one) => used.has(one))) return true;
  const others = spellings.flatMap((one) => lookupAbbreviations(one, terms));
  if (others.some((one) => [...one.written, one.term].some((word) => used.has(word)))) return true;
  const codes = codesOf(entry, terms);
  if (codes.some((code) => usedCodes.has(code) || isPartOf(code, used))) return true;
  return spellings.some((spelling) => isShortFor(spelling.toLowerCase(), codes.length > 0, used));
}

/** Whether the stitch stands in the text under any name, or as part of another stitch: dc in "FPdc" and "dc2tog". */
function isPartOf(code: string, used: Phrases): boolean {
  if (!hasStitch(code)) return false;
  const { us, uk, alsoUs = [], alsoUk = [] } = stitchOf(code);
  if ([us.name, uk.name, ...alsoUs, ...alsoUk].some((name) => used.has(name))) return true;
  return allStitches().some((one) => one.parts?.includes(code) && used.has(one.us.name));
}

/** "cont" for "continuing", "tog" in "sc2tog", "BL" in "BLO"; the name of a stitch is looked for inside other names only. */
function isShortFor(spelling: string, isStitch: boolean, used: Phrases): boolean {
  const plain = spelling.replace(/[^a-z\d]/gu, "");
  if (plain.length < 2) return false;
  if (isStitch)
    return used.some(
      (word) => /\d|^(?:[fb]p|f|e|bl|fl|sp)/u.test(word) && word.includes(plain) && word !== plain,
    );
  return used.some((word) => word.startsWith(plain) || (plain.length > 2 && word.endsWith(plain)));
}
