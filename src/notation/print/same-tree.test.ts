import { expect, it } from "vitest";
import { sameTree } from "./same-tree.ts";

const span = (from: number, to: number) => ({ from, to });

it("does not look at where the words stand", () =>
  expect(sameTree({ kind: "turn", span: span(1, 5) }, { kind: "turn", span: span(40, 44) })).toBe(true));

it("sees a number, a field too many and a clause missing", () => {
  const ch = (n: number) => ({ kind: "chain", span: span(0, 4), count: { span: span(3, 4), values: [n] } });
  expect(sameTree(ch(1), ch(2))).toBe(false);
  expect(sameTree(ch(1), { ...ch(1), countsAs: { parts: [] } })).toBe(false);
  expect(sameTree([ch(1), ch(2)], [ch(1)])).toBe(false);
  expect(sameTree(null, ch(1))).toBe(false);
});

it("looks at words only where they say more than the fields beside them", () => {
  const label = (is: string, words: string) => ({ is, words, rows: [], rounds: false });
  expect(sameTree(label("row", "6th row"), label("row", "Row 6"))).toBe(true);
  expect(sameTree(label("named", "Inc row"), label("named", "Dec row"))).toBe(false);
  expect(sameTree({ kind: "remark", words: "as pictured" }, { kind: "remark", words: "as shown" })).toBe(
    false,
  );
});

it("lets lengths differ in the last digits only", () => {
  expect(sameTree({ values: [29.21] }, { values: [29.210000000000004] })).toBe(true);
  expect(sameTree({ values: [29.21] }, { values: [29.22] })).toBe(false);
});
