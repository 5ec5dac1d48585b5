import { type Finding, Kept, type Span } from "../../base/index.ts";
import { notionNotListed } from "../findings/index.ts";
import { plainText } from "../glyphs.ts";
import { firstInstruction, inRow, outside, type RowSeen, type Seen } from "./seen.ts";

/*
 * Things that rows or finishing ask for and the materials do not list. What is sewn on has to be bought and is missed in
 * any list of materials; markers and needles lie in every maker's basket, so they are missed only where other notions are
 * listed.
 */

interface Notion {
  /** As the finding names it. */
  readonly name: string;
  readonly asked: RegExp;
  /** Whatever the materials may call it. */
  readonly listed: RegExp;
  readonly inEveryBasket?: true;
  /** A piece so named is crocheted, and nothing is bought. */
  readonly made?: RegExp;
}

const NOTIONS: readonly Notion[] = [
  {
    name: "buttons",
    asked:
      /\b(?:sew|sewing|attach|attaching)\s(?:on\s)?(?:the\s|your\s|a\s)?(?:[\w(),]{1,12}\s){0,4}buttons?\b(?!\s?-?(?:hole|band|loop|side|border|edge|tab|stand|placket))/iu,
    listed: /button|toggle|snap|closure|fasten/iu,
    made: /button/iu,
  },
  {
    name: "a zip",
    asked: /\b(?:sew|insert|pin|place|attach)\s(?:in\s|on\s)?(?:the\s|a\s|your\s)?(?:zip|zipper)\b/iu,
    listed: /\bzip/iu,
  },
  {
    name: "safety eyes",
    asked:
      /\b(?:insert|attach|place|put|add|fix|position)\s(?:in\s|the\s|your\s|both\s|two\s|2\s|\d{1,2}\s?mm\s){0,3}safety eyes?\b/iu,
    listed: /\beyes?\b/iu,
  },
  {
    name: "stuffing",
    asked:
      /\b(?:stuff\s(?:the|it|them|firmly|lightly|as|body|head|each|piece|with)|(?:begin|start|continue|finish)\s(?:stuffing|to stuff)|stuff (?:arms|legs|ears))\b/iu,
    listed: /stuff|filling|fill\b|fibre|fiber|poly|wadding|batting|padding|\bscraps?\b/iu,
  },
  {
    name: "elastic",
    asked:
      /\b(?:insert|thread|run|sew|cut|pull|draw)\s(?:the\s|a\s|in\s|your\s|length\s|of\s|piece\s){0,4}elastic\b/iu,
    listed: /elastic/iu,
  },
  {
    name: "ribbon",
    asked:
      /\b(?:insert|thread|run|weave|lace|draw|cut|sew)\s(?:the\s|a\s|in\s|your\s|length\s|of\s|piece\s|on\s){0,4}ribbons?\b/iu,
    listed: /ribbon/iu,
  },
  {
    name: "stitch markers",
    asked:
      /\b(?:stitch\s|locking\s|removable\s|place\s(?:a\s|the\s)?|move\s(?:the\s|a\s|your\s)?|put\s(?:a\s|the\s)?)markers?\b/iu,
    listed: /marker|\bpins?\b|clip|scrap|contrast|waste/iu,
    inEveryBasket: true,
  },
  {
    name: "a yarn needle",
    asked: /\b(?:yarn|tapestry|darning|sewing|blunt|wool)\sneedles?\b/iu,
    listed: /needle/iu,
    inEveryBasket: true,
  },
];

export function findNotionsNotListed(seen: Seen): Finding[] {
  const { tree } = seen;
  const { materials } = tree;
  if (materials.span === null) return [];
  const listed = listedWords(seen);
  const hasNotions = materials.notions.length > 0;
  return NOTIONS.flatMap((notion) => {
    if (notion.listed.test(listed) || (notion.inEveryBasket === true && !hasNotions)) return [];
    if (notion.made && tree.pieces.some(({ name }) => notion.made?.test(name))) return [];
    const use = firstUse(seen, notion.asked);
    if (use === null) return [];
    const where = use.row === null ? outside(use.span) : inRow(use.row, use.span);
    return [notionNotListed.at(where, { notion: notion.name })];
  });
}

/** The materials, and every line of the head that may belong to them: all but notes, which speak of the work. */
function listedWords(seen: Seen): string {
  const { text, others, materials } = seen.tree;
  const head = firstInstruction(seen);
  const lines = others.filter(
    ({ is, span }) =>
      is === "materials" ||
      (span.to <= head && (is === "prose" || is === "heading" || is === "sizes" || is === "gauge")),
  );
  const own = materials.span === null ? "" : text.slice(materials.span.from, materials.span.to);
  return [
    own,
    ...materials.notions.map(({ words }) => words),
    ...lines.map(({ span }) => text.slice(span.from, span.to)),
  ].join("\n");
}

interface Use {
  readonly span: Span;
  readonly row: RowSeen | null;
}

/** The first place in rows or finishing where the words stand. */
function firstUse(seen: Seen, asked: RegExp): Use | null {
  const { text, others } = seen.tree;
  const places: Use[] = [
    ...seen.rows.map((row): Use => ({ span: row.instruction.span, row })),
    ...others.filter((line) => line.is === "finishing").map(({ span }): Use => ({ span, row: null })),
  ];
  for (const { span, row } of places) {
    const found = placeOf(asked, text.slice(span.from, span.to));
    if (found) return { span: { from: span.from + found.from, to: span.from + found.to }, row };
  }
  return null;
}

const NOWHERE: Span = { from: -1, to: -1 };

/** Where words met before ask for each thing. */
const places = new Map(NOTIONS.map(({ asked }) => [asked, new Kept<string, Span>(2000)]));

function placeOf(asked: RegExp, words: string): Span | null {
  const known = places.get(asked);
  let place = known?.get(words);
  if (!place) {
    const match = asked.exec(plainText(words));
    place = match ? { from: match.index, to: match.index + match[0].length } : NOWHERE;
    known?.set(words, place);
  }
  return place === NOWHERE ? null : place;
}
