import { lookupHook, lookupYarnClasses } from "../../stitches/index.ts";
import { entryNotUnderstood } from "../findings/index.ts";
import type { Yarn } from "./document.ts";
import type { Entry, Table } from "./table.ts";

const KNOWN = {
  class: ["weight", "yarn class"],
  metres: ["meters", "metre", "meter", "m"],
  yards: ["yd", "yard"],
  grams: ["g", "gram"],
  price: [],
  colour: ["color"],
  fibre: ["fiber"],
  called: [],
  instead: ["or"],
  name: [],
} as const;

const METRES_A_YARD = 0.9144;

/** The yarns, by the names the design gives them; one without a name of its own is "main". */
export function readYarns(table: Table, entry: Entry | undefined): Yarn[] {
  if (entry === undefined) return [];
  const entries = table.entries(entry.node, entry.key);
  // A single yarn may be written without a name above it.
  const single = entries.some(({ node }) => node !== null && !table.isMap(node));
  const named: Entry[] = single ? [{ ...entry, key: "main" }] : entries;
  return named.map((yarn) => readYarn(table, yarn));
}

function readYarn(table: Table, yarn: Entry): Yarn {
  const own = table.known(table.entries(yarn.node, yarn.key), KNOWN, yarn.key);
  const yards = positive(table, own.yards);
  return {
    name: yarn.key,
    span: yarn.keySpan,
    yarnClass: classOf(table, own.class),
    metres: positive(table, own.metres) ?? (yards === null ? null : yards * METRES_A_YARD),
    grams: positive(table, own.grams),
    price: priceOf(table, own.price),
    colour: own.colour ? (table.words(own.colour, "A colour is words.")?.text ?? null) : null,
    fibre: own.fibre ? (table.words(own.fibre, "A fibre is words.")?.text ?? null) : null,
    called: own.called ? (table.words(own.called, "What the rows call it, as in A.")?.text ?? null) : null,
    instead: own.instead
      ? table.entries(own.instead.node, own.instead.key).map((other) => readYarn(table, other))
      : [],
  };
}

function classOf(table: Table, entry: Entry | undefined): number | null {
  if (entry === undefined) return null;
  const wants = "The class is a number from 0 to 7, or a name such as worsted.";
  const words = table.words(entry, wants);
  if (words === null) return null;
  const [found] = lookupYarnClasses(words.text);
  if (found) return found.number;
  table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: words.text.trim(), wants });
  return null;
}

/** A number above 0, with or without its unit behind it. */
export function positive(table: Table, entry: Entry | undefined, wants?: string): number | null {
  if (entry === undefined) return null;
  const say = wants ?? "A number above 0 belongs here.";
  const words = table.words(entry, say);
  if (words === null) return null;
  const found = /^(\d{1,9}(?:\.\d{1,6})?)\s*(?:m|g|yd|metres|meters|grams|yards)?$/i.exec(words.text.trim());
  const value = Number(found?.[1] ?? 0);
  if (value > 0) return value;
  table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: words.text.trim(), wants: say });
  return null;
}

/** A sum with its currency: "6.40 EUR". */
export function priceOf(table: Table, entry: Entry | undefined): Yarn["price"] {
  if (entry === undefined) return null;
  const wants = "A price is a number with its currency, as in 6.40 EUR.";
  const words = table.words(entry, wants);
  if (words === null) return null;
  const found =
    /^(?:(\d{1,7}(?:\.\d{1,3})?)\s*([A-Za-z]{3}|[^\s\d.,])|([A-Za-z]{3}|[^\s\d.,])\s*(\d{1,7}(?:\.\d{1,3})?))$/u.exec(
      words.text.trim(),
    );
  if (found)
    return { amount: Number(found[1] ?? found[4]), currency: (found[2] ?? found[3] ?? "").toUpperCase() };
  table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: words.text.trim(), wants });
  return null;
}

/** A hook in millimetres, by its millimetres or its letter. */
export function hookOf(table: Table, entry: Entry, words: string): number | null {
  const found = lookupHook(words);
  if (found) return found.mm;
  table.tell(entryNotUnderstood, entry.span, {
    entry: entry.key,
    found: words.trim(),
    wants: "A hook is said in millimetres, as in 5.5 mm.",
  });
  return null;
}

/** The hooks the design lists: "5.5 mm, 5 mm", a list, or a map of what each is for. */
export function readHooks(table: Table, entry: Entry | undefined): number[] {
  if (entry === undefined) return [];
  const nodes = table.isMap(entry.node)
    ? table.entries(entry.node, entry.key).map(({ node }) => node)
    : table.items(entry.node);
  return nodes.flatMap((node) => {
    const words = table.wordsOf(node)?.text ?? "";
    return words
      .split(/,|\band\b/)
      .filter((one) => one.trim() !== "")
      .flatMap((one) => hookOf(table, { ...entry, span: table.spanOf(node) }, one) ?? []);
  });
}
