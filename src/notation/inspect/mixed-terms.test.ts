import { expect, it } from "vitest";
import { foundIn } from "./found-in.ts";

// Words that tell the terms: notation survey, section 10; trade handbook, section 5.2.

const mixed = (text: string) => foundIn(text, "words/terms-mixed");
const US = "US terms\n\nCh 25.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n";
const UK = "UK terms\n\nMake 25 ch.\nRow 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.\n";

it.each([
  [`${US}Row 2: Ch 2, htr in each st across, turn.`, "htr", "UK"],
  [`${UK}Row 2: 1 ch, 1 sc in each st to end, turn.`, "sc", "US"],
  [`${UK}Row 2: 2 ch, 1 hdc in each st to end, turn.`, "hdc", "US"],
])("finds a word of the other terms in %j", (text, word, of) =>
  expect(mixed(text)).toEqual([
    `Row 2: ${word}: "${word}" is a ${of} term in a pattern in ${of === "US" ? "UK" : "US"} terms.`,
  ]),
);

it.each([
  ["miss in American terms", `${US}Row 2: Ch 1, *miss next st, 5 dc in next st; rep from * across, turn.`],
  ["a translation beside it", `${US}Row 2: Ch 2, hdc (UK htr) in each st across, turn.`],
  ["what is in both", `${US}Row 2: Ch 3, dc in next st, tr in next st, dtr in next st, turn.`],
  [
    "a word that the pattern explains",
    `ABBREVIATIONS\nhtr = half double crochet\nch = chain\n\n${US}Row 2: Ch 2, htr in each st across.`,
  ],
  [
    "a text that does not say and has no word that tells",
    "Ch 25.\nRow 1: Dc in 4th ch from hook and in each ch across, turn.",
  ],
])("is silent on %s", (_, text) => expect(mixed(text)).toEqual([]));
