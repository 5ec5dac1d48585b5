import { type GradingRule, type Linear, linearOf, type Vocabulary } from "../../sizing/index.ts";
import { entryNotUnderstood, measureNotRead } from "../findings/index.ts";
import type { Tie } from "./document.ts";
import { readWords } from "./measures.ts";
import type { Entry, Table, TableNode, Words } from "./table.ts";

const WANTS = 'A tie is a sentence with "is" in it, as in back shoulder sts is front shoulder sts.';
const WITHIN = /,?\s*within\s+(\d{1,5}(?:\.\d{1,3})?)\s*(cm|mm|in|sts?|stitch(?:es)?|rows?)?\s*$/i;

/** Rules between counts, each a sentence: "body sts is chest sts plus twice notch sts", "..., within 1 cm". */
export function readTies(table: Table, entry: Entry | undefined, vocabulary: Vocabulary): Tie[] {
  if (entry === undefined) return [];
  const nodes = table.isMap(entry.node)
    ? table.entries(entry.node, entry.key).map(({ node }) => node)
    : table.items(entry.node);
  return nodes.flatMap((node) => readTie(table, entry, node, vocabulary) ?? []);
}

function readTie(table: Table, entry: Entry, node: TableNode | null, vocabulary: Vocabulary): Tie | null {
  const words = table.wordsOf(node);
  const is = words && /\s(?:is|are|=|equals?|(?:is\s+)?the\s+same\s+as)\s/i.exec(words.text);
  if (!words || !is) {
    const span = table.spanOf(node);
    table.tell(entryNotUnderstood, span, { entry: entry.key, found: table.excerpt(node), wants: WANTS });
    return null;
  }
  const slack = WITHIN.exec(words.text);
  const end = slack?.index ?? words.text.length;
  const left = readWords(table, partOf(words, 0, is.index), "ties", vocabulary);
  const right = readWords(table, partOf(words, is.index + is[0].length, end), "ties", vocabulary);
  if (left === null || right === null) return null;
  const [a, b] = [linearOf(left), linearOf(right)];
  const rule = a && b && ruleOf(a, b, words.text.trim(), slack);
  if (!rule) {
    table.tell(measureNotRead, words.span, {
      entry: "ties",
      problem:
        "A tie joins counts by plus and minus, with one number for all sizes, and speaks of at least one count.",
    });
    return null;
  }
  return { span: words.span, words: words.text.trim(), rule };
}

const partOf = (words: Words, from: number, to: number): Words => ({
  text: words.text.slice(from, to),
  span: words.span,
  place: (span) => words.place({ from: from + span.from, to: from + span.to }),
});

function ruleOf(a: Linear, b: Linear, words: string, slack: RegExpExecArray | null): GradingRule | null {
  const times = new Map(a.times);
  for (const [name, n] of b.times) times.set(name, (times.get(name) ?? 0) - n);
  const terms = [...times].filter(([, n]) => n !== 0);
  const pluses = [...a.plus, ...b.plus];
  if (terms.length === 0 || new Set(a.plus).size > 1 || new Set(b.plus).size > 1 || pluses.length === 0)
    return null;
  const makes = (b.plus[0] ?? 0) - (a.plus[0] ?? 0);
  const unit = slack?.[2]?.toLowerCase();
  const measured = unit === "cm" || unit === "mm" || unit === "in" ? "cm" : "counts";
  if (measured === "cm" && makes !== 0) return null;
  const within = slack ? Number(slack[1]) * (unit === "mm" ? 0.1 : unit === "in" ? 2.54 : 1) : 0;
  const [one, other] = terms;
  if (
    terms.length === 2 &&
    measured === "counts" &&
    within === 0 &&
    one &&
    other &&
    one[1] === -other[1] &&
    Math.abs(one[1]) === 1
  ) {
    const [of, as] = one[1] === 1 ? [one[0], other[0]] : [other[0], one[0]];
    const plus = one[1] === 1 ? makes : makes;
    if (Number.isInteger(plus)) return { kind: "equal", of, as, plus, words };
  }
  return {
    kind: "sum",
    terms: terms.map(([of, n]) => ({ of, times: n })),
    makes,
    measured,
    ...(within > 0 ? { within } : {}),
    words,
  };
}
