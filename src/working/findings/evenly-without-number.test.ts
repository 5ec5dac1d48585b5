import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { evenlyWithoutNumber } from "./evenly-without-number.ts";

it("offers a number for each size", () =>
  expect(
    said(evenlyWithoutNumber, {
      row: "Row 1",
      offered: [
        { size: "S", n: 48 },
        { size: "M", n: 52 },
      ],
    }),
  ).toEqual([
    '"Evenly" in Row 1 has no number of stitches.',
    "Every maker ends with another number; the edge offers 48 and 52 sts in sizes S and M.",
    "Print 48 and 52 sts in sizes S and M.",
  ]));

it("offers none where none follows", () =>
  expect(said(evenlyWithoutNumber, { row: "Rnd 1", offered: [] }).slice(1)).toEqual([
    "Every maker ends with another number, and the next row has to fit it.",
    "Print the number of stitches.",
  ]));
