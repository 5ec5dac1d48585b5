import { stitchAt } from "../stitch-words.ts";
import type { Amount } from "../tree.ts";
import { readAmount, readOrdinal } from "./amounts.ts";
import { type Noun, readNoun, spaceAfterNumber } from "./nouns.ts";
import type { Draft } from "./place-draft.ts";
import type { Reading } from "./reading.ts";
import { readTarget } from "./targets.ts";

const SKIPPABLE =
  "sleeve|body|joined|the|this|that|these|those|your|its|a|an|available|single|plain|actual|empty|open|new|made|existing|very|individual|prev-row|original|resulting|corresponding|turned|adjacent|just-made|whole|working";

/** "top of", "base of", "center of", "end of": a part of the place that follows. */
export function readTop(reading: Reading, draft: Draft): void {
  const { cursor } = reading;
  if (
    cursor.accept(
      "the? very? top|tops|tip|head of the? beg|beginning|starting|turning|turn|first|initial|starting|skipped|missed? ch|chain|chs|chains",
    )
  ) {
    const chains = readLooseNumber(reading);
    cursor.accept("st|sts|stitch|at? beg|beginning?");
    draft.noun = {
      what: chains === null ? { is: "turning-chain" } : { is: "turning-chain", chains },
      plural: false,
    };
    return;
  }
  if (
    cursor.accept(
      "the? top|tops of the? previous|prev|last rows|row|rnds|rnd|rounds|round ch|chain|turning ch|chain?",
    )
  ) {
    const chains = readLooseNumber(reading);
    draft.noun = {
      what: chains === null ? { is: "turning-chain" } : { is: "turning-chain", chains },
      plural: false,
    };
    return;
  }
  if (cursor.accept("the? underside|undersides|bottom|foot of")) {
    draft.underside = true;
    return;
  }
  if (readRowEnds(reading, draft)) return;
  const start = cursor.at;
  if (cursor.accept("the? top|tops|tip|head of? the?")) {
    if (cursor.accept("ch|chain|chs|chains")) {
      cursor.accept("st|sts");
      const chains = readLooseNumber(reading);
      cursor.accept("st|sts");
      draft.noun = {
        what: chains === null ? { is: "turning-chain" } : { is: "turning-chain", chains },
        plural: false,
      };
      return;
    }
    const number = cursor.token();
    if (number?.is === "number" && number.values.length === 1 && !number.ordinal) {
      const step = cursor.isMark("-", 1) ? 2 : 1;
      if (/^(ch|chs|chain|chains)$/u.test(cursor.key(step))) {
        cursor.at += step + 1;
        cursor.accept("st|sts");
        draft.noun = { what: { is: "turning-chain", chains: number.values[0] ?? 1 }, plural: false };
        return;
      }
    }
    if (cursor.isBoundary()) cursor.at = start;
    return;
  }
  if (
    cursor.accept(
      "the? base of the? same? beg|beginning|turning|starting? ch|chain|chs|tch|t-ch|st|stitch|dc|last?",
    )
  ) {
    readLooseNumber(reading);
    cursor.accept("st");
    draft.noun = { what: { is: "base" }, plural: false };
    draft.ref = "same";
    return;
  }
  if (cursor.accept("the? center|centre|middle|mid of the?")) {
    draft.ref = "center";
    const of = readTarget(reading);
    if (of) draft.of = of;
    draft.noun = { what: { is: "any" }, plural: false };
  }
}

/** The longest chain that a row begins with. Common practice, no source. */
const LONGEST_START = 9;
const isStart = (chains: number | null | undefined): boolean =>
  chains !== null && chains !== undefined && chains <= LONGEST_START;

/** "the end of each of the next 9 rows", "end of next row", "3 row ends", "each mesh row end". */
function readRowEnds(reading: Reading, draft: Draft): boolean {
  const { cursor } = reading;
  return (
    cursor.attempt(() => {
      cursor.accept("the");
      if (!cursor.accept("end|ends of")) return null;
      const each = cursor.accept("each of") || cursor.accept("each|all|the");
      cursor.accept("of");
      cursor.accept("the");
      const ref = cursor.accept("next")
        ? "next"
        : cursor.accept("last")
          ? "last"
          : cursor.accept("first")
            ? "first"
            : null;
      const count = readAmount(reading);
      const stitch = stitchAt(cursor, reading, 0, false);
      if (stitch) cursor.at += stitch.length;
      else if (cursor.isWord() && cursor.fits("row|rows", 1)) cursor.at += 1;
      if (!cursor.accept("row|rows|rnds") || cursor.isNumber()) return null;
      if (!ref && !count) return null;
      draft.ref = ref ?? "next";
      if (count) draft.count = count;
      draft.each = each && count !== null;
      draft.noun = { what: { is: "row-end" }, plural: true };
      return true;
    }) === true
  );
}

export function readLooseNumber(reading: Reading): number | null {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("-");
  const token = cursor.token();
  // "in top of beg ch 22 blocks": a count that follows is no chain.
  if (token?.is === "number" && token.values.length === 1 && !token.ordinal && isStart(token.values[0])) {
    cursor.at += 1;
    return token.values[0] ?? null;
  }
  cursor.at = start;
  return null;
}

/** "each of the next 5", "2nd", "same", "center": what stands before the noun. */
export function readDeterminers(reading: Reading, draft: Draft): void {
  const { cursor } = reading;
  if (draft.noun) return;
  for (let guard = 0; guard < 12; guard += 1) {
    if (cursor.accept("each and every") || cursor.accept("each|every|all")) {
      // "every other st" is every second one; "all other sts" are the rest.
      if (
        !/^all$/iu.test(cursor.wordsFrom(cursor.at - 1)) &&
        cursor.accept("other|alt|alternate|second|2nd|alternating")
      )
        draft.ref = "every-other";
      else {
        cursor.accept("other|others|remaining|rem");
        draft.each = true;
      }
      cursor.accept("of");
      if (cursor.accept("the")) cursor.accept("of");
      continue;
    }
    if (cursor.accept("ea|evry|ev")) {
      cursor.accept("of the?");
      draft.each = true;
      continue;
    }
    if (cursor.accept("both")) {
      draft.each = true;
      draft.count = { span: cursor.spanFrom(cursor.at - 1), values: [2] };
      continue;
    }
    if (cursor.accept("next|nx|nxt|following|foll|fol|nex")) {
      draft.ref ??= "next";
      cursor.accept("available|following|consecutive");
      continue;
    }
    if (cursor.accept("alternate|alt")) {
      draft.ref = "every-other";
      continue;
    }
    if (cursor.fits("last|final|end") && !cursor.fits("end|ends of")) {
      cursor.at += 1;
      draft.ref = "last";
      continue;
    }
    if (cursor.accept("same|previous|prev|preceding")) {
      draft.ref = "same";
      continue;
    }
    if (cursor.accept("any")) {
      draft.ref = "any";
      continue;
    }
    if (cursor.accept("center|centre|middle|mid|central")) {
      if (cursor.fits("ring|of")) {
        cursor.at -= 1;
        draft.noun = readNoun(reading);
        if (!draft.noun) {
          cursor.at += 1;
          draft.ref = "center";
        }
        return;
      }
      draft.ref = "center";
      continue;
    }
    if (
      cursor.fits("rem|remaining|remainder|rest") &&
      !cursor.fits("rem|remaining front|back? loop|loops|lp|lps")
    ) {
      cursor.at += 1;
      cursor.accept("of the?");
      if (!draft.ref) draft.each = true;
      continue;
    }
    if (cursor.accept("skipped|missed|unworked|unused") && !cursor.fits("front|back? loop|loops|lp|lps")) {
      const noun = readNoun(reading);
      draft.noun = {
        what: noun?.what.is === "stitch" ? { is: "skipped", code: noun.what.code } : { is: "skipped" },
        plural: noun?.plural ?? false,
      };
      return;
    }
    if (
      cursor.isNumber() &&
      cursor.fits("to|from the? last|end", 1) &&
      (cursor.token() as { ordinal: boolean }).ordinal
    ) {
      draft.nth = readOrdinal(reading) as Amount;
      draft.ref = "nth";
      draft.from = "end";
      cursor.accept("to|from the? last|end");
      continue;
    }
    const ordinal =
      cursor.fits("first") ||
      (cursor.token()?.is === "number" && (cursor.token() as { ordinal: boolean }).ordinal)
        ? readOrdinal(reading)
        : null;
    if (ordinal) {
      if (ordinal.values.length === 1 && ordinal.values[0] === 1) draft.ref = "first";
      else {
        draft.ref = "nth";
        draft.nth = ordinal;
        // "3rd or 4th": the first is taken.
        if (cursor.accept("or") && cursor.isNumber()) readOrdinal(reading);
      }
      continue;
    }
    if (cursor.isNumber()) {
      const compound = spaceAfterNumber(reading) ?? groupOfStitches(reading);
      if (compound) {
        draft.noun = compound;
        return;
      }
      if (draft.count) return;
      const count = readAmount(reading);
      if (!count) return;
      draft.count = count;
      // "next 3-sts": a hyphen that says nothing.
      if (cursor.isMark("-") && cursor.isWord(1)) cursor.at += 1;
      cursor.accept("more|further|additional|consecutive");
      continue;
    }
    if (cursor.accept("slip - stitched|worked")) continue;
    if (cursor.fits("free st|sts|stitches")) {
      cursor.at += 1;
      continue;
    }
    // "the single crochet" names the stitch; "the single chain" says that there is one.
    if (cursor.fits("single|double|half") && stitchAt(cursor, reading, 0, false)) return;
    if (cursor.accept(SKIPPABLE)) continue;
    // "beginning 3rd ch": of the chain the row began with.
    if (cursor.fits("beg|beginning|starting") && cursor.isNumber(1)) {
      cursor.at += 1;
      continue;
    }
    // "beg sc", "starting st": the first one of the round.
    if (cursor.fits("beg|beginning|starting|initial") && namesStitch(reading, 1)) {
      cursor.at += 1;
      draft.ref ??= "first";
      continue;
    }
    return;
  }
}

/** A stitch, by name or as "st", and no chain. */
function namesStitch(reading: Reading, ahead: number): boolean {
  const { cursor } = reading;
  if (cursor.fits("st|stitch", ahead)) return true;
  const stitch = stitchAt(cursor, reading, ahead, false);
  return stitch !== null && stitch.code !== "ch" && stitch.code !== "sl st";
}

/** "5-dc group", "3 dc cluster": a place made of several stitches. */
function groupOfStitches(reading: Reading): Noun | null {
  const { cursor } = reading;
  const stitch = stitchAt(cursor, reading, 0, true);
  if (!stitch) return null;
  cursor.at += stitch.length;
  cursor.accept("st|sts|group|groups");
  return { what: { is: "stitch", code: stitch.code }, plural: false };
}
