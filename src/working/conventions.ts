import { type Finding, sayList } from "../base/index.ts";
import { readingsOf, readingsOnFoundation } from "./chains.ts";
import type { Choices } from "./choices.ts";
import { readingChosen } from "./findings/index.ts";
import { sayKind } from "./line-report.ts";
import { sayRow, type WorkedSizes } from "./worked-sizes.ts";

/** Says in sentences how the document was read where its words left it open; each is said once. */
export function sayConventions(choices: Choices, terms: "US" | "UK"): string[] {
  const said: string[] = [];
  for (const form of choices.met.values()) {
    const reading = choices.taken.get(form.key) ?? 0;
    const sentence = sayChain(form.key, reading, terms) ?? SENTENCES[form.key]?.[reading] ?? null;
    if (sentence) said.push(sentence);
  }
  return said;
}

/** What is said of a form, by reading; a reading that goes without saying has null. */
const SENTENCES: Readonly<Record<string, readonly (string | null)[]>> = {
  "chains-are-places": [null, '"Each st" passes over the chains of the row below.'],
  "chains-in-counts": [
    "Printed counts leave out the chains inside a row.",
    "Printed counts include the chains inside a row.",
  ],
  "named-stitch-means-any": [null, '"Each sc" and the like mean every stitch of the row below.'],
  "as-many-in-as-many": [null, '"2 sc in next 2 sts" puts two into each.'],
  "slip-stitches-in-counts": [null, "Slip stitches beside other stitches are stitches of the row."],
  "count-alone": [null, '"3 sc" with no place said goes into one stitch.'],
  "times:star": [null, '"Rep from * N times" means N times in all.'],
  "times:star-pair": [null, "What stands between two stars is worked once more than is said."],
};

/** What a reading that is not the likelier one takes words for, and what else they could mean. */
const CHOSEN: Readonly<Record<string, { readonly taken: string; readonly other: string }>> = {
  "named-stitch-means-any": {
    taken: "every stitch of the row below",
    other: "the stitches of that name alone",
  },
  "as-many-in-as-many": { taken: "so many in each stitch", other: "one in each stitch" },
  "slip-stitches-in-counts": {
    taken: "stitches of the row",
    other: "only moving along the row below",
  },
  "count-alone": { taken: "all in one stitch", other: "one in each of so many stitches" },
  "times:star": { taken: "so many times in all", other: "so many times after the first" },
  "times:star-pair": { taken: "so many times after the first", other: "so many times in all" },
  "skip-behind-chain": {
    taken: "the stitch under the chain that counts",
    other: "the stitch after it",
  },
  "ending-of-repeat": {
    taken: "what the last time round ends with",
    other: "more stitches after the last time round",
  },
  "n-alone": { taken: "all in one stitch", other: "one in each of so many stitches" },
};

/** A note for every form of words that had to be read in its less likely way; the counts come true only so. */
export function chosenReadings(work: WorkedSizes, choices: Choices): Finding[] {
  const findings: Finding[] = [];
  for (const form of choices.met.values()) {
    const chosen = CHOSEN[form.key];
    if (!chosen || (choices.taken.get(form.key) ?? 0) === 0) continue;
    const place = work.placed.find(
      ({ instruction }) => instruction.span.from <= form.span.from && instruction.span.to >= form.span.to,
    );
    if (!place) continue;
    const words = work.tree.text.slice(form.span.from, form.span.to).replace(/\s+/gu, " ").slice(0, 60);
    const where = {
      span: form.span,
      piece: place.piece || null,
      row: place.instruction.label?.words ?? null,
      sizes: [],
    };
    findings.push(readingChosen.at(where, { row: sayRow(place), words, ...chosen }));
  }
  return findings;
}

function sayChain(key: string, reading: number, terms: "US" | "UK"): string | null {
  const passed = /^passed-chain:(\d+):(.+)$/.exec(key);
  if (passed) {
    const parts = readingsOnFoundation(Number(passed[1]), passed[2] as string)[reading] ?? [];
    const row = `a row of ${sayKind(passed[2] as string, terms)}`;
    return parts.length === 0
      ? `The ${passed[1]} ch passed at the start of ${row} do not count as a stitch.`
      : `The ${passed[1]} ch passed at the start of ${row} count as ${sayList(parts.map((part) => sayKind(part, terms)))}.`;
  }
  const chain = /^turning-chain:(\d+):(.+)$/.exec(key);
  if (!chain) return null;
  const chains = Number(chain[1]);
  const stitch = chain[2] as string;
  const parts = readingsOf(chains, stitch)[reading];
  const row = stitch === "-" ? "a row" : `a row of ${sayKind(stitch, terms)}`;
  if (!parts || parts.length === 0)
    return chains === 1 ? null : `Ch ${chains} at the start of ${row} does not count as a stitch.`;
  return `Ch ${chains} at the start of ${row} counts as ${sayList(parts.map((part) => sayKind(part, terms)))}.`;
}
