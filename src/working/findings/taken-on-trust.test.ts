import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { takenOnTrust } from "./taken-on-trust.ts";

it("says the count and why it is not proved", () =>
  expect(
    said(takenOnTrust, {
      row: "Row 8",
      count: [
        { size: "S", n: 40 },
        { size: "M", n: 44 },
      ],
      because: "Row 7 cannot be worked to its end",
    }),
  ).toEqual([
    "Row 8 is taken at the printed 40 and 44 sts in sizes S and M, without proof.",
    "Row 7 cannot be worked to its end.",
    "Mend what stops Row 8, and the count is proved.",
    "Vouch for it with a reason after the row: (Vouched, 40 and 44 sts: ...).",
  ]));

it("says no size where there is one", () =>
  expect(said(takenOnTrust, { row: "Rows 8-9", count: [{ size: "one size", n: 40 }], because: "x" })[0]).toBe(
    "Rows 8-9 are taken at the printed 40 sts, without proof.",
  ));
