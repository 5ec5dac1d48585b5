import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { piecesDoNotMirror } from "./pieces-do-not-mirror.ts";

it("says what differs", () =>
  expect(
    said(piecesDoNotMirror, {
      one: "Left Front",
      other: "Right Front",
      cases: [{ size: "one size", one: 24, other: 25, what: "rows" }],
    }),
  ).toEqual([
    "Left Front and Right Front do not mirror.",
    "Rows: 24 in Left Front, 25 in Right Front.",
    "Change Left Front or Right Front so that both have the same.",
    "Say in the pattern where the two are meant to differ.",
  ]));

it("keeps kinds apart and names their sizes", () =>
  expect(
    said(piecesDoNotMirror, {
      one: "Left Front",
      other: "Right Front",
      cases: [
        { size: "S", one: 24, other: 25, what: "rows" },
        { size: "M", one: 26, other: 25, what: "rows" },
        { size: "M", one: 12, other: 13, what: "sts at the neck" },
      ],
    }).slice(0, 2),
  ).toEqual([
    "Left Front and Right Front do not mirror in sizes S and M.",
    "Rows: 24 and 26 in Left Front, 25 in Right Front in sizes S and M. " +
      "Sts at the neck: 12 in Left Front, 13 in Right Front in size M.",
  ]));
