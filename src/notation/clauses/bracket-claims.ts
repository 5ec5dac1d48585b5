import { readClaim } from "../claims.ts";
import type { Claim, Clause } from "../tree.ts";
import type { Reading } from "./reading.ts";
import { sharedOut } from "./shares.ts";

/** "(24 sts)", "[12 dc, 4 ch-2 sps]", "(increase 4 sts this round)", "(102 sts: 56 dc and 46 ch-1 sps)": null where the bracket is no count. */
export function readBracketClaim(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.at = open + 1;
    const claims = cursor.within(close, () => readClaimsInside(reading));
    if (!claims) return null;
    const parts = claims.flatMap((claim) => claim.parts);
    const stitchy = parts.some(
      (part) => part.kind !== "any" && part.kind !== "unit" && part.kind !== "ch-sp",
    );
    const worked = reading.out.some(
      (clause) => clause.kind !== "chain" && clause.kind !== "aside" && clause.kind !== "turn",
    );
    const tail = tailAfter(reading, close + 1);
    cursor.at = close + 1;
    const span = cursor.spanFrom(open);
    // "sc in each row end (18 sc), ...": what the step before came to, in the middle of the row.
    const last = reading.out[reading.out.length - 1];
    const told =
      (last?.kind === "work" &&
        (last.target.ref === "each" || last.target.ref === "last" || last.target.each === true)) ||
      last?.kind === "repeat" ||
      last?.kind === "aside";
    if (stitchy && !tail && told && parts.length === 1) return [{ kind: "aside", span }];
    const change = claims.every((claim) => claim.change !== undefined);
    if (stitchy && !change && reading.depth === 0 && (!worked || !tail)) return null;
    if (stitchy && reading.depth > 0) return null;
    if (reading.depth > 0 || !tail) return [{ kind: "aside", span }];
    const single = claims.length === 1 ? claims[0] : undefined;
    if (single) reading.claims.push({ ...single, span });
    else reading.claims.push(...claims);
    return [];
  });
}

/** Counts parted by colons and semicolons; behind them only words may stand. */
function readClaimsInside(reading: Reading): readonly Claim[] | null {
  const { cursor } = reading;
  const claims: Claim[] = [];
  const total = totalAtEnd(reading);
  if (total) return [total];
  let byColon = false;
  while (!cursor.done && claims.length < 8) {
    const claim = readClaim(reading, false);
    if (!claim) break;
    claims.push(...rowByRow(claim));
    if (claims.length === 1) byColon = cursor.isMark(":");
    if (!cursor.accept(":|;|.|,")) break;
  }
  if (claims.length === 0) return null;
  const rest = cursor.at;
  if (!cursor.done && !cursor.fits("in|after|at|of|on|for|which|per|each|with|half")) return null;
  // "(14 sts: 7 on each side of the point)", "(40 sts; in Row 4 ...)": the rest tells a person where.
  for (; !cursor.done; cursor.at += 1) {
    const token = cursor.token();
    if (token?.is === "number" && cursor.at === rest) return null;
    // "7 on each side of every point" tells of more than two.
    if (cursor.fits("each|every|both")) byColon = false;
  }
  return sharedOut(claims, byColon);
}

/** "(3 sc, 2 groups of 3 hdc. Total of 9 sts)": the parts are told for people, the sum at the end is the count. */
function totalAtEnd(reading: Reading): Claim | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    if (!cursor.isNumber()) return null;
    while (!cursor.done && !cursor.fits(".|:|; total|totals")) {
      const token = cursor.token();
      if (
        token?.is !== "number" &&
        token?.is !== "word" &&
        !(token?.is === "mark" && ",&+-".includes(token.text))
      )
        return null;
      cursor.at += 1;
    }
    if (cursor.done) return null;
    cursor.at += 1;
    const claim = readClaim(reading, false);
    return claim && cursor.done ? claim : null;
  });
}

/** "(294, 302 sts)", "(40, 46, 52 dc)": numbers without a noun before one with it are the counts of rows in turn. */
function rowByRow(claim: Claim): readonly Claim[] {
  const last = claim.parts.at(-1);
  const rows =
    claim.parts.length > 1 &&
    last !== undefined &&
    last.kind !== "unit" &&
    claim.change === undefined &&
    claim.parts.slice(0, -1).every((part) => part.kind === "any" && !/[a-z]/iu.test(part.words));
  if (!rows) return [claim];
  return claim.parts.map((part, index) => ({
    ...claim,
    span: part.span,
    parts: [{ ...last, span: part.span, amount: part.amount, words: part.words }],
    index,
  }));
}

const TAIL_WORDS =
  "turn|join|sl|ss|slip|slst|fasten|do|don't|dont|end|break|cut|finish|change|changing|switch|at|with|without|not|place|pm|now|for|total|weave|rep|repeat|fo|and|ch|chain|rm|remove|leave|total|tum|you|this|turning|jn|close|mark|first|size|sizes|my|i|note";

/** What a maker does to the piece between two rows, in a sentence of its own: "[30]. Stuff the body firmly." */
const HANDLES =
  "stuff|start|begin|add|insert|fill|sew|embroider|attach|flatten|fold|put|pull|thread|pin|press|try|count|check|continue|stop|keep|hide|tie|roll|turn";

/** Whether nothing that makes stitches follows: the end, a turn, a join, another count. */
function tailAfter(reading: Reading, from: number): boolean {
  const { cursor } = reading;
  const at = cursor.at;
  cursor.at = from;
  const sentence = cursor.isMark(".");
  while (cursor.token() && (cursor.isBoundary() || cursor.isMark("-") || cursor.isMark("="))) cursor.at += 1;
  const tail =
    cursor.done || cursor.isOpener() || cursor.fits(TAIL_WORDS) > 0 || (sentence && cursor.fits(HANDLES) > 0);
  cursor.at = at;
  return tail;
}
