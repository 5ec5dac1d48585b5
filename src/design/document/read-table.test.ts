import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { LineIndex } from "../../base/index.ts";
import { readPattern } from "../../notation/index.ts";
import { proveDesign } from "../prove.ts";
import { readTable } from "./read-table.ts";
import { findTable } from "./table.ts";

const sample = readFileSync(new URL("../../../samples/pullover-no-9.md", import.meta.url), "utf8");
const table = (yaml: string) => readTable(`---\n${yaml}\n---\n`, () => ["S", "M", "L"]);

/** Findings of a table as "line:column code words-marked"; the table begins on line 2 of the text. */
function found(yaml: string): string[] {
  const text = `---\n${yaml}\n---\n`;
  const lines = new LineIndex(text);
  return (readTable(text, () => ["S", "M", "L"])?.findings ?? []).map(({ code, span }) => {
    const { line, column } = lines.position(span.from);
    return `${line}:${column} ${code.replace("design/", "")} ${text.slice(span.from, span.to)}`.trim();
  });
}

describe("mistakes in the table have their place", () => {
  it.each<[string, string[]]>([
    ["title: A\nterms: French", ["3:8 entry-not-understood French"]],
    ["sizes: S M S", ["2:8 entry-not-understood S M S"]],
    ["swach: 1", ["2:1 entry-unknown swach"]],
    ["fabrics: { a: { swatch: { washed: 40 sts in 20 } } }", ["2:45 measure-not-read 20"]],
    ["fabrics: { a: { swatch: { soaked: 40 sts x 30 rows in 20 cm } } }", ["2:27 entry-unknown soaked"]],
    ["plan:\n  width: half of bust pus 2 cm", ["3:23 measure-not-read pus 2 cm"]],
    ["plan:\n  width: twice depht\n  depth: 3 cm", ["3:16 name-unknown depht"]],
    ["plan:\n  width: 4 rows in bmp", ["3:20 name-unknown bmp"]],
    [
      "plan:\n  width: finished bust",
      ["3:10 measure-not-read finished bust", "3:10 measure-not-read finished bust"],
    ],
    ["plan:\n  a: b plus 1 cm\n  b: a minus 1 cm", ["3:3 measures-in-circle a"]],
    ["plan:\n  a: 1 2 cm", ["3:6 values-and-sizes 1 2 cm"]],
    ["counts:\n  a sts: 1 2", ["3:10 values-and-sizes 1 2"]],
    ["counts:\n  a sts: 1 x 2", ["3:12 measure-not-read x 2"]],
    [
      "counts:\n  a sts: { same as: b sts plus 1 }\n  b sts: { same as: a sts }",
      ["3:3 measures-in-circle a sts"],
    ],
    ["counts:\n  a sts: { held: { XL: 3 }, is: 4 }", ["3:20 name-unknown XL"]],
    ["counts:\n  a sts: 4\nties:\n  - a sts is b sts", ["5:14 name-unknown b sts"]],
    ["counts:\n  a sts: 4\nties:\n  - a sts and so on", ["5:5 entry-not-understood a sts and so on"]],
    ["body: women, guessed", ["2:7 name-unknown women, guessed"]],
    ["sizes: S M 9X\nbody: women, corrected", ["3:7 name-unknown women, corrected"]],
    ["ease: { bst: 4 cm }", ["2:9 name-unknown bst"]],
    ["ease: { bust: 4 }", ["2:15 measure-not-read 4"]],
    ["yarn: { main: { class: 11 } }", ["2:24 entry-not-understood 11"]],
    ["yarn: { main: { price: cheap } }", ["2:24 entry-not-understood cheap"]],
    ["title: A\ntitle: B", ["3:1 table-not-read title: B"]],
    ["title: [A", ["3:1 table-not-read"]],
    ["title: A\n\tterms: US", ["3:2 table-not-read terms: US"]],
    ["plan:\n  a: 2 cm\n b: 3 cm", ["4:2 table-not-read b: 3 cm"]],
    ["- a\ntitle: b", ["2:1 entry-not-understood - a"]],
  ])("%s", (yaml, places) => {
    const all = found(yaml);
    for (const place of places)
      expect(
        all.some((one) => one.startsWith(place)),
        `${place} in ${all.join(" | ")}`,
      ).toBe(true);
    expect(all.length, all.join(" | ")).toBeGreaterThanOrEqual(places.length);
  });
});

describe("entries", () => {
  it("may be said in other words and letters", () => {
    const read = table("Title: A\nYARNS: { main: { meters: 100, color: oat } }\nhook: 5 mm");
    expect(read?.findings).toEqual([]);
    expect(read?.yarns[0]).toMatchObject({ metres: 100, colour: "oat" });
    expect(read?.hooksMm).toEqual([5]);
  });
  it("keep words that other tables would make numbers or truths of", () => {
    const read = table("title: 1.50\nsizes: NO, YES, 010");
    expect(read?.title).toBe("1.50");
    expect(read?.sizes).toEqual(["NO", "YES", "010"]);
  });
  it("say what grading aims at, and are told where they say something else", () => {
    const aimOf = (words: string) => readTable(`---\naim: ${words}\n---\n`, () => ["M"]);
    expect(aimOf("Sum of misses")?.aim).toBe("least sum");
    expect(aimOf("the largest miss")?.aim).toBe("least worst");
    expect(aimOf("prettiest")?.findings.map(({ code }) => code)).toEqual(["design/entry-not-understood"]);
  });
  it("convert yards", () =>
    expect(table("yarn: { main: { yards: 100 } }")?.yarns[0]?.metres).toBeCloseTo(91.44, 9));
  it("may refer to one another", () => {
    const read = table("fabrics:\n  a: &a { swatch: { washed: 30 sts x 30 rows in 20 cm } }\n  b: *a");
    expect(read?.findings).toEqual([]);
    expect(read?.fabrics[1]?.gauge?.stitchWidth.value).toBeCloseTo(2 / 3, 9);
  });
});

describe("ease", () => {
  const ease = (words: string) => table(`sizes: S M L\nease: { bust: "${words}" }`)?.ease[0];
  it.each([
    ["15 cm", [15, 15, 15], null],
    ["14 to 16 cm", [15, 15, 15], [14, 16]],
    ["15 cm, from 10 to 20 cm", [15, 15, 15], [10, 20]],
    ["1 in", [2.54, 2.54, 2.54], null],
    ["14 15 16 cm", [14, 15, 16], null],
    ["-5 cm", [-5, -5, -5], null],
    // The trade's table: classic fit is 5 to 10 cm (trade handbook, section 2.1).
    ["classic fit", [7.5, 7.5, 7.5], [5, 10]],
  ])("%s", (words, wanted, range) => {
    expect(ease(words)?.wanted).toEqual(wanted);
    expect(ease(words)?.range && [ease(words)?.range?.least[0], ease(words)?.range?.most[0]]).toEqual(range);
  });
  it("may differ from size to size", () =>
    expect(table("sizes: S M L\nease: { bust: { others: 10 cm, L: 8 cm } }")?.ease[0]?.wanted).toEqual([
      10, 10, 8,
    ]));
});

describe("bodies", () => {
  it("take measurements of one's own above a chart's", () => {
    const body = table("sizes: S M L\nbody: { chart: 'women, published', upper arm: 26 28 30 cm }")?.body;
    expect(body?.of("upper arm")).toEqual([26, 28, 30]);
    expect(body?.of("bust")[1]).toBe(94);
  });
  it("are one person's", () =>
    expect(table("sizes: mine\nbody: { bust: 96 cm }")?.body?.of("bust")).toEqual([96]));
  it("come from a chart of one's own", () => {
    const read = table("sizes: S M\nbody:\n  csv: |\n    cm,S,M\n    bust,80,90");
    expect(read?.findings).toEqual([]);
    expect(read?.body?.of("bust")).toEqual([80, 90]);
  });
  it("know a size by its other letters", () =>
    expect(table("sizes: 1X XXL\nbody: women, published")?.body?.of("bust")).toEqual(
      [114.25, 124.5].map((cm) => expect.closeTo(cm, 0)),
    ));
});

describe("where the table ends", () => {
  it.each([
    [sample, true],
    ["---\ntitle: A\n---\nRow 1: Ch 4.", true],
    ["\n---\r\ntitle: A\r\n---\r\nRow 1: Ch 4.", true],
    ["\uFEFF---\ntitle: A\n---", true],
    ["---\n---\ntext", false],
    ["---\nnot a table\n---\ntext", false],
    ["---\ntitle: A\nno end", false],
    ["text\n---\ntitle: A\n---", false],
  ])("is where the reader of rows has it: %j", (text, has) => {
    const place = findTable(text);
    expect(place !== null).toBe(has);
    if (!place) return;
    // The reader of rows keeps the table as the first of its other lines.
    const head = readPattern(text).others[0];
    expect(head?.is).toBe("prose");
    expect(text.slice(0, place.to).trim()).toBe(text.slice(head?.span.from, head?.span.to).trim());
  });
});

describe("whatever stands in a design", () => {
  it("is proved without a fault", () => {
    let state = 7;
    const random = (below: number): number => {
      state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
      return state % below;
    };
    const short = `---
title: Top # a note
terms: US
sizes: S M L
body: { chart: "women, corrected", upper arm: 28 30 32 cm }
ease: { bust: 10 cm, upper arm: 4 to 6 cm }
yarn: { main: { class: 4, metres: 95, grams: 50, price: 6.40 EUR } }
fabrics:
  plain: &p { hook: 5 mm, multiple: 2 + 1, swatch: [{ worked: 30 sts x 30 rows in 20 x 21 cm }, { washed: 30 sts x 30 rows in 20 cm }] }
plan:
  width: half of finished bust
  sleeve: the larger of finished upper arm and 30 cm, at least 12 in
  length: 40 42 44 cm plus 2 rows in plain
counts:
  body sts: { along: width, multiple: 2 + 1, held: { M: 79 }, is: 71 79 85 }
  rows: { along: length, parity: even, order: up, is: 62 64 68 }
  front sts: { same as: half of (body sts minus 1) }
  sleeve sts: { along: sleeve, at least: 30 cm, is: 46 }
ties: [ "sleeve sts is body sts minus 25, within 40", rows is twice sleeve sts within 99 cm ]
as meant: { design/better-choice: tested ~abcde }
---
# Back
Ch {body sts + 1}.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. {body sts} sts.
Rows 2-{rows}: Ch 1, sc in each st across, turn. {body sts} sts.
`;
    const signs = [
      "{",
      "}",
      "[",
      "]",
      ":",
      ",",
      "-",
      "#",
      "&a",
      "*a",
      "!",
      "|",
      ">",
      '"',
      "'",
      "%",
      "@",
      "`",
      "\n",
      "  ",
      "\t",
      "½",
      "0",
      "-1",
      "99999999",
      "cm",
      "half of",
      "plus",
      "is",
      "\u0000",
      "😀",
    ];
    for (let round = 0; round < 120; round++) {
      let text = short;
      for (let cut = 0; cut <= random(4); cut++) {
        const at = random(text.length);
        text = text.slice(0, at) + (signs[random(signs.length)] ?? "") + text.slice(at + random(12));
      }
      expect(() => proveDesign(text), `round ${round}`).not.toThrow();
    }
  }, 120_000);
  it("is read where brackets nest too deeply", () => {
    const deep = `---\ntitle: A\nplan: ${"[".repeat(20_000)}\n---\n`;
    expect(proveDesign(deep).findings.map(({ code }) => code)).toContain("design/table-not-read");
  });
  it("has plain texts as they always were", () => {
    const proof = proveDesign("Row 1: Ch 4, {24 sts} and {body sts}.");
    expect(proof.table).toBeUndefined();
    expect(proof.findings.filter(({ code }) => code.startsWith("design/"))).toEqual([]);
  });
});
