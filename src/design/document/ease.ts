import type { PerSize, SizeRun } from "../../base/index.ts";
import { type Cm, easeOf, lookupMeasurement, nearestMeasurement } from "../../bodies/index.ts";
import { lengthOf } from "../../sizing/index.ts";
import { entryNotUnderstood, nameUnknown } from "../findings/index.ts";
import type { Ease } from "./document.ts";
import { readWords } from "./measures.ts";
import type { Entry, Table, Words } from "./table.ts";

const WANTS =
  "Ease is a length, as in 15 cm; a range, as in 14 to 16 cm; a word, as in classic fit; or a map of sizes.";
const UNIT = /(?:cm|mm|inch(?:es)?|in\.?|["″”])\s*$/i;

/** Ease by measurement: one for all sizes, a list, or a map from sizes to ease with "others" for the rest. */
export function readEase(table: Table, entry: Entry | undefined, sizes: SizeRun): Ease[] {
  if (entry === undefined) return [];
  return table.entries(entry.node, entry.key).flatMap((one): Ease[] => {
    const measurement = lookupMeasurement(one.key);
    if (measurement === undefined) {
      table.tell(nameUnknown, one.keySpan, {
        name: one.key,
        what: "measurement",
        where: null,
        near: nearestMeasurement(one.key) ?? null,
      });
      return [];
    }
    const eased = table.isMap(one.node) ? perSize(table, one, sizes) : forAll(table, one, sizes.length);
    return eased ? [{ measurement: measurement.name, span: one.keySpan, ...eased }] : [];
  });
}

type Eased = Pick<Ease, "wanted" | "range">;

function forAll(table: Table, entry: Entry, sizes: number): Eased | null {
  const words = table.words(entry, WANTS);
  if (words === null) return null;
  const word = easeOf(words.text).find(({ source, unit }) => source === "council" && unit === "cm");
  if (word) {
    const least = word.least ?? word.most ?? 0;
    const most = word.most ?? least;
    return {
      wanted: all((least + most) / 2, sizes),
      range: { least: all(least, sizes), most: all(word.most ?? Number.POSITIVE_INFINITY, sizes) },
    };
  }
  const said = /^(.*?)(?:,\s*|\s+)(?:from\s+|fits\s+from\s+)(.*)$/i.exec(words.text);
  if (said) {
    const [, first = "", rest = ""] = said;
    const wanted = lengths(table, words, entry, sizes, 0, first.length, "");
    const range = rangeOf(table, words, entry, sizes, words.text.length - rest.length);
    return wanted && { wanted, range };
  }
  if (/\bto\b/i.test(words.text)) {
    const range = rangeOf(table, words, entry, sizes, 0);
    return (
      range && { wanted: range.least.map((least, size) => (least + (range.most[size] as Cm)) / 2), range }
    );
  }
  const wanted = lengths(table, words, entry, sizes, 0, words.text.length, "");
  return wanted && { wanted, range: null };
}

/** "14 to 16 cm" from an offset on; the unit behind the second is that of the first too. */
function rangeOf(
  table: Table,
  words: Words,
  entry: Entry,
  sizes: number,
  from: number,
): { readonly least: PerSize<Cm>; readonly most: PerSize<Cm> } | null {
  const parts = /^(.*?)\s+to\s+(.*)$/i.exec(words.text.slice(from));
  if (!parts) {
    table.tell(entryNotUnderstood, words.span, { entry: entry.key, found: words.text.trim(), wants: WANTS });
    return null;
  }
  const [whole, first = "", second = ""] = parts;
  const unit = UNIT.test(first) ? "" : ` ${UNIT.exec(second)?.[0] ?? ""}`;
  const least = lengths(table, words, entry, sizes, from, from + first.length, unit);
  const most = lengths(
    table,
    words,
    entry,
    sizes,
    from + whole.length - second.length,
    words.text.length,
    "",
  );
  return least && most && { least, most };
}

function lengths(
  table: Table,
  words: Words,
  entry: Entry,
  sizes: number,
  from: number,
  to: number,
  unit: string,
): PerSize<Cm> | null {
  const part: Words = {
    text: words.text.slice(from, to) + unit,
    span: words.span,
    place: (span) => words.place({ from: Math.min(to, from + span.from), to: Math.min(to, from + span.to) }),
  };
  const expression = readWords(table, part, entry.key, { sizes, names: new Map(), about: "lengths" });
  const nothing = { measure: () => null, fabric: () => null };
  if (expression === null) return null;
  return Array.from({ length: sizes }, (_, size) => lengthOf(expression, size, nothing)?.cm ?? 0);
}

function perSize(table: Table, entry: Entry, sizes: SizeRun): Eased | null {
  const entries = table.entries(entry.node, entry.key);
  const wanted: (Cm | null)[] = sizes.map(() => null);
  const least: (Cm | null)[] = [...wanted];
  const most: (Cm | null)[] = [...wanted];
  const others = entries.find(({ key }) => /^others?$/i.test(key.trim()));
  for (const one of [...(others ? [others] : []), ...entries.filter((each) => each !== others)]) {
    const size = sizes.findIndex((name) => name.toLowerCase() === one.key.trim().toLowerCase());
    if (size === -1 && one !== others) {
      table.tell(nameUnknown, one.keySpan, { name: one.key, what: "size", where: "the sizes", near: null });
      continue;
    }
    const eased = forAll(table, one, 1);
    if (eased === null) continue;
    for (const at of one === others ? sizes.keys() : [size]) {
      wanted[at] = eased.wanted[0] ?? null;
      least[at] = eased.range?.least[0] ?? null;
      most[at] = eased.range?.most[0] ?? null;
    }
  }
  const missing = sizes.filter((_, size) => wanted[size] === null);
  if (missing.length > 0) {
    table.tell(entryNotUnderstood, entry.span, {
      entry: entry.key,
      found: table.excerpt(entry.node),
      wants: `There is no ease for ${missing.join(", ")}; say it, or say it for others.`,
    });
    return null;
  }
  const ranged = least.every((one) => one !== null) && most.every((one) => one !== null);
  return {
    wanted: wanted as Cm[],
    range: ranged ? { least: least as Cm[], most: most as Cm[] } : null,
  };
}

const all = (value: Cm, sizes: number): Cm[] => Array.from({ length: sizes }, () => value);
