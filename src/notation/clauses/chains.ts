import { stitchAt } from "../stitch-words.ts";
import type { Amount, ChainClause, CountsAs } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import { chainsOf, readMultiple } from "./multiples.ts";
import { made, type Reading } from "./reading.ts";

const CHAIN = "ch|chs|chain|chains|chained";
const THROUGHOUT = [
  "here|now and throughout|through|after|hereafter|always",
  "here and in|on|at? all? following|subsequent|every|later? rows|rnds|rounds|row",
  "throughout",
  "at the? beg|beginning|start of each|every|all row|rnd|round|rows|rounds|rnds",
  "on|in|for all|every|each|following row|rnd|round|rows|rounds|rnds",
  "every time|row|round",
  "throughout the? pattern|piece|garment",
  "from now on",
  "and throughout",
  "always",
];

/** "ch 3", "3 ch", "ch-3", "make 58 ch", "a chain of 58 sts", "ch a multiple of 8 + 5". */
export function readChain(reading: Reading): ChainClause | null {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("and|then");
  if (cursor.accept("work|make|do|crochet|begin|start|create|form|making|beginning|starting")) {
    cursor.accept("with|by");
    cursor.accept("making|chaining|crocheting|creating|a|an|the");
  }
  cursor.accept("a|an|another|the|your|initial|foundation|starting|base|beginning");
  cursor.accept("foundation|starting|base|beginning|loose|turning|initial");
  const count = countOfChains(reading);
  if (!count) return null;
  if (isPlaceHere(reading)) return null;
  cursor.accept("st|sts|stitch|stitches");
  cursor.accept("very? loosely|tightly") || cursor.accept("more|total");
  const chain = made<ChainClause>({
    kind: "chain",
    span: cursor.spanFrom(start),
    count: count.amount,
    multiple: count.multiple,
    countsAs: undefined,
  });
  return chain;
}

interface Counted {
  readonly amount: Amount;
  readonly multiple?: { readonly of: number; readonly plus: number };
}

function countOfChains(reading: Reading): Counted | null {
  const { cursor } = reading;
  const start = cursor.at;
  const alone = readMultiple(reading);
  if (alone) return { amount: { span: alone.span, values: [] }, multiple: chainsOf(alone) };
  if (cursor.isNumber()) {
    const amount = readAmount(reading);
    cursor.accept("-");
    cursor.accept("loose|more|foundation|base|starting|x");
    return amount && cursor.accept(CHAIN) && !cursor.fits("of|next|- sp|space|loop|lp") ? { amount } : null;
  }
  if (!cursor.accept(CHAIN)) return null;
  const word = cursor.spanFrom(cursor.at - 1);
  const multiple = readMultiple(reading);
  if (multiple) return { amount: { span: multiple.span, values: [] }, multiple: chainsOf(multiple) };
  cursor.accept("-");
  cursor.accept("of|as|about|approximately|together");
  cursor.accept("loosely|additional|another|a|further");
  const amount = readAmount(reading);
  if (amount) return { amount };
  // A bare "ch" is one chain, but only where the step ends with it: "ch, turn".
  if (cursor.at === start + 1 && (cursor.isBoundary() || cursor.fits("turn|and turn")))
    return { amount: { span: word, values: [1] } };
  return null;
}

/** "ch-2 sp" names a place; so does "3 ch sp". */
function isPlaceHere(reading: Reading): boolean {
  return (
    reading.cursor.fits("-? sp|sps|space|spaces|loop|loops|lp|lps|arch|arches") > 0 &&
    reading.cursor.fits("loop") === 0
  );
}

/**
 * "counts as dc", "= dc + ch 1", "acts as first hdc, here and throughout", "does not count as a st", up to the fence.
 * Parts: dictionary codes, "ch 1" for a chain with its space, "st" where the words only say "a stitch".
 */
export function readCountsAs(reading: Reading): CountsAs | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept(
      "this|the|beg|beginning|turning|it|first|skipped|these|missed|starting|and|which|note|skip|t",
    );
    cursor.accept("turning|beg|beginning|starting|first|skipped|missed|ch");
    if (cursor.isNumber() && cursor.fits("skipped|missed|ch|chs|chains|missed", 1)) cursor.at += 1;
    if (cursor.accept("ch|chs|chains|chain you skipped|missed|passed over?")) cursor.accept("over");
    cursor.accept("skipped|missed|unworked");
    if (cursor.accept("ch|chs|chain|chains|tch|loop|st|sts|stitch")) {
      cursor.accept("-");
      readAmount(reading);
      cursor.accept("at the? beg|beginning|start of the? row|rnd|round");
    }
    cursor.accept("will|always|now|here|here|also|only|should|to");
    const negative = readNegative(reading);
    if (negative) {
      const throughout = readThroughout(reading);
      return { span: cursor.spanFrom(start), parts: [], throughout };
    }
    if (!readVerb(reading)) return null;
    const parts = readParts(reading);
    if (parts.length === 0) return null;
    const throughout = readThroughout(reading);
    return { span: cursor.spanFrom(start), parts, throughout };
  });
}

function readNegative(reading: Reading): boolean {
  const { cursor } = reading;
  const start = cursor.at;
  if (
    cursor.accept("does|do|did|will|is|are|should not|n't|never") ||
    cursor.accept("doesn't|don't|doesnt|dont|won't|isn't|not|never|aren't")
  ) {
    cursor.accept("be");
    const counted = cursor.accept("count|counted|counts|counting|considered|act|included|include");
    cursor.accept("as|for|towards?");
    cursor.accept("in the? st|stitch count|total");
    cursor.accept("a|an|the|any|one|1");
    cursor.accept("first|1st");
    const stitch = stitchAt(cursor, reading);
    if (stitch) cursor.at += stitch.length;
    const named = stitch !== null || cursor.accept("st|sts|stitch|stitches");
    // "do not turn" and "do not join" deny something else.
    if (cursor.accept("count") || counted || named) return true;
  }
  cursor.at = start;
  return false;
}

function readVerb(reading: Reading): boolean {
  const { cursor } = reading;
  return (
    cursor.accept(
      "counts|count|counted|counting|acts|act|acting|serves|serve|stands|stand|considered|treated|works|replaces|replace|replacing|equals|equal|is|are|made as|for|towards|to|the? for?",
    ) ||
    cursor.accept(
      "counts|count|counted|counting|acts|act|acting|replaces|replace|replacing|equals|equal|forms|makes|becomes|become|is|are|represents",
    ) ||
    cursor.accept("=") ||
    cursor.accept("in place|lieu|instead of") ||
    cursor.accept("as a? replacement|substitute|stand-in for|of") ||
    cursor.accept("for|as")
  );
}

/** The parts a chain may stand for, "dc and ch 1": dictionary codes, "ch 1", "st". */
export function readParts(reading: Reading): string[] {
  const { cursor } = reading;
  const parts: string[] = [];
  for (let guard = 0; guard < 6; guard += 1) {
    const part = cursor.attempt(() => {
      cursor.accept("your|the|a|an|one|first|1st|beg|beginning|next");
      cursor.accept("your|the|a|an|one|first|1st|beg|beginning|same");
      const times = countBefore(reading);
      const chain = chainPart(reading, times);
      if (chain) return chain;
      const stitch = stitchAt(cursor, reading, 0, false);
      if (stitch) {
        cursor.at += stitch.length;
        return stitch.code;
      }
      return cursor.accept("st|stitch|sts|stitches") ? "st" : null;
    });
    if (!part) break;
    parts.push(part);
    if (!cursor.fits("and|+|plus|&|,|with")) break;
    const next = cursor.at;
    const comma = cursor.isMark(",");
    cursor.at += 1;
    // "counts as dc, 19 more dc in ring": several stitches behind a comma are worked, and no chain stands for them.
    const several = cursor.token();
    const worked = comma && several?.is === "number" && several.values.some((value) => (value ?? 0) > 1);
    if (worked || !isPartAhead(reading)) {
      cursor.at = next;
      break;
    }
  }
  return parts;
}

function isPartAhead(reading: Reading): boolean {
  const { cursor } = reading;
  let ahead = 0;
  while (ahead < 3 && (cursor.isNumber(ahead) || cursor.fits("a|an|first|one|the|1st", ahead))) ahead += 1;
  return stitchAt(cursor, reading, ahead, false) !== null || cursor.fits("sp|space", ahead) > 0;
}

function countBefore(reading: Reading): number | null {
  const { cursor } = reading;
  const token = cursor.token();
  if (token?.is !== "number" || token.values.length !== 1) return null;
  cursor.at += 1;
  cursor.accept("-");
  return token.values[0] ?? null;
}

/** "ch 1", "ch-2 sp", "1 ch". */
function chainPart(reading: Reading, before: number | null): string | null {
  const { cursor } = reading;
  if (!cursor.accept("ch|chain|chs|chains")) return cursor.accept("sp|space") ? "ch 1" : null;
  cursor.accept("-");
  const after = before ?? countBefore(reading) ?? 1;
  cursor.accept("-");
  cursor.accept("sp|space|loop|lp|st|sts");
  return `ch ${after}`;
}

function readThroughout(reading: Reading): boolean {
  const { cursor } = reading;
  cursor.accept("st|stitch");
  cursor.accept("of the? row|rnd|round");
  const before = cursor.at;
  cursor.accept(",|;|.|-");
  const found = cursor.acceptAny(THROUGHOUT);
  if (!found) cursor.at = before;
  return found;
}
