import { plural } from "../../base/index.ts";
import type { Answer, Claim, ClaimPart } from "../tree.ts";
import { isOne, printAmount } from "./amounts.ts";
import { printStitch, printStitches } from "./stitch-words.ts";
import type { PrintStyle } from "./style.ts";

/** "(24 sts)", "(48 dc, 4 ch-2 sps)", "(40 sts) (38 sts) (36 sts)". */
export function printClaims(claims: readonly Claim[], style: PrintStyle, row: string): string {
  return claims.map((claim) => `(${printClaim(claim, style, row)})`).join(" ");
}

/** The same without brackets. */
export function printClaim(claim: Claim, style: PrintStyle, row: string): string {
  const parts = claim.parts.map((part) => printPart(part, style));
  let words = parts.join(", ");
  if (claim.change) words += ` ${claim.change === "inc" ? "increased" : "decreased"}`;
  if (claim.countsChains !== undefined)
    words +=
      claim.countsChains === "all"
        ? ", counting chs as sts"
        : `, counting each ch-${claim.countsChains} as a st`;
  if (claim.includesChain) words += " including turning ch";
  if (claim.excludes === "turning-chain") words += ", not counting turning ch";
  else if (claim.excludes === "chain") words += ", not counting chs";
  else if (claim.excludes) words += `, not counting ${printStitches(claim.excludes, style)}`;
  if (claim.eachSide) words += " each side";
  if (claim.ofRow) words += ` at end of ${row} ${printAmount(claim.ofRow)}`;
  return words;
}

function printPart(part: ClaimPart, style: PrintStyle): string {
  const amount = printAmount(part.amount);
  return `${amount} ${countedNoun(part, style)}`;
}

function countedNoun(part: ClaimPart, style: PrintStyle): string {
  const one = isOne(part.amount);
  switch (part.kind) {
    case "any":
      return one ? "st" : "sts";
    case "ch-sp": {
      const space = part.chains === undefined ? "ch sp" : `ch-${part.chains} sp`;
      return one ? space : plural(space);
    }
    case "unit":
      return unitNoun(part.words);
    default:
      return one ? printStitch(part.kind, style) : printStitches(part.kind, style);
  }
}

/** The noun of a count of units: "rounds" of "14 (16, 18) rounds". */
export function unitNoun(words: string): string {
  return words.replace(/^[^\p{L}]+/u, "");
}

/** "(As meant: the last stitch is left for the band. ~k7f2q)", "(Vouched, 40 sts: ...)". */
export function printAnswer(answer: Answer): string {
  const code = answer.code === undefined ? "" : `, ${answer.code}`;
  const count = answer.count === undefined ? "" : `, ${printAmount(answer.count)} sts`;
  const stamp = answer.stamp === null ? "" : ` ~${answer.stamp}`;
  return `(${answer.is === "as-meant" ? "As meant" : "Vouched"}${code}${count}: ${answer.reason}${stamp})`;
}
