import { describe, expect, it } from "vitest";
import type { Proof } from "../design/index.ts";
import { handMadeProof } from "./hand-made-proof.ts";
import { paintFor } from "./paint.ts";
import { listed, setTables } from "./table.ts";
import { viewOf } from "./view.ts";

const NINE = ["XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X"];
const COUNTS = [61, 69, 77, 83, 91, 97, 105, 111, 119];

const lines = (proof: Proof, width = 80, size?: number): string[] =>
  setTables(viewOf(proof, size), width, paintFor(false)).map((line) => line.trimEnd());

describe("numbers of all sizes in a list", () => {
  // Trade handbook, section 5.2: "Group brackets when sizes pass five: 1 (2, 3, 4, 5) (6, 7, 8, 9)".
  it("are grouped in brackets past five sizes", () =>
    expect(listed(["1", "2", "3", "4", "5", "6", "7", "8", "9"], 80)).toEqual([
      "1 (2, 3, 4, 5) (6, 7, 8, 9)",
    ]));
  it("stand in one bracket up to five", () =>
    expect(listed(["1", "2", "3", "4", "5"], 80)).toEqual(["1 (2, 3, 4, 5)"]));
  it("need none for one", () => expect(listed(["8"], 80)).toEqual(["8"]));
  it("break between numbers", () =>
    expect(listed(COUNTS.map(String), 16)).toEqual(["61 (69, 77, 83,", "91) (97, 105,", "111, 119)"]));
});

describe("a table", () => {
  const proof = handMadeProof({
    sizes: ["S", "M", "L"],
    pieces: {
      "Back / Rib": [
        { text: "Ch 9 (11, 13).", kind: "foundation", label: "Foundation", stitches: [9, 11, 13] },
        {
          text: "Row 1 (RS): Sc across. 8 (10, 12) sts.",
          side: ["RS", "RS", "RS"],
          stitches: [8, 10, 12],
          printed: [8, 10, 12],
        },
        {
          text: "Row 2 (WS): Sc across. 8 (11, 12) sts.",
          side: ["WS", "WS", "WS"],
          stitches: [8, 10, 12],
          printed: [8, 11, 12],
          wrong: ["error rows/count-differs @ 8 (11, 12)"],
        },
        {
          text: "Rows 3-6 (8, 8): Rep Row 2.",
          label: "Rows 3-6 (8, 8)",
          side: ["WS", "WS", "WS"],
          last: [6, 8, 8],
          stitches: [8, 10, 12],
        },
      ],
      "Back / Body": [
        {
          text: "Row 7: Flip it. 8 (10, 12) sts.",
          stitches: [8, 10, 12],
          printed: [8, 10, 12],
          trust: true,
          wrong: ["warning lines/not-understood @ Flip it"],
        },
        { text: "Row 8: In size L sc.", first: [null, null, 8], stitches: [null, null, 12] },
        { text: "Row 9: Hm. 20 sts.", printed: [20, 20, 20] },
        { text: "Fasten off.", kind: "other", label: "" },
      ],
    },
  });

  it("has a line a row and a column a size, and a key to its signs", () =>
    expect(lines(proof)).toEqual([
      "Back",
      "  Rib                    S    M    L",
      "    3  Foundation        9   11   13",
      "    4  Row 1      RS =   8   10   12",
      "!!  5  Row 2      WS ≠   8   10   12",
      "         printed         =   11    =",
      "    6  Rows 3-…   WS     8   10   12",
      "         to row          6    8    8",
      "",
      "  Body                   S    M    L",
      "!   8  Row 7             8t  10t  12t",
      "    9  Row 8             -    -   12",
      "   10  Row 9             ?    ?    ?",
      "         printed        20   20   20",
      "   11  Fasten off.",
      "",
      "Key: !! an error · ! a warning · = the printed count is the worked one ·",
      "     ≠ it is not · t on trust, not proved · ? not known ·",
      "     - not worked in this size",
      "",
    ]));

  it("shows one size alone", () =>
    expect(lines(proof, 80, 1).slice(0, 5)).toEqual([
      "Back",
      "  Rib                    M",
      "    3  Foundation       11",
      "    4  Row 1      RS =  10",
      "!!  5  Row 2      WS ≠  10",
    ]));
});

describe("a table of nine sizes", () => {
  const proof = handMadeProof({
    sizes: NINE,
    pieces: {
      Body: [
        { text: "Row 1: Sc across. 8 sts.", stitches: NINE.map(() => 8), printed: NINE.map(() => 8) },
        { text: "Row 2: Inc. 61 ... sts.", stitches: COUNTS, printed: COUNTS },
      ],
    },
  });

  it("has columns where they fit", () =>
    expect(lines(proof).slice(0, 3)).toEqual([
      "Body                XS   S   M   L  XL  2X   3X   4X   5X",
      "   3  Row 1      =   8   8   8   8   8   8    8    8    8",
      "   4  Row 2      =  61  69  77  83  91  97  105  111  119",
    ]));
  it("has lists where they do not", () =>
    expect(lines(proof, 40).slice(0, 5)).toEqual([
      "Body",
      "        XS (S, M, L, XL) (2X, 3X, 4X,",
      "        5X)",
      "   3  Row 1      = 8",
      "   4  Row 2      =",
    ]));
  it.each([40, 50, 60, 80, 100, 140])("never breaks a number or leaves %i columns", (width) => {
    const set = lines(proof, width);
    for (const line of set) expect(line.length).toBeLessThanOrEqual(width);
    const numbers = set.join(" ").match(/\d+/g)?.map(Number) ?? [];
    for (const count of COUNTS) expect(numbers).toContain(count);
  });
});

describe("lines that make no row", () => {
  const other = (text: string) => ({ text, kind: "other" as const, label: "" });
  it("are counted where there are many", () => {
    const proof = handMadeProof({
      sizes: ["one size"],
      pieces: { Finishing: ["Sew.", "Turn out.", "Weave in ends.", "Wash."].map(other) },
    });
    expect(lines(proof)).toEqual(["Finishing", "   3  up to line 6: 4 instructions that make no row", ""]);
  });
});

it("names the kinds of stitches of a pattern in one size", () =>
  expect(
    lines(
      handMadeProof({
        sizes: ["one size"],
        pieces: {
          Shell: [{ text: "Row 3: Shells.", stitches: [24], kinds: { dc: [16], "ch-2 sp": [8], sc: [0] } }],
        },
      }),
    )[1],
  ).toMatch(/Row 3 +24 {2}16 dc, 8 ch-2 sp$/));
