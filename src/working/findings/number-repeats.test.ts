import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { numberRepeats } from "./number-repeats.ts";

it("names the number", () =>
  expect(said(numberRepeats, { row: "Row 5 (RS)", found: 5 })).toEqual([
    "The number 5 stands at Row 5 (RS) a second time.",
    "Two rows of this piece carry the number 5.",
    "Number the rows on from the one before.",
    "Begin the count again under a heading of its own.",
  ]));
