import type { PerSize, SizeRun } from "../../base/index.ts";
import { type Cm, lookupMeasurement, MEASUREMENTS, type Measurement } from "../../bodies/index.ts";
import {
  type Expression,
  exactly,
  type Length,
  type Lookup,
  lengthOf,
  namesIn,
  plainName,
  putInOrder,
  timesLength,
  type Vocabulary,
} from "../../sizing/index.ts";
import { measureNotRead, measuresInCircle, nameUnknown } from "../findings/index.ts";
import type { Body, Ease, Fabric, Hang, PlannedMeasure } from "./document.ts";
import { NameBook, readWords } from "./measures.ts";
import type { Entry, Table, Words } from "./table.ts";

/** What measures are worked out from. */
export interface PlanGround {
  readonly sizes: SizeRun;
  readonly body: Body | null;
  readonly ease: readonly Ease[];
  readonly fabrics: readonly Fabric[];
}

/** The plan with the words it is said in and what it comes to. */
export interface Plan {
  readonly measures: readonly PlannedMeasure[];
  readonly vocabulary: Vocabulary;
  /** Wanted cm of anything that words may name; null where it is not known. */
  readonly wanted: Lookup;
}

/** Names inside expressions: "plan:body width", "body:bust", "finished:bust", "ease:bust". */
export const inPlan = (name: string): string => `plan:${plainName(name)}`;
export const finishedOf = (measurement: Measurement): string => `finished:${measurement}`;

/** Reads the plan. Measures may be said by others that stand further down; circles are told. */
export function readPlan(table: Table, entry: Entry | undefined, ground: PlanGround): Plan {
  const entries = entry === undefined ? [] : table.entries(entry.node, entry.key);
  const vocabulary = vocabularyOf(entries, ground);
  const read = entries.map((one) => {
    const words = table.words(one, "A measure is said in words, as in half of finished bust plus 2 cm.");
    const expression = words && readWords(table, words, one.key, vocabulary);
    if (words && expression) tellMissing(table, words, expression, one.key, ground);
    return { entry: one, words, expression };
  });
  const byName = new Map<string, Expression | null>();
  for (const { entry: one, expression } of read)
    if (!byName.has(inPlan(one.key))) byName.set(inPlan(one.key), expression);
  const { order, circles } = putInOrder(
    new Map(
      [...byName].map(([name, expression]) => [
        name,
        expression ? namesIn(expression).map((use) => use.name) : [],
      ]),
    ),
  );
  const circular = new Set(circles.flat());
  for (const circle of circles) {
    const spans = circle.flatMap(
      (name) => read.find(({ entry: one }) => inPlan(one.key) === name)?.entry ?? [],
    );
    const [first] = spans;
    if (first) table.tell(measuresInCircle, first.keySpan, { names: spans.map(({ key }) => key) });
  }
  const known = new Map<string, PerSize<Length | null>>();
  const wanted = lookupIn(known, ground);
  for (const name of order) {
    const expression = circular.has(name) ? null : (byName.get(name) ?? null);
    known.set(
      name,
      ground.sizes.map((_, size) => (expression ? lengthOf(expression, size, wanted) : null)),
    );
  }
  return {
    measures: read.map(({ entry: one, words, expression }) => ({
      name: one.key,
      span: one.keySpan,
      words: words?.text.trim() ?? "",
      expression: circular.has(inPlan(one.key)) ? null : expression,
      wanted: (known.get(inPlan(one.key)) ?? []).map((length) => length?.cm ?? null),
    })),
    vocabulary,
    wanted,
  };
}

/** Every name that a measure may be said by. The plan's own names come first: "hip length" is not the hip. */
function vocabularyOf(entries: readonly Entry[], { sizes, fabrics }: PlanGround): Vocabulary {
  const book = new NameBook();
  for (const { key } of entries) {
    book.add(key, inPlan(key));
    book.add(`finished ${key}`, inPlan(key));
  }
  for (const { name, also } of MEASUREMENTS)
    for (const word of [name, ...also]) {
      book.add(`body ${word}`, `body:${name}`);
      book.add(word, `body:${name}`);
      book.add(`finished ${word}`, finishedOf(name));
      book.add(`ease at ${word}`, `ease:${name}`);
      book.add(`${word} ease`, `ease:${name}`);
    }
  return {
    sizes: sizes.length,
    names: book.names,
    fabrics: fabrics.map(({ name }) => name),
    about: "lengths",
  };
}

/** Says where a body, an ease or a gauge is needed and there is none. */
export function tellMissing(
  table: Table,
  words: Words,
  expression: Expression,
  entry: string,
  { body, ease, sizes }: PlanGround,
): void {
  const said = new Set<string>();
  for (const { name, span } of namesIn(expression)) {
    const [kind, rest = ""] = name.split(":");
    const measurement = lookupMeasurement(rest)?.name;
    if (kind === "plan" || measurement === undefined || said.has(name)) continue;
    said.add(name);
    const place = words.place(span);
    const eased = ease.some((one) => one.measurement === measurement);
    if (kind !== "body" && !eased) {
      const problem = `The finished ${measurement} is the body's with its ease, and no ease is said for the ${measurement}.`;
      table.tell(measureNotRead, place, { entry, problem });
    }
    if (kind === "ease") continue;
    if (body === null)
      table.tell(measureNotRead, place, {
        entry,
        problem: "The design does not say for which bodies it is: there is no entry body.",
      });
    else {
      const missing = sizes.flatMap((_, size) => (body.of(measurement)[size] === null ? [size] : []));
      if (missing.length > 0 && (body.chart === null || body.chart.values.get(measurement) === undefined))
        table.tell(
          nameUnknown,
          place,
          {
            name: measurement,
            what: "measurement",
            where: body.chart === null ? "the body" : `the chart ${body.chart.name}`,
            near: null,
          },
          missing.length === sizes.length ? [] : missing,
        );
    }
  }
}

/** Wanted lengths as they lie: what hangs is wanted as it is worn, and worked shorter by what it grows. */
export function lyingIn(wanted: Lookup, hangs: readonly Hang[]): Lookup {
  const byKey = new Map(hangs.map((hang) => [hang.key, hang] as const));
  return {
    ...wanted,
    measure: (name, size) => {
      const worn = wanted.measure(name, size);
      const hang = byKey.get(name)?.perSize[size];
      return worn && hang ? timesLength(worn, 1 / (1 + hang.growth)) : worn;
    },
  };
}

/** Lengths of bodies, ease and fabrics, and of the measures that are known so far. */
export function lookupIn(
  known: ReadonlyMap<string, PerSize<Length | null>>,
  { body, ease, fabrics }: PlanGround,
): Lookup {
  const easeAt = (measurement: Measurement, size: number): Cm | null =>
    ease.find((one) => one.measurement === measurement)?.wanted[size] ?? null;
  return {
    measure: (name, size) => {
      const [kind, rest = ""] = name.split(":");
      if (kind === "plan") return known.get(name)?.[size] ?? null;
      const measurement = rest as Measurement;
      const eased = easeAt(measurement, size);
      if (kind === "ease") return eased === null ? null : exactly(eased);
      const cm = body?.of(measurement)[size] ?? null;
      if (cm === null) return null;
      if (kind === "body") return exactly(cm);
      return eased === null ? null : exactly(cm + eased);
    },
    fabric: (name, of, count) => lengthOfFabric(fabrics, name, of, count),
  };
}

/** So many stitches or rows of a fabric, resting on its gauge. */
export function lengthOfFabric(
  fabrics: readonly Fabric[],
  name: string,
  of: "stitches" | "rows",
  count: number,
): Length | null {
  const gauge = fabrics.find((one) => plainName(one.name) === plainName(name))?.gauge;
  if (!gauge) return null;
  const cm = count * (of === "stitches" ? gauge.stitchWidth : gauge.rowHeight).value;
  return { cm, restsOn: new Map([[gaugeName(name, of), cm]]) };
}

/** How lengths say which gauge they rest on. */
export const gaugeName = (fabric: string, of: "stitches" | "rows"): string => `${plainName(fabric)} ${of}`;
