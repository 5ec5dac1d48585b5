import type { Claim, ClaimShare, Clause } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import type { Reading } from "./reading.ts";

/** ": back 32 (34), sleeves 12 each, front 32 (34)": how the count just read is shared out, part by part. */
export function readShares(reading: Reading): Clause | null {
  const { cursor, claims } = reading;
  const claim = claims.at(-1);
  if (!claim || !cursor.isMark(":")) return null;
  return cursor.attempt(() => {
    const start = cursor.at;
    cursor.at += 1;
    const shares = sharesHere(reading);
    if (shares.length === 0 || !cursor.isBoundary()) return null;
    claims[claims.length - 1] = { ...claim, shares };
    return { kind: "aside", span: cursor.spanFrom(start) };
  });
}

function sharesHere(reading: Reading): ClaimShare[] {
  const { cursor } = reading;
  const shares: ClaimShare[] = [];
  while (shares.length < MOST) {
    const share = cursor.attempt(() => {
      cursor.accept(",|;|and");
      cursor.accept("and");
      return oneShare(reading);
    });
    if (!share) break;
    shares.push(share);
  }
  return shares;
}

const MOST = 12;

/** "back 32", "sleeves 12 each", "2 on the back", "7 on each side". */
function oneShare(reading: Reading): ClaimShare | null {
  const { cursor } = reading;
  const start = cursor.at;
  const before = readAmount(reading);
  const words: string[] = [];
  while (cursor.isWord() && SHARERS.has(cursor.key()) && words.length < 6) {
    words.push(cursor.key());
    cursor.at += 1;
  }
  if (words.length === 0) return null;
  const amount = before ?? readAmount(reading);
  if (!amount) return null;
  const whole = cursor.accept("in all");
  const each = !whole && (cursor.accept("each|sts-each") || words.includes("each"));
  if (!whole && !each) cursor.accept("sts");
  const share = { span: cursor.spanFrom(start), amount, times: whole ? [1] : timesOf(words, each) };
  return words.some((word) => word === "side" || word === "sides") ? { ...share, sides: true } : share;
}

/** Parts that a garment has two of. */
const PAIRED = new Set(["sleeve", "sleeves", "front", "fronts", "side", "sides"]);

function timesOf(words: readonly string[], each: boolean): readonly number[] {
  const last = words.findLast((word) => !SMALL.has(word));
  if (each) return last !== undefined && PAIRED.has(last) ? [2] : [];
  return last !== undefined && PAIRED.has(last) && last.endsWith("s") ? [1, 2] : [1];
}

const SMALL = new Set("on the each left right for in".split(" "));
const SHARERS = new Set([
  ..."on the each back front sleeve sleeves body left right yoke side sides half for in raglan top bottom fronts".split(
    " ",
  ),
]);

/** "(14 sts: 7 on each side)": what stands behind the colon is the count once more. */
export function sharedOut(claims: readonly Claim[], byColon: boolean): readonly Claim[] {
  const [total, side] = claims;
  const part = side?.parts[0];
  if (!byColon || claims.length !== 2 || !total || !side?.eachSide || side.parts.length !== 1 || !part)
    return claims;
  const { span, amount } = part;
  return [{ ...total, shares: [{ span, amount, times: [2], sides: true }] }, side];
}
