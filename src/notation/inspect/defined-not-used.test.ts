import { expect, it } from "vitest";
import { foundIn } from "./found-in.ts";

// Every abbreviation defined is used: trade handbook, section 5.3.

const pattern = (entries: string, rows: string) =>
  `ABBREVIATIONS (US)\n${entries}\nch = chain\nsc = single crochet\n\nBAND\nCh 25.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n${rows}\n`;
const unused = (entries: string, rows: string) => foundIn(pattern(entries, rows), "words/defined-not-used");

it("finds entries that nothing needs", () =>
  expect(
    unused(
      "tr = treble crochet\nFPdc = front post double crochet\nyo = yarn over",
      "Row 2: Ch 1, sc in each ch.",
    ),
  ).toEqual([
    '-: tr = treble crochet: "tr" is defined and not used.',
    '-: FPdc = front post double crochet: "FPdc" is defined and not used.',
    '-: yo = yarn over: "yo" is defined and not used.',
  ]));

it.each([
  ["another spelling", "sl st = slip stitch", "Row 2: Ch 1, sc in each ch, SS in last ch."],
  ["the plural", "rnd(s) = round(s)", "Row 2: Ch 1, sc in each ch.\nWork 3 rnds more."],
  ["the word written out", "rep = repeat", "Row 2: Ch 1, sc in each ch.\nRepeat Row 2."],
  ["a longer form of the word", "cont = continue", "Row 2: Ch 1, sc in each ch, continuing to the end."],
  ["a stitch named from it", "dc = double crochet", "Row 2: Ch 2, FPdc around next st, BPdc around next st."],
  ["a decrease named from it", "tog = together", "Row 2: Ch 1, sc2tog, sc in each st across."],
  ["a stitch glued to its number", "dc = double crochet", "Row 2: Ch 3, 4dc in next st."],
  ["a place", "sp = space", "Row 2: Ch 3, sc in ch-2 sp."],
  ["one of two spellings", "BLO/BL = back loop only", "Row 2: Ch 1, sc in BL of each st."],
  ["a sign", "* = repeat from here", "Row 2: Ch 1, sc in each ch."],
])("takes as use %s", (_, entry, rows) => expect(unused(entry, rows)).toEqual([]));

it("is silent on a list with no rows under it", () =>
  expect(
    foundIn(
      "ABBREVIATIONS\ntr = treble crochet\nch = chain\ndc = double crochet\n",
      "words/defined-not-used",
    ),
  ).toEqual([]));
