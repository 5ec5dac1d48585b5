import { expect, it } from "vitest";
import { readOptions } from "./options.ts";
import { drawTable, share } from "./tables.ts";

it("reads sample, kind and number", () => {
  expect(readOptions(["--sample", "samples/toy-spirals.txt", "--kind", "turn", "--most", "9"])).toEqual({
    sample: "toy-spirals",
    kind: "turn dropped",
    most: 9,
  });
  expect(readOptions([])).toMatchObject({ sample: null, kind: null });
});

it("says what it does not know", () => {
  expect(() => readOptions(["--fast", "1"])).toThrow("no option --fast");
  expect(() => readOptions(["--kind", "number"])).toThrow("There are: number in a row");
  expect(() => readOptions(["--most", "many"])).toThrow("whole number");
  expect(() => readOptions(["--sample"])).toThrow("needs a value");
});

it("draws tables with numbers to the right", () =>
  expect(drawTable(["kind", "found"], [["a", "7"]], ["all", "12"])).toBe(
    "kind  found\n────  ─────\na         7\n────  ─────\nall      12",
  ));

it("calls only all of them 100 %", () =>
  expect([share(999, 1000), share(5, 5), share(0, 0)]).toEqual(["99 %", "100 %", "-"]));
