import { stitchAt } from "../stitch-words.ts";
import type { LoopWord, Target } from "../tree.ts";
import { readAmount, readOrdinal } from "./amounts.ts";
import { readLooseNumber } from "./determiners.ts";
import { loopsAhead, readLoopsAfter } from "./loops.ts";
import type { Draft } from "./place-draft.ts";
import type { Reading } from "./reading.ts";
import { readTarget } from "./targets.ts";

const ROW_WORD = "row|rows|rnd|rnds|round|rounds|rd|r";

/** "at the right-hand end of the last row", "of the left front strip", "before the ch": words for people about where the place is. */
function acceptSpot(reading: Reading): boolean {
  const { cursor } = reading;
  return (
    cursor.attempt(() => {
      if (cursor.accept("left|lying|still unworked|free|over|open")) {
        if (cursor.isBoundary()) return true;
        if (!cursor.fits("at|on|for")) return true;
      }
      if (
        cursor.accept("at the? right|left - hand end|edge|corner|side") ||
        cursor.accept("at the? right|left|lower|upper end|edge|corner|side")
      ) {
        cursor.accept(`of|on the? last|first|previous|foundation? ${ROW_WORD}|foundation`);
        cursor.accept("edge|of the? piece|work");
        return true;
      }
      if (
        cursor.accept("before|after|between each of? them") ||
        cursor.accept("between them|two|2 squares|motifs|pieces|halves|parts?")
      )
        return true;
      if (cursor.accept("before|after the? ch|chain|gap|opening|marker|seam|join|slit|corner"))
        return cursor.isBoundary() || cursor.fits("and|join|to") ? true : null;
      if (!cursor.accept("of|at|on|down|up|along|for|across|from the?")) return null;
      const from = cursor.at;
      while (cursor.isWord() && SPOTS.has(cursor.key()) && cursor.at - from < 7) cursor.at += 1;
      const last = cursor.tokens[cursor.at - 1];
      if (cursor.at > from && (last?.is !== "word" || SPOT_ADJECTIVES.has(last.norm))) return null;
      return cursor.at > from &&
        (cursor.isBoundary() || cursor.isOpener() || cursor.fits("and|join|turn|then|with|skip"))
        ? true
        : null;
    }) === true
  );
}

/** Words for parts of a garment; a run of them behind a place says where it lies. */
const SPOTS = new Set(
  "a in corner edges strips beginning row end waist the of left right front back body sleeve neck armhole shoulder strip band hem side upper lower edge slit rim cuff yoke first second other piece square pocket seam underarm top bottom step at each middle centre center one hand thumb foundation garment opening button short long whole bag hat shawl scarf blanket sweater coat vest".split(
    " ",
  ),
);

/** Of these words those that need another behind them. */
const SPOT_ADJECTIVES = new Set([
  "a",
  "in",
  "the",
  "of",
  "left",
  "right",
  "first",
  "second",
  "other",
  "upper",
  "lower",
  "at",
  "each",
  "one",
  "short",
  "long",
  "whole",
  "foundation",
  "button",
]);

/** "skip 2 sts on ch": the chain the row stands on, with nothing more said of it. */
function acceptOnChain(reading: Reading): boolean {
  const { cursor } = reading;
  const length = cursor.fits("on|in|of the? foundation|base|starting? ch|chain");
  if (length === 0 || !(cursor.isBoundary(length) || cursor.fits("and|then|rep|sc|dc|hdc", length)))
    return false;
  cursor.at += length;
  return true;
}

/** What may follow the noun: "of next shell", "from hook", "2 rows below", "as join". */
export function readTail(reading: Reading, draft: Draft): void {
  const { cursor } = reading;
  for (let guard = 0; guard < 8; guard += 1) {
    // "the same ch you slip stitched into": told by what was done there.
    if (draft.ref === "same" && acceptWhatWasDone(reading)) continue;
    if (cursor.accept("from|to your|the? hook|hk|hook's|needle") || cursor.accept("of|on|off hook|hk"))
      draft.from = "hook";
    else if (acceptOnChain(reading)) continue;
    else if (acceptSpot(reading)) continue;
    else if (cursor.accept("from the? end|marker") || cursor.accept("before the? end")) draft.from = "end";
    else if (cursor.accept("from the? beg|beginning|start")) draft.from = "start";
    else if (readBelow(reading, draft)) continue;
    else if (draft.ref === "same" && !draft.of && endsAtBeginning(reading)) {
      draft.ref = "first";
      if (draft.noun?.what.is === "space") draft.noun = { what: { is: "any" }, plural: false };
    } else if (
      draft.ref === "same" &&
      cursor.accept(
        "as|where|with|of the? last|first|prev|previous|beg|beginning|turning|starting|joining|sl|slip|ss|join|joined|ch|chain|chs|tch|st|sts|sc|dc|hdc|tr|joining|base|before?",
      )
    ) {
      readLooseNumber(reading);
      cursor.accept("slip|sl? st|stitch|sc|dc|hdc|tr|ch|chain|ss|slst");
      readLooseNumber(reading);
      cursor.accept("was|were? made|worked|joined|placed|join?");
    } else if (draft.ref === "same" && cursor.accept("as|where")) {
      const stitch = stitchAt(cursor, reading);
      if (stitch) cursor.at += stitch.length;
    } else if (cursor.accept("at the? base of the? beg|beginning|turning? ch|chain|tch|st|row")) {
      readLooseNumber(reading);
      draft.ref = "same";
      draft.noun = { what: { is: "base" }, plural: false };
    } else if (
      cursor.accept(
        "at|from the? beg|beginning|start|end of the? row|rnd|round|prev|previous|last row|rnd|round?",
      )
    )
      continue;
    else if (cursor.accept("with|holding the? stitch? marker|m"))
      draft.noun = { what: { is: "marked" }, plural: false };
    else if (!draft.of && cursor.fits("of|on|from|in")) {
      const of = readOf(reading);
      if (!of) return;
      draft.of = of;
    } else if (
      isJustMade(reading, draft) ||
      (cursor.accept("made|formed by|with the? turning|beg|beginning? ch|chain|loop") &&
        acceptLength(reading)) ||
      cursor.accept("just|first? made|worked|formed|created|below")
    )
      continue;
    else if (draft.each && cursor.accept("in? between|inbetween") && !draft.of) continue;
    else if (
      cursor.accept("only") ||
      cursor.accept("of? the? same? prev|previous|row|rnd|round's? row|rnd|round")
    )
      continue;
    else if (!draft.loops && loopsAhead(reading)) draft.loops = readLoopsAfter(reading) as LoopWord;
    else return;
  }
}

/** "made by ch 1 loop": how long that chain was. */
function acceptLength(reading: Reading): true {
  readLooseNumber(reading);
  reading.cursor.accept("-? loop|lp|sp|space");
  return true;
}

/** "in same place as beginning": where the round began, which is the first place again. */
function endsAtBeginning(reading: Reading): boolean {
  const { cursor } = reading;
  const length = cursor.fits("as|at|where the? beg|beginning|start|first|begun");
  if (length === 0 || !(cursor.isBoundary(length) || cursor.isOpener(length))) return false;
  cursor.at += length;
  return true;
}

function acceptWhatWasDone(reading: Reading): boolean {
  const { cursor } = reading;
  if (!cursor.fits("that? you|where you?")) return false;
  for (let ahead = 1; ahead < 8 && !cursor.isBoundary(ahead); ahead += 1) {
    if (!cursor.fits("into|in|to", ahead)) continue;
    cursor.at += ahead + 1;
    return true;
  }
  return false;
}

/** "the dc just made": the stitch the hook has come from, not the next of the edge. */
function isJustMade(reading: Reading, draft: Draft): boolean {
  const { cursor } = reading;
  // "In last sc made" says the same in other words.
  const last = draft.ref === "last" && !draft.count && cursor.fits("made|worked|completed") > 0;
  if (!last && !cursor.fits("just made|worked|completed|formed")) return false;
  cursor.accept("just");
  cursor.at += 1;
  if (last) {
    draft.ref = "same";
    return true;
  }
  if (draft.ref === null && !draft.each && !draft.count && draft.noun && !draft.noun.plural)
    draft.ref = "same";
  return true;
}

function readBelow(reading: Reading, draft: Draft): boolean {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("of|in|on|from|into the?") || cursor.accept("the");
  const amount = readAmount(reading);
  if (amount && cursor.accept(`${ROW_WORD} below|down|before|earlier|back|lower|previously|prev|beneath`)) {
    draft.rowsBelow = amount.values[0] ?? 1;
    return true;
  }
  cursor.at = start;
  if (cursor.accept(`of|in|on|from|into the? ${ROW_WORD} before the? last|previous|prev`)) {
    draft.rowsBelow = 2;
    return true;
  }
  cursor.at = start;
  if (
    cursor.accept("of|in|on|from|into the? last|previous|prev|first") &&
    cursor.isWord() &&
    cursor.fits(ROW_WORD, 1)
  ) {
    // "of the last body row", "of the last full row".
    cursor.at += 2;
    return true;
  }
  cursor.at = start;
  if (cursor.accept(`of|in|on|from|into the? ${ROW_WORD}`)) {
    const row = readAmount(reading);
    if (row) {
      draft.ofRow = row;
      return true;
    }
  }
  cursor.at = start;
  if (cursor.accept(`of|in|on|from|for each|every|this ${ROW_WORD}`)) return true;
  if (
    cursor.accept(
      `of|in|on|from|into the? previous|prev|prior|preceding|last|foregoing|first|foundation? ${ROW_WORD}`,
    )
  )
    return true;
  if (cursor.accept(`of|in|on|from|into the? ${ROW_WORD} below|beneath|before|above?`) && !cursor.isNumber())
    return true;
  cursor.at = start;
  if (cursor.accept("of|in|on|from|into the?")) {
    const row = readOrdinal(reading);
    if (row && cursor.accept(ROW_WORD)) {
      draft.ofRow = row;
      return true;
    }
  }
  cursor.at = start;
  return false;
}

function readOf(reading: Reading): Target | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const word = cursor.key();
    cursor.at += 1;
    if (
      word !== "of" &&
      !cursor.fits(
        "the? next|previous|same|each|first|last|beg|turning|tch|foundation|ch|base|center|corner|shell|cluster|opposite|other|free|unworked|ring",
      )
    )
      return null;
    if (cursor.fits("the? work|piece|yarn|hook|row|round|rnd")) return null;
    if (word !== "of" && cursor.fits("the? next|each|first|last|corner|center|ch|same")) return null;
    return readTarget(reading);
  });
}
