import { describe, expect, it } from "vitest";
import type { Span } from "../base/index.ts";
import { describeClauses } from "./describe.ts";
import { readInstructionBody } from "./instruction.ts";
import { lex } from "./lex.ts";
import type { Clause } from "./tree.ts";

function read(text: string): ReturnType<typeof readInstructionBody> {
  const context = {
    text,
    terms: "US" as const,
    sizes: 3,
    sizeNames: ["S", "M", "L"],
    specials: new Map([
      ["fan", "fan"],
      ["arrow stitch", "arrow"],
      ["arrow", "arrow"],
    ]),
    colours: ["A", "Moss"],
  };
  return readInstructionBody(lex(text, 0, text.length, context), context);
}

/** A small generator with a printed seed, so that a failing row can be made again. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

const PIECES = [
  "sc",
  "2 dc",
  "in next st",
  "in each st across",
  "(",
  ")",
  "[",
  "]",
  "*",
  "**",
  "rep from *",
  "rep from * to *",
  "3 times",
  "turn",
  ",",
  ";",
  ".",
  "-",
  "ch 3",
  "ch-2 sp",
  "join",
  "with sl st",
  "in first st",
  "sk next 2",
  "ending with",
  "(24 sts)",
  "24",
  "34 (36, 38)",
  "to last 4 sts",
  "until",
  "piece measures 4 in",
  "wug",
  "A",
  "Moss",
  "inc",
  "dec",
  "evenly",
  "back loop only",
  "each end of",
  "every 4th row",
  "{",
  "}",
  "<",
  "=",
  "+",
  "and",
  "the",
  "x 9",
  "twice",
  "yo",
  "draw up a loop",
  "as Row 2",
  "Sizes M and L only:",
  "counts as dc",
  "#",
  "\n\n",
  "for",
  "of",
  "around",
];

describe("reading one row", () => {
  it("never throws, and keeps every clause inside its row and in order (seeds 1 to 700)", () => {
    for (let seed = 1; seed <= 700; seed += 1) {
      const next = generator(seed);
      const row = Array.from(
        { length: 1 + Math.floor(next() * 24) },
        () => PIECES[Math.floor(next() * PIECES.length)],
      ).join(" ");
      const { clauses, claims } = read(row);
      inside(clauses, { from: 0, to: row.length }, `seed ${seed}: ${row}`);
      for (const claim of claims)
        expect(claim.span.to, `seed ${seed}: ${row}`).toBeLessThanOrEqual(row.length);
    }
  });

  it("says where unread words stand, to the letter", () => {
    const row = "sc in next 4, frobnicate the wug, dc in next 4";
    const remark = read(row).clauses.find((clause) => clause.kind === "remark");
    expect(remark && row.slice(remark.span.from, remark.span.to)).toBe("frobnicate the wug");
  });

  it("gives a clause the span of its own words", () => {
    const row = "Ch 1, *sc in next 6 sts, sc2tog; rep from * across, turn.";
    expect(read(row).clauses.map((clause) => row.slice(clause.span.from, clause.span.to))).toEqual([
      "Ch 1",
      "*sc in next 6 sts, sc2tog; rep from * across",
      "turn",
    ]);
  });

  it("reads the pattern's own stitches and yarns by their names", () => {
    expect(
      describeClauses(read("arrow stitch in next 3 sts, fan in ch-2 sp, join Moss in last st").clauses),
    ).toBe("(arrow @ next 3 st) (fan @ next ch2-sp) (join-yarn Moss @ last st)");
  });

  it("gives up on brackets deeper than anyone can follow, and says so", () => {
    const row = `${"(".repeat(30)}sc${")".repeat(30)} twice`;
    expect(describeClauses(read(row).clauses)).toContain("REMARK");
  });

  it("takes time in proportion to the row", () => {
    const time = (times: number) => {
      const row = "*sc in next 3 sts, (2 dc, ch 2, 2 dc) in next ch-2 sp, wug; ".repeat(times);
      const start = performance.now();
      read(row);
      return performance.now() - start;
    };
    time(100);
    const short = Math.max(time(200), 1);
    // Eight times the text may take about eight times as long, with room for a busy machine; squared it would take sixty-four.
    expect(time(1600) / short).toBeLessThan(32);
  });
});

function inside(clauses: readonly Clause[], whole: Span, row: string): void {
  let at = whole.from;
  for (const clause of clauses) {
    expect(clause.span.from, row).toBeLessThanOrEqual(clause.span.to);
    expect(clause.span.from, `${row} :: ${describeClauses([clause])}`).toBeGreaterThanOrEqual(at);
    expect(clause.span.to, row).toBeLessThanOrEqual(whole.to);
    at = clause.span.to;
    if ("body" in clause && clause.kind !== "repeat") inside(clause.body, clause.span, row);
  }
}
