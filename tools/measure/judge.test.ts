import { describe, expect, it } from "vitest";
import type { Finding } from "../../src/base/index.ts";
import { readPattern } from "../../src/notation/index.ts";
import { Judge } from "./judge.ts";

const TEXT = `STRIP
Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. 10 sts.
Row 2: Ch 1, sc in each st across, turn. 10 sts.
Row 3: Ch 1, sc in each st across, turn. 10 sts.
Row 4: Ch 1, sc in each st across. 10 sts.
`;
const tree = readPattern(TEXT);
const finding = (words: string, more: Partial<Finding> = {}): Finding => {
  const from = TEXT.indexOf(words);
  return {
    code: "rows/a",
    severity: "error",
    span: { from, to: from + words.length },
    piece: null,
    row: null,
    sizes: [0],
    what: "",
    why: "",
    todo: [],
    ...more,
  };
};
/** "ch 1" of Row 2 made "ch 100": everything behind moves by two. */
const edit = { span: { from: TEXT.indexOf("Ch 1, sc") + 3, to: TEXT.indexOf("Ch 1, sc") + 4 }, text: "100" };
const ROW_2 = 2;
const moved = (one: Finding): Finding => ({ ...one, span: { from: one.span.from + 2, to: one.span.to + 2 } });
const judge = (before: Finding[], after: Finding[]) => new Judge(tree, before).judge(after, edit, ROW_2);

describe("a change is", () => {
  it("found by an error that was not there", () =>
    expect(judge([], [finding("Row 2")])).toMatchObject({ found: true, rightLine: true }));
  it("not found by one that was", () =>
    expect(judge([finding("Row 3")], [moved(finding("Row 3"))])).toMatchObject({
      found: false,
      findings: [],
    }));
  it("not found by one in fewer sizes than before", () =>
    expect(
      judge([finding("Row 3", { sizes: [0, 1] })], [moved(finding("Row 3", { sizes: [1] }))]).found,
    ).toBe(false));
  it("found by one in more sizes than before", () =>
    expect(
      judge([finding("Row 3", { sizes: [0] })], [moved(finding("Row 3", { sizes: [0, 1] }))]).found,
    ).toBe(true));
  it("not found by a note", () =>
    expect(judge([], [finding("Row 2", { severity: "note" })]).found).toBe(false));
});

describe("the right line is", () => {
  it("the next row", () => expect(judge([], [moved(finding("Row 3"))]).rightLine).toBe(true));
  it("no later one", () =>
    expect(judge([], [moved(finding("Row 4"))])).toMatchObject({ found: true, rightLine: false }));
  it("named beside a later one", () =>
    expect(judge([], [moved(finding("Row 4", { also: finding("Row 2").span }))]).rightLine).toBe(true));
});
