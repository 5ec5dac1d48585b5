import { expect, it } from "vitest";
import { readPattern } from "../read-pattern.ts";
import { inspectTree } from "./inspect-tree.ts";

const TEXT = "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n";

it("says what is read where a star is missing", () => {
  const text = `${TEXT}Row 2: Ch 1, sc in next 3 sts, sc2tog; rep from * across, turn.`;
  const found = inspectTree(readPattern(text)).filter(({ code }) => code === "lines/mended");
  expect(found.map(({ row, why }) => [row, why])).toEqual([["Row 2", "No star stands before this repeat."]]);
});

it("offers the edit where there is one", () => {
  const text = "Ch 10 (12, 14.";
  const span = { from: 3, to: 13 };
  const tree = readPattern(text);
  const mend = { span: { from: 13, to: 13 }, text: ")" };
  const [finding] = inspectTree({ ...tree, forgiven: [{ span, words: "10 (12, 14", mend }] });
  expect(finding?.why).toBe('")" is read behind it.');
  expect(finding?.todo[0]).toEqual({ say: 'Write ")".', edits: [mend] });
});
