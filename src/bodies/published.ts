import type { Chart, ChartValue } from "./chart.ts";
import { SIZE_ROWS } from "./data/charts.ts";
import { MEASUREMENTS, type Measurement } from "./measurement.ts";
import type { Population } from "./rows.ts";

const TITLES: Readonly<Record<Population, string>> = {
  women: "Women, published",
  men: "Men, published",
  youth: "Youth, published",
  child: "Children, published",
  baby: "Babies, published",
};

const SOURCE =
  "Body sizes of the Craft Yarn Council, from public copies of its pages; inches and centimetres as printed.";

const NOTES: Readonly<Record<Population, readonly string[]>> = {
  women: [
    SOURCE,
    "Between one size and the next the chart leaves 5 cm of bust without a size.",
    "The size called XL is called 1X in some copies.",
  ],
  men: [
    SOURCE,
    "Upper arm, armhole, waist and hip are from memory and end at 2X.",
    "The row printed as back waist length holds lengths to the hip and is named so here.",
  ],
  youth: [SOURCE, "Centimetres differ by half a centimetre between copies."],
  child: [
    SOURCE,
    "Centimetres differ by half a centimetre between copies.",
    "There is no table for toddlers: sizes 2 and 4 serve.",
  ],
  baby: [SOURCE],
};

/** The chart the trade publishes for a population, as printed, slips and all; each number has its status and its note. */
export function publishedChart(population: Population): Chart {
  const rows = SIZE_ROWS.filter((row) => row[0] === population);
  const sizes = [...new Set(rows.map((row) => row[1]))];
  const values = new Map<Measurement, (ChartValue | null)[]>();
  for (const { name } of MEASUREMENTS) {
    const own = rows.filter((row) => row[2] === name);
    if (own.length === 0) continue;
    values.set(
      name,
      sizes.map((size) => {
        const row = own.find((candidate) => candidate[1] === size);
        if (row === undefined) return null;
        const [, , , inMin, inMax, min, max, status, note] = row;
        return {
          min,
          max,
          ...(inMin === null || inMax === null ? {} : { inches: { min: inMin, max: inMax } }),
          status,
          ...(note === undefined ? {} : { note }),
        };
      }),
    );
  }
  return {
    name: TITLES[population],
    kind: "published",
    population,
    sizes,
    values,
    notes: NOTES[population],
    restsOn: null,
  };
}
