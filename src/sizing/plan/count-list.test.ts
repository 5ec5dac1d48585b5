import { describe, expect, it } from "vitest";
import type { GradingRule } from "../grading/problem.ts";
import { readCountList, readMultiple } from "./count-list.ts";
import { putInOrder } from "./in-order.ts";
import { breaksOf } from "./rule-breaks.ts";

describe("lists of counts", () => {
  it.each([
    ["61 69 77", [61, 69, 77]],
    ["61 (69, 77) (83, 91)", [61, 69, 77, 83, 91]],
    ["61, 69, - , 83", [61, 69, null, 83]],
    ["62", [62]],
  ])("%s", (words, values) => expect(readCountList(words).list?.values).toEqual(values));
  it("know the place of each number", () => {
    const words = "61 (69, 77)";
    expect(readCountList(words).list?.spans.map(({ from, to }) => words.slice(from, to))).toEqual([
      "61",
      "69",
      "77",
    ]);
  });
  it.each([
    ["61 69.5 77", "69.5 77"],
    ["61 sts", "sts"],
    ["", ""],
  ])("%s is none", (words, at) => {
    const { slip } = readCountList(words);
    expect(words.slice(slip?.span.from, slip?.span.to)).toBe(at);
  });
});

// Trade handbook, section 3.1: "multiple of 5 plus 1".
it.each([
  ["2 + 1", { multiple: 2, remainder: 1 }],
  ["multiple of 5 plus 1", { multiple: 5, remainder: 1 }],
  ["4", { multiple: 4, remainder: 0 }],
  ["8 sts minus 2", { multiple: 8, remainder: -2 }],
  ["2.5", null],
  ["two", null],
  ["0 + 1", null],
])("multiple %s", (words, multiple) => expect(readMultiple(words)).toEqual(multiple));

describe("the order in which measures are worked out", () => {
  it("puts each behind what it leans on, forward references too", () => {
    const { order, circles } = putInOrder(
      new Map([
        ["length", ["rib", "body"]],
        ["body", ["rib", "bust"]],
        ["rib", []],
      ]),
    );
    expect(order).toEqual(["rib", "body", "length"]);
    expect(circles).toEqual([]);
  });
  it("finds circles, and a measure that leans on itself", () => {
    const { circles } = putInOrder(
      new Map([
        ["a", ["b"]],
        ["b", ["c"]],
        ["c", ["a"]],
        ["d", ["d"]],
      ]),
    );
    expect(circles).toEqual([["a", "b", "c"], ["d"]]);
  });
  it("goes as deep as a table is long", () => {
    const names = Array.from({ length: 50_000 }, (_, at) => `m${at}`);
    const { order } = putInOrder(new Map(names.map((name, at) => [name, [`m${at + 1}`]])));
    expect(order[0]).toBe("m49999");
    expect(order).toHaveLength(50_000);
  });
});

describe("rules that written counts break", () => {
  const values: Readonly<Record<string, readonly (number | null)[]>> = {
    back: [61, 69, 76],
    front: [30, 34, 38],
    band: [1, 1, null],
  };
  const breaks = (rule: GradingRule) =>
    breaksOf(rule, 3, { values: (name) => values[name] ?? null, unit: () => 0.5 });
  const words = "";
  it.each<[string, GradingRule, number[]]>([
    ["a multiple", { kind: "multiple", of: "back", multiple: 2, remainder: 1, words }, [2]],
    ["a least", { kind: "at least", of: "back", counts: [62, null, 70], words }, [0]],
    ["a most", { kind: "at most", of: "back", counts: [70], words }, [2]],
    ["a held count", { kind: "hold", of: "back", size: 1, count: 67, words }, [1]],
    ["an order", { kind: "order", of: "back", direction: "down", words }, [1, 2]],
    ["a tie", { kind: "equal", of: "back", as: "front", plus: 31, words }, [1, 2]],
    [
      "a sum in cm",
      {
        kind: "sum",
        terms: [
          { of: "back", times: 1 },
          { of: "front", times: -2 },
        ],
        makes: 0,
        measured: "cm",
        within: 0.5,
        words,
      },
      [],
    ],
    [
      "a sum, where a size has no count",
      {
        kind: "sum",
        terms: [
          { of: "back", times: 1 },
          { of: "front", times: -2 },
          { of: "band", times: -1 },
        ],
        makes: 0,
        measured: "counts",
        words,
      },
      [],
    ],
    [
      "a ratio",
      { kind: "ratio", of: "front", to: "back", measured: "counts", least: 0.495, most: 0.5, words },
      [0, 1],
    ],
  ])("%s", (_, rule, sizes) => expect(breaks(rule).sizes).toEqual(sizes));
});
