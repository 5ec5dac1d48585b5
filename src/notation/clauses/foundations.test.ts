import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 2. Rows are our own; how each is understood is common practice, no source.
describe("Where the first row goes", () => {
  it.each([
    [
      "Sc in 2nd ch from hook and in each ch across, turn.",
      "(sc @ nth #2 ch from-hook) (sc @ each ch ..) (turn)",
    ],
    ["hdc in 3rd ch from hook, hdc in next 4 ch", "(hdc @ nth #3 ch from-hook) (hdc @ next 4 ch)"],
    ["1 dc into 4th ch from hk and each ch across", "(dc x1 @ nth #4 ch from-hook) (dc x1 @ each ch ..)"],
    ["hdc 3rd ch from hook, hdc across", "(hdc @ nth #3 ch from-hook) (hdc @ each st ..)"],
    ["skip 3 ch, dc in next ch", "(skip @ next 3 ch) (dc @ next ch)"],
    ["Starting in 2nd ch from hook, sc across", "(skip to @ nth #2 ch from-hook) (sc @ each st ..)"],
    ["In the 2nd ch from hook hdc across", "(skip to @ nth #2 ch from-hook) (hdc @ each st ..)"],
    [
      "in the second chain from the hook work sc, sc in each ch across",
      "(group @ nth #2 ch from-hook : (sc)) (sc @ each ch ..)",
    ],
    ["Fsc 64, turn.", "(fsc x64) (turn)"],
    ["work the fhdc until you have 64 sts", "(fhdc @ each st ..have 64)"],
    ["Magic ring, 6 sc in ring", "(join sl st ring) (sc x6 @ any ring)"],
    ["8 dc in MR", "(dc x8 @ any ring)"],
    ["6 sc into a magic circle", "(sc x6 @ any ring)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
