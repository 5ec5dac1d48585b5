import type { AsPieceClause, Clause, HoldClause, SeamClause, Until } from "../tree.ts";
import { readAmount, readMeasure } from "./amounts.ts";
import { readNoun } from "./nouns.ts";
import { made, type Reading } from "./reading.ts";
import { readUntil } from "./rows-meant.ts";

const SEWING =
  "sew|seam|weave|whipstitch|whip|stitch|mattress-stitch|graft|sewing|seaming|slip-stitch|overcast|join|joining";

/** "Sew side seams", "join shoulders with sl st, RS together", "set in sleeves", "leaving 8 cm open": to the end of the sentence. */
export function readSeam(reading: Reading): SeamClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept(
      "with|holding|place|placing right|wrong|rs|ws sides|side? together|facing|inside|outside ,?",
    );
    cursor.accept("using|use a? tapestry|yarn|darning needle ,? and?");
    const set = cursor.accept("set in? the? sleeve|sleeves in? place?");
    if (!set && !cursor.accept(SEWING) && !sewsAhead(reading)) return null;
    const verb = cursor.tokens[cursor.at - 1];
    const weak = verb?.is === "word" && /^(join|joining|stitch|slip-stitch|weave)$/u.test(verb.norm);
    cursor.accept("stitch|st");
    let words = "";
    while (!cursor.done && !(cursor.isMark(".") || cursor.isMark(";"))) {
      if (cursor.at - start > 120) return null;
      words += ` ${cursor.key()}`;
      cursor.at += 1;
    }
    const sewn = / (sew|sewn)( |$)/u.test(` ${cursor.wordsFrom(start).toLowerCase()} `);
    const seam = seamOf(set ? ` sleeves in ${words}` : words);
    if (
      !seam &&
      !sewn &&
      (weak ||
        !/ (seam|seams|edge|edges|together|pocket|pockets|buttons?|button|band|collar|piece|pieces|in|on|to|closed|up|top|bottom)( |$)/u.test(
          words,
        ))
    )
      return null;
    if (weak && !/ (seam|seams|shoulder|shoulders|sides|sleeve|sleeves|underarm|together)( |$)/u.test(words))
      return null;
    const open = openLength(reading, start);
    const span = cursor.spanFrom(start);
    return made<SeamClause>({
      kind: "seam",
      span,
      seam: seam ?? "other",
      calledSeam:
        / (side|sides|shoulder|shoulders|sleeve|sleeves|underarm) seams?( |$)/u.test(words) || undefined,
      words: reading.words(span),
      open: open ?? undefined,
    });
  });
}

/** A sentence of finishing that comes to sewing after its places: "on each shoulder strip the seam takes ...". */
function sewsAhead(reading: Reading): boolean {
  const { cursor } = reading;
  if (
    !cursor.fits("on|at|for|all|the|between|lay|turn|hold|with|place|from|fold|its|along|both|each|and|leave")
  )
    return false;
  for (let ahead = 1; ahead < 60; ahead += 1) {
    if (cursor.fits(".|;", ahead) || !cursor.token(ahead)) return false;
    if (cursor.fits("sew|sewn|seam|seams", ahead)) return true;
    if (cursor.fits("turn|join|rep|ch|sc|dc|hdc|tr", ahead) && !cursor.fits("turn the|your", ahead))
      return false;
  }
  return false;
}

function seamOf(words: string): SeamClause["seam"] | null {
  const sleeve = / (sleeve|sleeves|underarm|underarms)( |$)/u.test(words);
  const side = / (side|sides)( |$)/u.test(words);
  if (/ (armhole|armholes|set|in place)( |$)/u.test(words) && sleeve && !/ seam/u.test(words))
    return "sleeve-to-armhole";
  if (sleeve && / (armhole|armholes)( |$)/u.test(words)) return "sleeve-to-armhole";
  if (/ (shoulder|shoulders)( |$)/u.test(words)) return "shoulder";
  if (side && / (seam|seams|edges?|leaving|up|together|of)( |$)/u.test(words)) return "side";
  if (sleeve) return / (seam|seams)( |$)/u.test(words) ? "sleeve" : "sleeve-to-armhole";
  return / (seam|seams|together)( |$)/u.test(words) ? "other" : null;
}

function openLength(reading: Reading, start: number): SeamClause["open"] | null {
  const { cursor } = reading;
  const end = cursor.at;
  for (let at = start; at < end; at += 1) {
    const token = cursor.tokens[at];
    if (token?.is !== "word" || !/^(leaving|leave)$/u.test(token.norm)) continue;
    for (let here = at + 1; here < end; here += 1) {
      cursor.at = here;
      const measure = cursor.within(end, () => readMeasure(reading));
      if (measure) {
        cursor.at = end;
        return measure;
      }
    }
  }
  cursor.at = end;
  return null;
}

const PIECES = new Set([
  "back",
  "front",
  "left",
  "right",
  "sleeve",
  "sleeves",
  "first",
  "second",
  "other",
  "body",
  "yoke",
  "shoulder",
  "pocket",
  "sock",
  "mitten",
  "cuff",
]);

/** "Work as for Left Front, reversing shaping", "same as back to row 12", "as Back". */
export function readAsPiece(reading: Reading): AsPieceClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("make|work|crochet|complete|worked|finish|repeat|rep|shape");
    cursor.accept("the|this|a|one|second|other|to|second|left|right");
    cursor.accept("second|other|left|right|remaining|correspond|match");
    cursor.accept("sleeve|front|side|half|shoulder|piece|sock|pocket");
    if (
      !cursor.accept("same|exactly|just as|like|to|way as|for?") &&
      !cursor.accept("as|like for|given|with|on?") &&
      !cursor.accept("to match|correspond-to|correspond to|with?") &&
      !cursor.accept("in? the? same manner|way|instructions as|like for?")
    ) {
      return null;
    }
    const told = cursor.accept("for|with|on");
    cursor.accept("the|your");
    const from = cursor.at;
    const bareAs = !told && cursor.at - start <= 2 && /^as/iu.test(cursor.wordsFrom(start));
    const head = cursor.token();
    if (bareAs && !(head?.is === "word" && (/^\p{Lu}/u.test(head.text) || PIECES.has(head.norm))))
      return null;
    if (
      cursor.fits(
        "row|rnd|round|rows|rnds|rounds|follows|follow|you|before|if|many|long|in|needed|desired|directed|needed|usual|a|dc|sc|hdc|shown|set|instructed|necessary|described|often|at|you'd",
      )
    )
      return null;
    while (
      cursor.isWord() &&
      cursor.at - from < 4 &&
      !cursor.fits("reversing|to|until|but|up|with|except|ending|through|and|rev|as|are")
    )
      cursor.at += 1;
    if (cursor.at === from) return null;
    const piece = cursor.wordsFrom(from);
    cursor.accept(",|;");
    cursor.accept("but|only|and");
    const reversing = cursor.accept(
      "reversing|reverse|rev|mirroring all|the? shaping|shapings|shape|directions|instructions|sides?",
    );
    const until = readUntil(reading) ?? readAsFarAs(reading) ?? undefined;
    if (!until && cursor.accept("up? to|through|until")) {
      while (!cursor.isBoundary()) cursor.at += 1;
    }
    return made<AsPieceClause>({ kind: "as-piece", span: cursor.spanFrom(start), piece, reversing, until });
  });
}

/** "as far as the end of Rnd 6 (9, 10)", "to Row 12": where the likeness stops. */
function readAsFarAs(reading: Reading): Until | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const start = cursor.at;
    if (!cursor.accept("as far as") && !cursor.accept("up? to|through|until")) return null;
    cursor.accept("the? end of the?") || cursor.accept("and including");
    if (!cursor.accept("row|rnd|round")) return null;
    const row = readAmount(reading);
    if (!row) return null;
    cursor.accept("of the? hand|body|back|front|sleeve|yoke|foot|leg|pattern");
    return { span: cursor.spanFrom(start), endingRow: row };
  });
}

/** "Work the rib, the pick-up row and the body as for the Back": what is worked is listed before. */
export function readAllAsPiece(reading: Reading): AsPieceClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    if (!cursor.accept("work|make|crochet|complete")) return null;
    for (let ahead = 0; ahead < 16; ahead += 1) {
      if (
        cursor.fits(".|;", ahead) ||
        cursor.isNumber(ahead) ||
        cursor.isOpener(ahead) ||
        !cursor.token(ahead)
      )
        return null;
      const as =
        cursor.fits("as for|given|on", ahead) ||
        cursor.fits("same as|like for?", ahead) ||
        cursor.fits("to correspond|match with|to?", ahead);
      if (!as || (ahead === 0 && !cursor.fits("to correspond|match"))) continue;
      cursor.at += ahead + as;
      cursor.accept("the|your");
      const from = cursor.at;
      while (cursor.isWord() && cursor.at - from < 4 && !cursor.fits("reversing|to|until|but|up|with|as"))
        cursor.at += 1;
      if (cursor.at === from) return null;
      const piece = cursor.wordsFrom(from);
      cursor.accept(",");
      const reversing = cursor.accept("reversing|reverse all|the? shaping|shapings|shape");
      const until = readUntil(reading) ?? readAsFarAs(reading) ?? undefined;
      return made<AsPieceClause>({ kind: "as-piece", span: cursor.spanFrom(start), piece, reversing, until });
    }
    return null;
  });
}

/** "Divide for neck", "place next 20 sts on hold", "hold first 12 sts for shoulder". */
export function readHold(reading: Reading): HoldClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    if (cursor.accept("divide|separate|split for|the|into|work")) {
      while (!cursor.isBoundary() && !cursor.isOpener()) cursor.at += 1;
      return { kind: "hold", span: cursor.spanFrom(start) };
    }
    if (!cursor.accept("place|put|hold|leave|keep|set")) return null;
    cursor.accept("the");
    cursor.accept("next|last|first|rem|remaining|center|centre|these");
    const count = readAmount(reading);
    const noun = readNoun(reading);
    const held = cursor.accept("on|aside|to a|one? hold|side|holder|marker|stitch|thread|waste holder|yarn?");
    const first = /^hold$/iu.test(cursor.wordsFrom(start).split(" ")[0] ?? "");
    if (!(held && (count || noun)) && !(first && count && noun)) return null;
    cursor.accept("for the? neck|shoulder|sleeve|front|back|later|first|second");
    return made<HoldClause>({ kind: "hold", span: cursor.spanFrom(start), count: count ?? undefined });
  });
}

/** "Block to measurements", "weave in ends": finishing that makes no stitch. */
export function readFinishing(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("and|then|also|lightly");
    if (
      !cursor.accept(
        "weave|weaving|work|darn|sew|run|hide|tuck|cut|trim|secure in|all|the|and? loose|all|the? yarn? ends|end|tails|tail",
      ) &&
      !cursor.accept("cut|break yarn? and weave|sew|darn in|the|all? the|in? ends|end|tails|tail?") &&
      !cursor.accept(
        "weave|darn|sew|weaving|hide|secure|trim|cut in? all|any|the|your|both|remaining? loose? yarn? ends|end|tails|tail|yarn",
      ) &&
      !cursor.accept(
        "block|steam|press|wash|dry|pin lightly|to|piece|pieces|the|garment|well|with|under|as|sleeves|all?",
      ) &&
      !cursor.accept("thread|draw|pull|run|pass the|your? tail|yarn|end|elastic|ribbon|cord through") &&
      !cursor.accept("thread|draw|run|pass the? tail|yarn|end|elastic|ribbon|cord") &&
      !cursor.accept("stuff|fill|filling|stuffing firmly|lightly|it|the|with|as|well?")
    ) {
      return null;
    }
    while (!cursor.isBoundary()) cursor.at += 1;
    return { kind: "aside", span: cursor.spanFrom(start) };
  });
}
