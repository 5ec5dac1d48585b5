import { describe, expect, it } from "vitest";
import { foundIn } from "./found-in.ts";

// Every abbreviation used is defined: trade handbook, section 5.3.

const LIST =
  "ABBREVIATIONS (US)\nch = chain\nsc = single crochet\ndc = double crochet\nst(s) = stitch(es)\nrep = repeat\n";
const pattern = (row: string, more = "") =>
  `${LIST}${more}\nBAND\nCh 25.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: ${row}\n`;
const undefinedIn = (row: string, more?: string) => foundIn(pattern(row, more), "words/not-defined");

describe("a word that the list leaves out", () => {
  it("is found where it is a stitch", () =>
    expect(undefinedIn("Ch 2, hdc in each st across, turn.")).toEqual([
      'Row 2: hdc: "hdc" is used in Row 2 and not defined.',
    ]));
  it("is found where it is a loop word", () =>
    expect(undefinedIn("Ch 1, sc BLO in each st across, turn.")).toEqual([
      'Row 2: BLO: "BLO" is used in Row 2 and not defined.',
    ]));
  it("is found where it is a post stitch, though its stem is listed", () =>
    expect(undefinedIn("Ch 2, FPdc around next st, dc in each st across, turn.")).toHaveLength(1));
  it("is found where books differ on it", () =>
    expect(
      undefinedIn("Ch 1, *sk next 2 sts, shell in next st, sk next 2 sts; rep from * across, turn."),
    ).toEqual(['Row 2: shell: "shell" is used in Row 2 and not defined.']));
});

describe("a word is explained", () => {
  it("by being a general word", () =>
    expect(undefinedIn("Ch 1, sk next st, sc in rem sts, join to beg ch, PM, cont in patt.")).toEqual([]));
  it("by its parts", () =>
    expect(
      undefinedIn(
        "Ch 2, dc2tog, dc3tog over next 3 sts, dc in each st across, turn.",
        "dc2tog = double crochet 2 together\n",
      ),
    ).toEqual([]));
  it("by a special stitch", () =>
    expect(
      undefinedIn(
        "Ch 1, *sk next 2 sts, shell in next st; rep from * across, turn.",
        "\nSPECIAL STITCHES\nShell: 5 dc in the st stated.\n",
      ),
    ).toEqual([]));
  it("by the row", () =>
    expect(
      undefinedIn(
        "Ch 1, *sk next 2 sts, 5 dc in next st (shell made), sk next 2 sts, shell in next st; rep from * across, turn.",
      ),
    ).toEqual([]));
  it("by a note", () =>
    expect(
      undefinedIn("Ch 2, hdc in each st across, turn.", "\nNOTES\nRow 2 is in half double crochet (hdc).\n"),
    ).toEqual([]));
  it("by being written out", () =>
    expect(undefinedIn("Ch 2, half double crochet in each st across, turn.")).toEqual([]));
});

it("asks nothing of a pattern without a list", () =>
  expect(
    foundIn(pattern("Ch 2, hdc in each st across, turn.").slice(LIST.length), "words/not-defined"),
  ).toEqual([]));

it("asks for no common stitches where the list has the rare ones only", () =>
  expect(
    foundIn(
      "ABBREVIATIONS (US)\nFPdc = front post double crochet\nBPdc = back post double crochet\nPM = place marker\n\nCh 25.\nRow 1: Dc in 4th ch from hook and in each ch across, turn.\nRow 2: Ch 2, hdc in each st across, turn.\n",
      "words/not-defined",
    ),
  ).toEqual([]));
