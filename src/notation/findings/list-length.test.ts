import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { listLength } from "./list-length.ts";

it("counts values and sizes", () => {
  expect(said(listLength, { words: "41 (45, 51)", has: 3, sizes: 4 })).toEqual([
    '"41 (45, 51)" has 3 values for 4 sizes.',
    "1 size gets no number.",
    "Write 4 values, one for each size.",
    "Write 0 for a size that works none.",
  ]);
  expect(said(listLength, { words: "41 (45, 51, 57, 63)", has: 5, sizes: 3 })).toEqual([
    '"41 (45, 51, 57, 63)" has 5 values for 3 sizes.',
    "2 values belong to no size.",
    "Write 3 values, one for each size.",
    "Add the size to the list of sizes where one is missing there.",
  ]);
});
