import { type PerSize, type SizeRun, type Span, valueAt } from "../../base/index.ts";
import {
  answerOf,
  CHART_NAMES,
  type Chart,
  type Cm,
  chartNamed,
  correctedChart,
  lookupMeasurement,
  type Measurement,
  nearestMeasurement,
  readChart,
} from "../../bodies/index.ts";
import { exactly, lengthOf, nearestName, plainName } from "../../sizing/index.ts";
import { entryNotUnderstood, entryUnknown, nameUnknown } from "../findings/index.ts";
import type { Body } from "./document.ts";
import { readWords } from "./measures.ts";
import type { Entry, Table } from "./table.ts";

/**
 * Whom the design is for: "women, corrected"; or a map with a chart, a chart of one's own as comma-separated lines, and
 * measurements that stand above both.
 */
export function readBody(table: Table, entry: Entry | undefined, sizes: SizeRun): Body | null {
  if (entry === undefined) return null;
  if (!table.isMap(entry.node)) {
    const chart = namedChart(table, entry);
    return chart && bodyOf(table, entry.span, chart, sizes, new Map());
  }
  let chart: Chart | null = null;
  const own = new Map<Measurement, PerSize<Cm>>();
  for (const one of table.entries(entry.node, entry.key)) {
    const plain = plainName(one.key);
    if (plain === "chart") chart = namedChart(table, one);
    else if (plain === "csv" || plain === "table") chart = ownChart(table, one);
    else {
      const measurement = lookupMeasurement(one.key);
      if (measurement === undefined)
        table.tell(entryUnknown, one.keySpan, {
          entry: one.key,
          under: entry.key,
          near: nearestMeasurement(one.key) ?? nearestName(one.key, ["chart", "csv"]),
        });
      else {
        const cm = lengthsOf(table, one, sizes.length);
        if (cm) own.set(measurement.name, cm);
      }
    }
  }
  if (chart === null && own.size === 0) return null;
  return bodyOf(table, entry.span, chart, sizes, own);
}

function namedChart(table: Table, entry: Entry): Chart | null {
  const words = table.words(entry, `A chart is named, as in ${CHART_NAMES[1]}.`);
  if (words === null) return null;
  const chart = chartNamed(words.text);
  if (chart) return chart;
  table.tell(nameUnknown, words.span, {
    name: words.text.trim(),
    what: "chart",
    where: null,
    near: nearestName(words.text, CHART_NAMES),
  });
  return null;
}

function ownChart(table: Table, entry: Entry): Chart | null {
  const words = table.words(entry, "A chart is lines with commas: the sizes, then one measurement a line.");
  if (words === null) return null;
  const { chart, problems } = readChart(words.text);
  for (const problem of problems)
    if (problem.severity === "error")
      table.tell(entryNotUnderstood, words.place(problem.span), {
        entry: entry.key,
        found: words.text.slice(problem.span.from, problem.span.to),
        wants: `${problem.what} ${problem.why}`,
      });
  return chart;
}

/** Lengths written out, one or one per size, cm. */
export function lengthsOf(table: Table, entry: Entry, sizes: number): PerSize<Cm> | null {
  const words = table.words(entry, "A length belongs here, as in 96 cm.");
  if (words === null) return null;
  const expression = readWords(table, words, entry.key, { sizes, names: NO_NAMES, about: "lengths" });
  if (expression === null) return null;
  const nothing = { measure: () => null, fabric: () => null };
  return Array.from({ length: sizes }, (_, size) => (lengthOf(expression, size, nothing) ?? exactly(0)).cm);
}

const NO_NAMES: ReadonlyMap<string, string> = new Map();

/** The same size under other letters: common practice, no source. */
const LETTERS: readonly (readonly string[])[] = [
  ["2xs", "xxs"],
  ["xl", "1x"],
  ["2x", "2xl", "xxl"],
  ["3x", "3xl", "xxxl"],
  ["4x", "4xl", "xxxxl"],
  ["5x", "5xl"],
  ["6x", "6xl"],
];

function bodyOf(
  table: Table,
  span: Span,
  chart: Chart | null,
  sizes: SizeRun,
  own: ReadonlyMap<Measurement, PerSize<Cm>>,
): Body {
  const places = sizes.map((size) => (chart === null ? -1 : placeOf(chart.sizes, size)));
  if (chart !== null) {
    const missing = sizes.filter((_, at) => places[at] === -1);
    // One set of measurements without a chart's sizes serves a design of one size.
    if (missing.length === sizes.length && chart.sizes.length === sizes.length)
      places.splice(0, sizes.length, ...sizes.keys());
    else if (missing.length > 0)
      for (const size of missing)
        table.tell(
          nameUnknown,
          span,
          {
            name: size,
            what: "size",
            where: `the chart ${chart.name}, which has ${chart.sizes.join(", ")}`,
            near: null,
          },
          [sizes.indexOf(size)],
        );
  }
  return {
    span,
    chart,
    of: (measurement) =>
      sizes.map((_, size) => {
        const written = own.get(measurement);
        if (written) return valueAt(written, size) ?? null;
        const place = places[size] ?? -1;
        return chart === null || place === -1 ? null : (answerOf(chart, measurement, place)?.cm ?? null);
      }),
  };
}

function placeOf(run: SizeRun, size: string): number {
  const plain = plainName(size);
  const names = LETTERS.find((letters) => letters.includes(plain)) ?? [plain];
  return run.findIndex((one) => names.includes(plainName(one)));
}

/**
 * A measurement for checks of wearing, where the design's own chart may lack it: published charts have no heads or hands,
 * so the measured people of the same size answer for those.
 */
export function bodyForWearing(body: Body, measurement: Measurement, sizes: SizeRun): PerSize<Cm | null> {
  const values = body.of(measurement);
  const population = body.chart?.population;
  if (values.every((value) => value !== null) || (population !== "women" && population !== "men"))
    return values;
  const measured = correctedChart(population);
  return values.map((value, size) => {
    if (value !== null) return value;
    const place = placeOf(measured.sizes, sizes[size] ?? "");
    return place === -1 ? null : (answerOf(measured, measurement, place)?.cm ?? null);
  });
}
