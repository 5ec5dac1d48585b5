import type { Finding, Span } from "../../base/index.ts";
import { colourNotListed } from "../findings/index.ts";
import { Phrases } from "./phrases.ts";
import { inRow, linesOf, type RowSeen, type Seen } from "./seen.ts";

/** Words for a colour that say which of the listed ones by their order or their part in the piece. */
const RELATIVE =
  /^(?:(?:the|a|an|any|each|every|another|same|new|next|other|old|first|second|third|fourth|last|previous|contrasting|contrast|main|matching|light|lighter|dark|darker|desired|different|body|skin|nose|colou?rs?|yarns?|shade|of|your|choice)\b\s?)+$/iu;
/** A letter by itself, "MC", "CC1", "CA", or the name of a colour of one or two words. */
const NAMED = /^(?:\p{Lu}|M\.?C\.?|C\.?C\.?\s?\d?|C[A-F]|\p{L}{3,}(?:\s\p{L}{3,})?)$/u;

/** Colours that rows are worked in, where the materials list colours and not these. One finding a colour. */
export function findColoursNotListed(seen: Seen): Finding[] {
  const { tree } = seen;
  if (tree.materials.colours.length === 0) return [];
  const head = linesOf(
    tree,
    "materials",
    "abbreviations",
    "note",
    "sizes",
    "gauge",
    "prose",
    "title",
    "heading",
  );
  const listed = new Phrases(
    head,
    ...tree.materials.colours.map(({ name }) => name),
    ...tree.abbreviations.flatMap((entry) => [entry.abbreviation, entry.meaning]),
  );
  const found = new Map<string, Finding>();
  for (const row of seen.rows)
    for (const { colour, span } of coloursOf(row)) {
      const key = colour.toLowerCase();
      if (found.has(key) || isListed(colour, listed)) continue;
      found.set(key, colourNotListed.at(inRow(row, span), { colour }));
    }
  return [...found.values()];
}

function coloursOf(row: RowSeen): { readonly colour: string; readonly span: Span }[] {
  const { label } = row.instruction;
  const named = label?.colour === undefined ? [] : [{ colour: label.colour, span: label.span }];
  const used = row.clauses.flatMap((clause) =>
    (clause.kind === "colour" || clause.kind === "join-yarn" || clause.kind === "work") && clause.colour
      ? [{ colour: clause.colour.trim(), span: clause.span }]
      : [],
  );
  return [...named, ...used];
}

/** A long form for the letters that stand for one. */
const LONG_FORMS: readonly (readonly [RegExp, string])[] = [
  [/^m\.?c\.?$/iu, "main"],
  [/^c\.?c\.?\s?\d?$/iu, "contrasting"],
  [/^c\.?c\.?\s?\d?$/iu, "contrast"],
];

function isListed(colour: string, listed: Phrases): boolean {
  if (RELATIVE.test(colour) || !NAMED.test(colour)) return true;
  if (listed.has(colour)) return true;
  // "CA" is color A; "cream" may be listed as "off-white cream".
  const letter = /^c([a-f])$/iu.exec(colour)?.[1];
  if (letter !== undefined && listed.has(letter)) return true;
  if (LONG_FORMS.some(([short, long]) => short.test(colour) && listed.has(long))) return true;
  return colour.includes(" ") && colour.split(" ").some((word) => !RELATIVE.test(word) && listed.has(word));
}
