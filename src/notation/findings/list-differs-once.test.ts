import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { listDiffersOnce } from "./list-differs-once.ts";

it("sets the number of the words beside that of the row", () =>
  expect(
    said(listDiffersOnce, {
      words: "30 (34, 37, 42)",
      other: "30 (34, 38, 42)",
      size: "L",
      found: 37,
      expected: 38,
    }),
  ).toEqual([
    '"30 (34, 37, 42)" is a list of the rows but in size L.',
    'The rows say "30 (34, 38, 42)": 38 there, 37 here.',
    "Write 38 in size L.",
    "Change the row where 37 is right.",
  ]));
