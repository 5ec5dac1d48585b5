import { sayList } from "../base/index.ts";
import { readingsOf } from "./chains.ts";
import type { Choices } from "./choices.ts";
import { sayKind } from "./line-report.ts";

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
  "count-alone": [null, '"3 sc" with no place said goes into one stitch.'],
  "times:star": [null, '"Rep from * N times" means N times in all.'],
  "times:star-pair": [null, "What stands between two stars is worked once more than is said."],
};

function sayChain(key: string, reading: number, terms: "US" | "UK"): string | null {
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
