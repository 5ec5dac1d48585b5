import { nameIn, stitchOf } from "./lookup.ts";
import { STEMS } from "./records/stems.ts";
import type { Stitch } from "./stitch.ts";
import type { Terms } from "./terms.ts";

/**
 * How a stitch is worked, in our own words and short enough for a pattern's list. A code in braces stands for the
 * name of that stitch in the terms asked for.
 */
const SINGLE_MEANINGS: Readonly<Record<string, string>> = {
  ch: "draw a loop through the loop on the hook",
  "sl st": "into the stitch and straight through the loop on the hook; adds almost no height",
  "yo sl st": "yarn over, into the stitch, up a loop and straight through all loops on the hook",
  sc: "into the stitch, up a loop, off both at once",
  hdc: "yarn over, into the stitch, up a loop, then off all three at once",
  dc: "yarn over, into the stitch, up a loop, then off in twos (two pulls)",
  tr: "two yarn overs first, then off in twos (three pulls)",
  dtr: "three yarn overs first, then off in twos",
  trtr: "four yarn overs first, then off in twos",
  invdec: "hook through the front loops of the next two stitches, then finish as one {sc}",
  invinc: "one {sc} in the front loop and one in the back loop of the same stitch",
  cluster: "unfinished stitches, in one place or several, closed by one last pull",
  bobble: "several tall stitches left unfinished in one place, then closed together into one lump",
  puff: "several long loops drawn up in one place and closed together",
  popcorn: "finished tall stitches in one place, the last drawn through the first so they fold forward",
  bean: "a few loops drawn up in one or two places and closed together into a small lump",
  shell: "several tall stitches in one place, fanned",
  fan: "several tall stitches in one place, spread like a fan",
  "v-stitch": "{dc}, one chain, {dc}, all in one place",
  "hdc-v-stitch": "{hdc}, one chain, {hdc}, all in one place",
  "tr-v-stitch": "{tr}, one chain, {tr}, all in one place",
  "y-stitch": "{tr}, one chain, then a {dc} into the middle of its upright",
  "inverted-y": "one upright on two feet that stand in two places",
  rsc: "{sc} worked backwards along an edge",
  "twisted-sc": "{sc} with the loops turned once round on the hook before the last pull",
  "loop-stitch": "{sc} with a long loop of yarn left hanging behind",
  bullion: "the yarn wound several times round the hook, then drawn through all the windings",
};

/** Numbered lumps and shells: # stands for the number, @ for the stitches. */
const LUMP_MEANINGS: Readonly<Record<string, string>> = {
  cluster: "#unfinished @ closed by one last pull",
  bobble: "#unfinished @ in one place, closed together into one lump",
  puff: "#unfinished @ with long loops in one place, closed together",
  popcorn: "#@ in one place, the last drawn through the first so they fold forward",
  shell: "#@ in one place, fanned",
};

/**
 * How the stitch is worked, in the words of the given terms.
 * @throws {RangeError} on an unknown code
 */
export function meaningOf(code: string, terms: Terms): string {
  const stitch = stitchOf(code);
  const text = SINGLE_MEANINGS[code] ?? familyMeaning(stitch);
  return text.replace(/\{([^}]+)\}/gu, (_, part: string) => nameIn(part, terms));
}

/** The meaning of a stitch that is one of a regular kind, told from its record. */
function familyMeaning(stitch: Stitch): string {
  const { code, takes, makes, parts, hold } = stitch;
  const stem = STEMS.find((one) => one.family === stitch.family)?.code;
  const lump = /^(\d+)(sc|hdc|dc|tr|dtr|trtr)-(\w+)$/u.exec(code);
  const lumpMeaning = LUMP_MEANINGS[lump?.[3] ?? ""];
  if (lump !== null && lumpMeaning !== undefined)
    return lumpMeaning.replace("#", `${lump[1]} `).replace("@", `{${lump[2]}}s`);
  if (code.endsWith("picot")) {
    const chains = /\d+/u.exec(code)?.[0] ?? "3";
    return `${chains} chains closed into a small ring by a slip stitch where they began`;
  }
  if (stem === undefined) throw new RangeError(`no meaning kept for "${code}"`);
  if (hold === "front-post" || hold === "back-post") {
    const from = hold === "front-post" ? "from the front" : "from behind";
    return takes === 1
      ? `a {${stem}} worked round the upright ${from}; it ${hold === "front-post" ? "stands toward" : "sinks away from"} you`
      : `${takes} unfinished {${stem}}s round the next uprights ${from}, closed as one`;
  }
  if (hold === "spike") return `a {${stem}} worked into an earlier row, over the rows between`;
  if (hold === "none") return `a chain and a {${stem}} made in one go`;
  if (takes > 1 && makes === 1) return `${takes} unfinished {${stem}}s closed as one`;
  if (code.startsWith("crossed"))
    return `{${stem}} in the second stitch from here, then {${stem}} in the stitch before it`;
  if (parts !== undefined) return `${makes} {${stem}}s in one stitch`;
  if (code.startsWith("herringbone"))
    return `{${stem}} with its first loop drawn straight through the next loop on the hook`;
  if (code.startsWith("e")) return `{${stem}} with one extra pull through one loop near its foot`;
  if (code.startsWith("l"))
    return `{${stem}} begun from the side of the stitch before, so that no gap stands between`;
  throw new RangeError(`no meaning kept for "${code}"`);
}
