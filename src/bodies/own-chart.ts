import { LineIndex, type PerSize, type Position, type Span, sayList } from "../base/index.ts";
import { type Amount, CM_PER_INCH, readAmount, type Unit, unitStated, withoutUnit } from "./amount.ts";
import type { Chart, ChartValue } from "./chart.ts";
import { type Cell, type CellTable, readCells } from "./csv-cells.ts";
import {
  lookupMeasurement,
  type Measurement,
  type MeasurementEntry,
  nearestMeasurement,
} from "./measurement.ts";

/** Something in the text of a chart that its author should know: where, what, why, what to do. */
export interface ChartProblem extends Position {
  /** An error keeps a number out of the chart; a warning only doubts one. */
  readonly severity: "error" | "warning";
  readonly span: Span;
  readonly what: string;
  readonly why: string;
  readonly todo: string;
}

export interface ChartRead {
  /** Null where not one number could be had. */
  readonly chart: Chart | null;
  /** In the order of the text. */
  readonly problems: readonly ChartProblem[];
}

/** A row of measurements or, in a chart turned on its side, a column of them. */
interface Strip {
  readonly heading: Cell;
  readonly cells: readonly Cell[];
}

/**
 * Reads a designer's own chart from CSV text. The first row names the sizes and each further row is a measurement, or the
 * other way round. Numbers are centimetres unless a heading or the number itself says inches; ranges and fractions are
 * read as they are printed ("71-76", "9 3/4"). A cell may be empty.
 *
 * Never throws: what cannot be read is a problem with its place, and the rest is kept.
 */
export function readChart(csv: string, name = "Own chart"): ChartRead {
  const lines = new LineIndex(csv);
  const problems: ChartProblem[] = [];
  const tell: Tell = (severity, { span }, what, why, todo) => {
    problems.push({ severity, span, ...lines.position(span.from), what, why, todo });
  };
  const table = readCells(csv);
  if (table.openQuote !== null)
    tell(
      "error",
      { span: table.openQuote },
      "This quotation mark is never closed.",
      "Everything after it is one cell.",
      "Close it, or double it where it stands for inches.",
    );
  const { corner, sizes, strips } = lay(table, tell);
  const values = new Map<Measurement, PerSize<ChartValue | null>>();
  const saidUnit = unitStated(corner?.text ?? "");
  let unitSaid = saidUnit !== null;
  for (const strip of strips) {
    const entry = entryOf(strip, values, tell);
    checkLength(strip, sizes, table, tell);
    const stated = unitStated(strip.heading.text);
    const row = sizes.map((_, size) => {
      const cell = strip.cells[size];
      const amount = cell && amountOf(cell, tell);
      if (!amount || entry === undefined) return null;
      if ((amount.unit ?? stated) !== null) unitSaid = true;
      return measuredValue(amount, amount.unit ?? stated ?? saidUnit ?? "cm", entry, cell, tell);
    });
    if (entry !== undefined && row.some((value) => value !== null)) values.set(entry.name, row);
  }
  const first = table.rows[0]?.[0] ?? { text: "", span: { from: 0, to: 0 } };
  if (values.size === 0) {
    if (problems.every(({ severity }) => severity !== "error"))
      tell(
        "error",
        first,
        "No measurement was found.",
        "A chart is a table: one side names the sizes, the other the measurements.",
        'Begin with a row such as "cm, S, M, L", then a row such as "bust, 84, 94, 104".',
      );
    return { chart: null, problems: inOrder(problems) };
  }
  checkSizes(values, sizes, strips, unitSaid, first, tell);
  const chart: Chart = {
    name,
    kind: "own",
    population: null,
    sizes: sizes.map(({ text }) => text),
    values,
    notes: [],
    restsOn: null,
  };
  return { chart, problems: inOrder(problems) };
}

type Tell = (
  severity: ChartProblem["severity"],
  where: { readonly span: Span },
  what: string,
  why: string,
  todo: string,
) => void;

const inOrder = (problems: readonly ChartProblem[]) => problems.toSorted((a, b) => a.span.from - b.span.from);

/** Which side names the sizes: the one that does not name measurements. */
function lay({ rows }: CellTable, tell: Tell): { corner: Cell | undefined; sizes: Cell[]; strips: Strip[] } {
  const head = rows[0] ?? [];
  const body = rows.slice(1);
  const known = (cells: readonly (Cell | undefined)[]) =>
    cells.filter((cell) => cell && lookupMeasurement(withoutUnit(cell.text))).length;
  const sideways = known(head.slice(1)) > known(body.map((row) => row[0]));
  const named = sideways ? body.flatMap((row) => row[0] ?? []) : head.slice(1);
  const sizes: Cell[] = [];
  const kept: number[] = [];
  for (const [index, cell] of named.entries()) {
    if (cell.text === "") {
      const filled = sideways
        ? body[index]?.slice(1).some(({ text }) => text !== "")
        : body.some((row) => (row[index + 1]?.text ?? "") !== "");
      if (filled)
        tell(
          "error",
          cell,
          "This size has no name.",
          "There are numbers for it, and nothing to call it by.",
          "Name the size.",
        );
    } else if (sizes.some(({ text }) => text === cell.text)) {
      tell(
        "error",
        cell,
        `There are two sizes called ${cell.text}.`,
        "The second one is left out.",
        "Give each size a name of its own.",
      );
    } else {
      sizes.push(cell);
      kept.push(index);
    }
  }
  if (sideways)
    for (const row of body) {
      const extra = row.slice(head.length).find(({ text }) => text !== "");
      if (extra !== undefined)
        tell(
          "error",
          extra,
          `${row[0]?.text} has more numbers than there are measurements.`,
          `${head.length - 1} measurements are named; this one belongs to none.`,
          "Take it out or name its measurement. For decimal commas, part the cells with semicolons.",
        );
    }
  const strips = sideways
    ? head.slice(1).map((heading, column) => ({
        heading,
        cells: kept.map((index) => body[index]?.[column + 1] ?? after(body[index])),
      }))
    : body.flatMap((row) => {
        const heading = row[0];
        if (heading === undefined) return [];
        const extra = row.slice(1 + named.length);
        return [{ heading, cells: [...kept.flatMap((index) => row[index + 1] ?? []), ...extra] }];
      });
  return {
    corner: head[0],
    sizes,
    strips: strips.filter(
      ({ heading, cells }) => heading.text !== "" || cells.some(({ text }) => text !== ""),
    ),
  };
}

/** An empty cell behind a row that ends too early. */
function after(row: readonly Cell[] | undefined): Cell {
  const to = row?.at(-1)?.span.to ?? 0;
  return { text: "", span: { from: to, to } };
}

function entryOf(
  { heading }: Strip,
  values: ReadonlyMap<Measurement, unknown>,
  tell: Tell,
): MeasurementEntry | undefined {
  const words = withoutUnit(heading.text);
  const entry = lookupMeasurement(words);
  if (entry === undefined) {
    const near = nearestMeasurement(words);
    tell(
      "error",
      heading,
      words === "" ? "This row has no name." : `"${words}" is not a measurement Loopwright knows.`,
      "Its numbers are left out.",
      near === undefined ? "Use one of the names in the manual." : `Write "${near}" if that is meant.`,
    );
  } else if (values.has(entry.name)) {
    tell(
      "error",
      heading,
      `There is a second row for ${entry.name}.`,
      "The first one is used.",
      "Keep one of them.",
    );
    return undefined;
  }
  return entry;
}

function checkLength({ heading, cells }: Strip, sizes: readonly Cell[], table: CellTable, tell: Tell): void {
  const extra = cells.slice(sizes.length).find(({ text }) => text !== "");
  if (extra !== undefined)
    tell(
      "error",
      extra,
      `${heading.text} has more numbers than there are sizes.`,
      `${sizes.length} sizes are named; this one belongs to none.`,
      table.separator === ","
        ? "Take it out or name its size. For decimal commas, part the cells with semicolons."
        : "Take it out or name its size.",
    );
  const missing = sizes.filter((_, size) => (cells[size]?.text ?? "") === "");
  if (missing.length > 0 && missing.length < sizes.length)
    tell(
      "warning",
      heading,
      `${heading.text} has no number in ${sayList(missing.map(({ text }) => text))}.`,
      "Nothing can be planned from it in those sizes.",
      "Fill it in, or leave it if it is not needed.",
    );
}

/** The amount in a cell; undefined where it is empty or cannot be read, which is told. */
function amountOf(cell: Cell, tell: Tell): Amount | undefined {
  if (/^(?:|[-–—]|n\/?a|\?)$/i.test(cell.text)) return undefined;
  const amount = readAmount(cell.text);
  if (amount === null)
    tell(
      "error",
      cell,
      `"${cell.text}" is not a length.`,
      "The number is left out.",
      'Write a number, a fraction or a range, such as 94, 9 3/4 or 71-76, with "cm" or "in" if you like.',
    );
  else if (amount.max < amount.min)
    tell(
      "error",
      cell,
      `The range ${cell.text} runs backwards.`,
      "The number is left out.",
      `Write ${amount.max}-${amount.min} if that is meant.`,
    );
  else return amount;
  return undefined;
}

function measuredValue(
  { min, max }: Amount,
  unit: Unit,
  { name, believable }: MeasurementEntry,
  cell: Cell,
  tell: Tell,
): ChartValue {
  const factor = unit === "in" ? CM_PER_INCH : 1;
  const [least, most] = believable;
  if (min * factor < least || max * factor > most)
    tell(
      "warning",
      cell,
      `${cell.text}${/[a-z"″”]$/i.test(cell.text) ? "" : ` ${unit}`} is not the ${name} of anybody.`,
      `From the smallest baby to the largest adult it is between ${least} and ${most} cm.`,
      "Look for a slip of the key, or say the unit.",
    );
  return {
    min: hundredths(min * factor),
    max: hundredths(max * factor),
    ...(unit === "in" ? { inches: { min, max } } : {}),
    status: "own",
  };
}

/** What only shows in the whole chart: no bust, a bust that falls, inches without saying so. */
function checkSizes(
  values: ReadonlyMap<Measurement, PerSize<ChartValue | null>>,
  sizes: readonly Cell[],
  strips: readonly Strip[],
  unitSaid: boolean,
  first: Cell,
  tell: Tell,
): void {
  const bust = values.get("bust");
  const strip = strips.find(({ heading }) => lookupMeasurement(withoutUnit(heading.text))?.name === "bust");
  if (bust === undefined || strip === undefined) {
    tell(
      "warning",
      first,
      "The chart has no bust or chest.",
      "Nobody can be put in a size without it.",
      'Add a row "bust".',
    );
    return;
  }
  bust.forEach((value, size) => {
    const before = bust.slice(0, size).findLast((one) => one !== null);
    if (value && before && value.min + value.max < before.min + before.max)
      tell(
        "warning",
        strip.cells[size] ?? strip.heading,
        `The bust gets smaller in size ${sizes[size]?.text}.`,
        "Sizes are taken to go from small to large.",
        "Put the sizes in order, or look for a slip of the key.",
      );
  });
  const grown = sizes.some(({ text }) => /^(?:XS|S|M|L|XL|\dX|\dXL)$/i.test(text));
  const largest = Math.max(...bust.map((value) => value?.max ?? 0));
  if (!unitSaid && grown && largest < 66)
    tell(
      "warning",
      strip.heading,
      `The bust goes up to ${largest} cm only.`,
      "No unit is said, so the numbers are taken as centimetres. They look like inches.",
      'Write "in" as the first word of the table if they are inches, "cm" if they are not.',
    );
}

const hundredths = (cm: number): number => Math.round(cm * 100) / 100;
