import {
  completeReading,
  gaugeOfFabric,
  nearestName,
  plainName,
  readMultiple,
  readSwatchMeasures,
  readSwatchState,
  type Swatch,
  type SwatchReading,
} from "../../sizing/index.ts";
import { lookupStitch, yarnClass } from "../../stitches/index.ts";
import { entryNotUnderstood, entryUnknown, gaugeOutsideClass, nameUnknown } from "../findings/index.ts";
import type { Fabric, Yarn } from "./document.ts";
import { minutesOf } from "./making-habits.ts";
import { tellSlip } from "./measures.ts";
import type { Entry, Table, TableNode } from "./table.ts";
import { hookOf, positive } from "./yarns.ts";

const KNOWN = {
  hook: [],
  yarn: [],
  multiple: ["repeat"],
  swatch: ["swatches"],
  stitch: [],
  headings: ["heading"],
} as const;

/** The fabrics with their swatches and what these come to. */
export function readFabrics(
  table: Table,
  entry: Entry | undefined,
  yarns: readonly Yarn[],
  terms: "US" | "UK",
): Fabric[] {
  if (entry === undefined) return [];
  return table.entries(entry.node, entry.key).map((fabric) => {
    const own = table.known(table.entries(fabric.node, fabric.key), KNOWN, fabric.key);
    const hook = own.hook && table.words(own.hook, "A hook is said in millimetres, as in 5.5 mm.");
    const swatches = own.swatch ? readSwatches(table, own.swatch, terms) : [];
    const made: Fabric = {
      name: fabric.key,
      span: fabric.keySpan,
      stitch: own.stitch ? (table.words(own.stitch, "A stitch is words.")?.text.trim() ?? null) : null,
      hookMm: own.hook && hook ? hookOf(table, own.hook, hook.text) : null,
      yarn: own.yarn ? yarnNamed(table, own.yarn, yarns) : (yarns[0]?.name ?? null),
      multiple: own.multiple ? multipleOf(table, own.multiple) : null,
      swatches,
      headings: own.headings ? headingsOf(table, own.headings) : [],
      gauge: gaugeOfFabric(swatches),
    };
    tellUnusual(table, made, yarns);
    return made;
  });
}

/** "2 + 1": a repeat with what stands beside it; told where it is no such words. */
export function multipleOf(table: Table, entry: Entry) {
  const wants = "A multiple is said as in 4, or 8 + 2.";
  const words = table.words(entry, wants);
  if (words === null) return null;
  const multiple = readMultiple(words.text);
  if (multiple === null)
    table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: words.text.trim(), wants });
  return multiple;
}

function yarnNamed(table: Table, entry: Entry, yarns: readonly Yarn[]): string | null {
  const words = table.words(entry, "The name of a yarn belongs here.");
  if (words === null) return null;
  const found = yarns.find(({ name }) => plainName(name) === plainName(words.text));
  if (found) return found.name;
  table.tell(nameUnknown, words.span, {
    name: words.text.trim(),
    what: "yarn",
    where: null,
    near: nearestName(
      words.text,
      yarns.map(({ name }) => name),
    ),
  });
  return null;
}

/** One swatch in braces, a list of them, or the words of a washed one alone. */
function readSwatches(table: Table, entry: Entry, terms: "US" | "UK"): Swatch[] {
  return table.items(entry.node).flatMap((node) => readSwatch(table, entry, node, terms) ?? []);
}

/** Headings as a list, or as words with commas between. */
function headingsOf(table: Table, entry: Entry): string[] {
  if (table.isList(entry.node))
    return table.items(entry.node).map((item) => table.wordsOf(item)?.text.trim() ?? "");
  const words = table.words(entry, "Headings of the pattern belong here, with commas between.");
  return words === null ? [] : words.text.split(",").map((name) => name.trim());
}

/** What a swatch is made of: { sc: 936, dc: 289 }. */
function madeOfEntry(table: Table, entry: Entry, terms: "US" | "UK"): ReadonlyMap<string, number> | null {
  const made = new Map<string, number>();
  for (const one of table.entries(entry.node, entry.key)) {
    const stitch = lookupStitch(one.key, terms);
    const count = positive(table, one, "How many of these stitches the swatch has.");
    if (!stitch)
      table.tell(entryNotUnderstood, one.keySpan, {
        entry: entry.key,
        found: one.key,
        wants: "Stitches by their names, each with how many there are, as in { sc: 936, dc: 289 }.",
      });
    else if (count !== null) made.set(stitch.code, (made.get(stitch.code) ?? 0) + count);
  }
  return made.size === 0 ? null : made;
}

function readSwatch(table: Table, entry: Entry, node: TableNode, terms: "US" | "UK"): Swatch | null {
  const readings: SwatchReading[] = [];
  let grams: number | null = null;
  let minutes: number | null = null;
  let madeOf: ReadonlyMap<string, number> | null = null;
  const entries: Entry[] = table.isMap(node)
    ? table.entries(node, entry.key)
    : [{ key: "washed", keySpan: entry.keySpan, node, span: table.spanOf(node) }];
  for (const one of entries) {
    if (["grams", "g", "weight"].includes(plainName(one.key))) {
      grams = positive(table, one, "The weight of the swatch is a number of grams.");
      continue;
    }
    if (plainName(one.key) === "minutes") {
      minutes = minutesOf(table, one);
      continue;
    }
    if (plainName(one.key) === "made of") {
      madeOf = madeOfEntry(table, one, terms);
      continue;
    }
    const state = readSwatchState(plainName(one.key));
    if (state === null) {
      table.tell(entryUnknown, one.keySpan, {
        entry: one.key,
        under: entry.key,
        near: nearestName(one.key, [
          "worked",
          "washed",
          "washed twice",
          "hung 80 g",
          "stretched",
          "grams",
          "minutes",
          "made of",
        ]),
      });
      continue;
    }
    const words = table.words(one, "A swatch is said as in 42 sts x 36 rows in 30 x 32.4 cm.");
    if (words === null) continue;
    const { measures, slip } = readSwatchMeasures(words.text);
    if (slip) {
      tellSlip(table, words, one.key, slip, { about: "lengths", sizes: 1 });
      continue;
    }
    const reading = completeReading(state, measures, readings[readings.length - 1]);
    if (reading) readings.push(reading);
    else
      table.tell(entryNotUnderstood, words.span, {
        entry: one.key,
        found: words.text.trim(),
        wants: "The first reading of a swatch has stitches and rows, width and height.",
      });
  }
  if (readings.length === 0) return null;
  return {
    readings,
    ...(grams === null ? {} : { grams }),
    ...(minutes === null ? {} : { minutes }),
    ...(madeOf === null ? {} : { madeOf }),
  };
}

/** A gauge outside the published range of the yarn's class; the ranges are over single crochet and judge no other stitch. */
function tellUnusual(table: Table, fabric: Fabric, yarns: readonly Yarn[]): void {
  const number = yarns.find(({ name }) => name === fabric.yarn)?.yarnClass ?? null;
  if (number === null || fabric.gauge === null) return;
  if (fabric.stitch !== null && !/^(?:sc|single crochet|uk dc)$/i.test(fabric.stitch)) return;
  const { gauge: range, gaugeStitch } = yarnClass(number);
  // Lace is measured over double crochet.
  if (gaugeStitch !== "sc") return;
  const stitches = 10 / fabric.gauge.stitchWidth.value;
  if (stitches >= (range.from ?? 0) - 0.5 && stitches <= (range.to ?? Number.POSITIVE_INFINITY) + 0.5) return;
  table.tell(gaugeOutsideClass, fabric.span, {
    fabric: fabric.name,
    stitches,
    yarnClass: number,
    from: range.from,
    to: range.to,
  });
}
