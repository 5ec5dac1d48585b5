import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import {
  allAbbreviations,
  HOOKS,
  lookupAbbreviations,
  lookupStitch,
  nameIn,
  normaliseSpelling,
  stitchOf,
  symbolOf,
  wordIn,
  YARN_CLASSES,
} from "./index.ts";

// The tables are described in fixtures/sources/SOURCES.md.
type Row = Readonly<Record<string, string>>;

function readTable(name: string): readonly Row[] {
  const text = readFileSync(new URL(`../../fixtures/sources/${name}.csv`, import.meta.url), "utf8");
  const [head, ...lines] = text.trim().split("\n").map(cut);
  return lines.map((cells) => Object.fromEntries(head!.map((column, index) => [column, cells[index] ?? ""])));
}

function cut(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/gu)].map((cell) =>
    (cell[1] ?? cell[2] ?? "").trim(),
  );
}

const cell = (row: Row, column: string): string => {
  const value = row[column];
  if (value === undefined) throw new Error(`the table has no column ${column}`);
  return value;
};

const ABBREVIATIONS = readTable("us-abbreviations").flatMap((row) =>
  cell(row, "abbreviation")
    .split(/, | \/ /u)
    .map((abbreviation) => ({ abbreviation, row })),
);

it("reads whole tables", () => {
  expect(readTable("us-abbreviations")).toHaveLength(75);
  expect(readTable("us-uk-terms")).toHaveLength(19);
  expect(readTable("hook-sizes")).toHaveLength(46);
  expect(readTable("yarn-weights")).toHaveLength(8);
});

it.each(ABBREVIATIONS)("knows the American abbreviation $abbreviation", ({ abbreviation, row }) => {
  const found = lookupAbbreviations(abbreviation, "US");
  const terms = found.map((entry) => normaliseSpelling(entry.term));
  // The table spells British "colour", "(only)" and lists two words at once; its first word decides.
  const wanted = normaliseSpelling(cell(row, "term").replace("colour", "color").replace(/[()]/gu, "")).split(
    ",",
  )[0]!;
  expect(
    terms.some((term) => term.includes(wanted) || lookupStitch(term, "US") === lookupStitch(wanted, "US")),
  ).toBe(true);
});

const TERM_ROWS = readTable("us-uk-terms");
const STITCH_NAMES = TERM_ROWS.filter((row) => lookupStitch(cell(row, "us_term"), "US") !== undefined);

it("has every stitch of the table of terms", () => {
  const named = STITCH_NAMES.map((row) => lookupStitch(cell(row, "us_term"), "US")?.code);
  expect(named).toEqual([
    "ch",
    "sl st",
    "sc",
    "hdc",
    "dc",
    "tr",
    "dtr",
    "trtr",
    "esc",
    "sc2tog",
    "dc2tog",
    "fpdc",
    "bpdc",
  ]);
});

it.each(STITCH_NAMES)("calls $us_term $uk_term in Britain", (row) => {
  const { code } = lookupStitch(cell(row, "us_term"), "US")!;
  expect(lookupStitch(cell(row, "us_abbreviation"), "US")?.code).toBe(code);
  expect(nameIn(code, "UK")).toBe(cell(row, "uk_term"));
  for (const abbreviation of cell(row, "uk_abbreviation").split(" / ")) {
    expect(lookupStitch(abbreviation, "UK")?.code).toBe(code);
  }
});

it.each(TERM_ROWS.filter((row) => !STITCH_NAMES.includes(row)))("says $us_term as $uk_term", (row) => {
  const said = wordIn(cell(row, "us_term"), "UK") ?? cell(row, "us_term");
  expect(cell(row, "uk_term").split(" / ")).toContain(said);
});

it("has the hooks of the table, no more and no fewer", () => {
  const table = readTable("hook-sizes").map((row) => ({
    kind: cell(row, "kind"),
    mm: Number(cell(row, "mm")),
    us: cell(row, "us_size") || null,
    uk: cell(row, "uk_old_size") || null,
    seen: cell(row, "status_mm_us"),
  }));
  expect(HOOKS.map(({ kind, mm, us, uk, seen }) => ({ kind, mm, us, uk, seen }))).toEqual(table);
});

it("has the yarn classes of the table", () => {
  const figure = (row: Row, column: string): number | null =>
    cell(row, column) === "" ? null : Number(cell(row, column));
  const range = (row: Row, column: string) => ({
    from: figure(row, `${column}_min`),
    to: figure(row, `${column}_max`),
  });
  const table = readTable("yarn-weights").map((row) => ({
    number: figure(row, "number"),
    name: cell(row, "name"),
    gauge: range(row, "crochet_sts_per_10cm"),
    gaugeStitch: cell(row, "crochet_gauge_stitch"),
    hookMm: range(row, "hook_mm"),
    wrapsPerInch: range(row, "wpi"),
  }));
  expect(
    YARN_CLASSES.map(({ number, name, gauge, gaugeStitch, hookMm, wrapsPerInch }) => ({
      number,
      name,
      gauge,
      gaugeStitch,
      hookMm,
      wrapsPerInch,
    })),
  ).toEqual(table);
});

it.each(YARN_CLASSES)("knows the trade names of class $number", ({ number, called }) => {
  const row = readTable("yarn-weights")[number]!;
  for (const name of cell(row, "yarn_types").split("; ")) expect(called).toContain(name.toLowerCase());
});

// Slashes from the table's geometry: none for hdc, one for dc, two for tr, three for dtr, four for trtr.
it("draws as many slashes as the chart table says", () => {
  const words = ["no", "one", "two", "three", "four"];
  const rows = readTable("chart-symbols").filter((row) =>
    ["hdc", "dc", "tr", "dtr", "trtr"].includes(cell(row, "us_abbreviation")),
  );
  expect(rows).toHaveLength(5);
  for (const row of rows) {
    const { slashes } = symbolOf(stitchOf(cell(row, "us_abbreviation")).symbol);
    expect(cell(row, "geometry")).toMatch(new RegExp(`${words[slashes]}\\b.*slash`, "u"));
  }
});

// Stitches of the chart table that have an abbreviation of their own and are not a way of holding the hook or a mark.
it("has a symbol for every stitch of the chart table", () => {
  const missing = readTable("chart-symbols")
    .map((row) => cell(row, "us_abbreviation"))
    .filter(
      (abbreviation) => abbreviation !== "" && !["NtogX", "BLO", "FLO", "MR", "tch"].includes(abbreviation),
    )
    .filter((abbreviation) => {
      const stitch = lookupStitch(abbreviation, "US");
      return stitch === undefined || symbolOf(stitch.symbol).code !== stitch.symbol;
    });
  expect(missing).toEqual([]);
});

it("lists no abbreviation without a meaning", () => {
  for (const terms of ["US", "UK"] as const) {
    const list = allAbbreviations(terms);
    expect(list.length).toBeGreaterThan(200);
    expect(
      list.filter(
        (entry) => entry.meaning.length < 3 || entry.term.length < 2 || /[{}#@]/u.test(entry.meaning),
      ),
    ).toEqual([]);
  }
});
