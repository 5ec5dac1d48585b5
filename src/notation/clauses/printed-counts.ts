import { readClaim } from "../claims.ts";
import { stitchAt } from "../stitch-words.ts";
import type { Token } from "../token.ts";
import type { Claim, Clause } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import type { Reading } from "./reading.ts";
import { isStar } from "./repeats.ts";
import { ROW } from "./rows-meant.ts";

/** Words that bring a count: "total 24", "you will have 24". */
const INTRODUCES =
  "total|you|for|giving|there|makes|now|st|stitch|sts|leaving|making|having|with|count|so|should|rem|and|counts|equals|gives|increase|decrease|inc|dec";
/** Marks that bring a count: "- 24 sts", "= 24", ": 24 sc", "... 24". */
const MARKS = ["-", "=", ":", "…", "."];
/** What may follow a count in its row. */
const FOLLOWS =
  "turn|join|and turn|fasten|sl|tum|-|ss|do|for|change|changing|=|end|total|slip|now|rep|on|remain";
/** Clauses that make no stitch of the row. */
const NO_STITCH = new Set<Clause["kind"]>([
  "chain",
  "turn",
  "aside",
  "facing",
  "colour",
  "loops",
  "hook",
  "along",
]);
/** Clauses after which the row is over. */
const OVER = new Set<Clause["kind"]>(["turn", "join", "fasten-off", "do-not-turn", "do-not-join", "leave"]);
/** Clauses that stand for whole rows. */
const WHOLE = new Set<Clause["kind"]>(["repeat-rows", "even", "evenly", "schedule", "as-piece"]);

/** "- 24 sts", "= 24", ": 24 sc", "total 24", "you will have 24": kept with the counts of the row; false where none begins here. */
export function readIntroducedClaim(reading: Reading): boolean {
  const { cursor } = reading;
  if (reading.depth > 0) return false;
  const found = cursor.attempt(() => {
    const start = cursor.at;
    const opening = cursor.token();
    const mark = opening?.is === "mark" && MARKS.includes(opening.text);
    while (mark && cursor.acceptMark("-", "=", ":", "…", ".")) {
      /* "... - 24" */
    }
    const words = cursor.fits(INTRODUCES) > 0;
    if (!mark && !words) return null;
    const equals = opening?.is === "mark" && opening.text === "=";
    if (opening?.is === "mark" && opening.text === "." && !cursor.fits("total|you|there|st|stitch|now"))
      return null;
    if ((mark && !words && !worked(reading)) || cursor.isOpener()) return null;
    const claim = readClaim(reading, !mark || (!equals && !worked(reading)));
    if (!claim) return null;
    // "increase 4 sts" without a mark is an order, and "for 6 rows" no count.
    const said = cursor.wordsFrom(start);
    if (
      words &&
      !mark &&
      /^(inc|dec|increase|decrease|with|and|for)/iu.test(said) &&
      !/^(for|with|and) (a )?total/iu.test(said)
    )
      return null;
    const ends =
      cursor.isBoundary() || cursor.fits(FOLLOWS) > 0 || endsWithTurningChain(reading) || cursor.isOpener();
    return ends ? { ...claim, span: cursor.spanFrom(start) } : null;
  });
  if (!found) return false;
  reading.claims.push(found);
  return true;
}

/** "After Rnd 2 and up to Rnd 5 = 450 dc", "at the end of Row 1 you will have 24 sts": the count of a row named with it. */
export function readRowClaim(reading: Reading): boolean {
  const { cursor } = reading;
  if (reading.depth > 0 || !cursor.fits("after|at|on|in|by")) return false;
  const found = cursor.attempt(() => {
    const start = cursor.at;
    if (!cursor.accept("at|on|by the? end of") && !cursor.accept("after|on|in")) return null;
    cursor.accept("the");
    if (!cursor.accept(ROW)) return null;
    const ofRow = readAmount(reading);
    if (!ofRow) return null;
    if (cursor.accept("and? up? to|through")) {
      cursor.accept(ROW);
      readAmount(reading);
    }
    cursor.accept(",");
    if (!cursor.accept("=|:|-") && !cursor.fits("you|there|total")) return null;
    const claim = readClaim(reading, false);
    return claim && cursor.isBoundary() ? { ...claim, ofRow, span: cursor.spanFrom(start) } : null;
  });
  if (!found) return false;
  reading.claims.push(found);
  return true;
}

/** "24 sc." after a turn, a join or a row that is worked to its end; "(24)" where it is one number token. */
export function readBareClaim(reading: Reading): boolean {
  const { cursor } = reading;
  const token = cursor.token();
  if (reading.depth > 0 || token?.is !== "number") return false;
  const found = cursor.attempt(() => {
    const bracketed = /^[([{<]/u.test(token.text);
    const before = cursor.tokens[cursor.at - 1];
    // "turn24 sc": a dash was lost between the turn and the count.
    const lost = before?.is === "word" && token.glued && /^(turn|across|around|end)$/u.test(before.norm);
    const sentence = lost || endsSentence(before);
    const noun = cursor.fits("st|sts|stitches|mesh|meshes|blocks", 1) > 0;
    const counts = sentence && saysThatItCounts(reading);
    if (!bracketed && !counts && !((sentence || noun) && (covered(reading) || (noun && worked(reading)))))
      return null;
    if (bracketed && !reading.out.some((clause) => clause.kind !== "aside")) return null;
    const claims: Claim[] = [];
    let end = cursor.at;
    // "19 groups on each side, 4 corners; 300 dc": several counts in a row, parted by commas and semicolons.
    while (claims.length < 6) {
      const claim = readClaim(reading, !bracketed && !standsLast(reading));
      if (
        !claim ||
        !(cursor.isBoundary() || cursor.isMark("-") || endsSentence(cursor.tokens[cursor.at - 1]))
      )
        break;
      claims.push(claim);
      end = cursor.at;
      if (!cursor.acceptMark(",", ";")) break;
      cursor.accept("and");
      if (!cursor.isNumber()) break;
    }
    cursor.at = end;
    return claims.length > 0 && (lost || counts || rowIsOver(reading)) ? inTurn(claims) : null;
  });
  if (!found) return false;
  reading.claims.push(...found);
  return true;
}

/** "..., ss. 24 (30)": numbers alone behind the stop of a row that is worked to its end, and nothing after them. */
function standsLast(reading: Reading): boolean {
  const { cursor } = reading;
  const last = reading.out.findLast((clause) => clause.kind !== "aside");
  const joined = last?.kind === "join" || (last?.kind === "work" && last.stitch === "sl st");
  return (
    joined &&
    cursor.isMark(".", -1) &&
    (cursor.token(1) === undefined || (cursor.isMark(".", 1) && cursor.token(2) === undefined))
  );
}

/** A mark that ends a step, or a word with the stop of its abbreviation: "IN EACH S. C. 24 S. C." */
function endsSentence(token: Token | undefined): boolean {
  if (token?.is === "mark") return ".;,:".includes(token.text);
  return token?.is === "word" && token.text.endsWith(".");
}

/** "32, 40, 48 sc" behind a range of rows: one number a row, and what is counted said once. */
function inTurn(claims: readonly Claim[]): Claim[] {
  const parts = claims.flatMap((claim) => claim.parts);
  const last = parts.at(-1);
  const bare = parts.slice(0, -1).every(({ kind, words }) => kind === "any" && /^\d+$/u.test(words));
  if (parts.length < 2 || !last || !bare || last.kind === "unit") return [...claims];
  return parts.map((part, index) => ({ span: part.span, parts: [{ ...part, kind: last.kind }], index }));
}

/** "18 sc remain.", "24 dc made.", "30 sts in all": words behind the number that no order has. */
function saysThatItCounts(reading: Reading): boolean {
  const { cursor } = reading;
  if (!worked(reading)) return false;
  const stitch = stitchAt(cursor, reading, 1, false);
  const noun = cursor.fits("st|sts|stitches", 1) || stitch?.length || 0;
  if (noun === 0) return false;
  const after = noun + 1;
  const words =
    cursor.fits("rem|remain|remains|remaining|made|total|altogether|now|completed", after) ||
    cursor.fits("in all|total", after) ||
    cursor.fits("left", after);
  return words > 0 && cursor.isBoundary(after + words);
}

/** "2 sc, ..." after a covered row is a count only if no work follows; a whole sentence behind what ends a row is one in any case. */
function rowIsOver(reading: Reading): boolean {
  const { cursor } = reading;
  const at = cursor.at;
  const mark = cursor.token();
  const stop = mark?.is === "mark" ? mark.text : "";
  while (!cursor.done && cursor.isBoundary()) cursor.at += 1;
  const last = reading.out.findLast((clause) => clause.kind !== "aside");
  const over =
    stop === ":" ||
    (stop === "." && last !== undefined && (OVER.has(last.kind) || WHOLE.has(last.kind))) ||
    cursor.done ||
    cursor.fits("turn|join|fasten|do|end|total|break|cut|tum|rep|sl|ss|now") > 0 ||
    endsWithTurningChain(reading) ||
    cursor.isOpener() ||
    cursor.isMark("-") ||
    isStar(reading);
  cursor.at = at;
  return over;
}

function worked(reading: Reading): boolean {
  return reading.out.some((clause) => !NO_STITCH.has(clause.kind));
}

/** Whether what was read so far covers the row: nothing is left for more stitches. */
function covered(reading: Reading): boolean {
  const last = reading.out.findLast((clause) => clause.kind !== "aside");
  if (!last) return false;
  if (OVER.has(last.kind)) return worked(reading);
  if (WHOLE.has(last.kind)) return true;
  if (last.kind === "repeat") {
    if (last.stop.by === "limit") return last.stop.limit.at === "end";
    // After "6 times" a comma goes on with the row, a full stop may end it.
    const before = reading.cursor.tokens[reading.cursor.at - 1];
    return last.stop.by === "times" && before?.is === "mark" && before.text !== ",";
  }
  if (last.kind !== "work" && last.kind !== "group") return false;
  const { ref, what } = last.target;
  // "..., ss. 24 sc": a slip stitch with no place, behind the stitches of a round, closes it.
  if (last.kind === "work" && last.stitch === "sl st" && ref === "here" && !last.count)
    return reading.out.some((clause) => clause !== last && !NO_STITCH.has(clause.kind));
  // "6 sc in magic ring. 6 sc": a sentence of its own behind what goes into a ring.
  if (what.is === "ring") return reading.cursor.isMark(".", -1);
  return (ref === "each" || ref === "last" || what.is === "turning-chain") && worked(reading);
}

/** "ch 1, turn" and nothing more: the row is over. */
function endsWithTurningChain(reading: Reading): boolean {
  const { cursor } = reading;
  let ahead = 0;
  if (cursor.fits("and", ahead)) ahead += 1;
  if (cursor.isNumber(ahead) && cursor.fits("ch|chain", ahead + 1)) ahead += 2;
  else if (cursor.fits("ch|chain", ahead)) {
    ahead += 1;
    if (cursor.isMark("-", ahead)) ahead += 1;
    if (cursor.isNumber(ahead)) ahead += 1;
  } else return false;
  while (cursor.fits(",|.|;|and|to", ahead)) ahead += 1;
  return cursor.fits("turn|tum", ahead) > 0 || cursor.token(ahead) === undefined;
}
