import { stitchAt } from "../stitch-words.ts";
import type { Clause, JoinClause, JoinYarnClause, NegationClause, Target } from "../tree.ts";
import { readAmountOrArticle } from "./amounts.ts";
import { colourHere, readColourName } from "./colours.ts";
import { made, type Reading } from "./reading.ts";
import { readPlace } from "./targets.ts";

const SLIP = "sl st|sts|stitch|stitches";

function acceptSlip(reading: Reading): boolean {
  const { cursor } = reading;
  return (
    cursor.accept(SLIP) ||
    cursor.accept("slip st|stitch|stitches|sts") ||
    cursor.accept("slst|ss|slip|sl|slipstitch|slipst|sls")
  );
}

const RING = [
  "to|and|into|in form|make|create|making|forming? a|the? ring|circle|loop|tube",
  "into|in a|the? ring|circle|rnd|round",
  "forming|to-form a|the? ring|circle",
  "form a? ring|circle",
  "to close|join|complete|finish the? ring|circle|loop",
];

/** "Magic ring", "start with a magic circle": a ring to work into, of no chains. */
export function readMagicRing(reading: Reading): JoinClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("start|begin|starting|beginning|make|form|create|using|with|making|creating|work|use") &&
      cursor.accept("with|by|making|a|an|the");
    cursor.accept("making|creating|forming|into|in");
    cursor.accept("a|an|your|the");
    cursor.accept('"');
    if (
      !cursor.accept("magic|adjustable|sliding|magical ring|circle|loop|rg") &&
      !(cursor.accept("mr|mc") && !isYarn(reading, start))
    )
      return null;
    cursor.accept('"');
    cursor.accept("/ ring|circle|loop");
    cursor.accept("technique|method|start");
    if (
      !cursor.isBoundary() &&
      !cursor.isOpener() &&
      !cursor.fits("and|then|,|ch|chain|with|work|of|or|-|to|make")
    )
      return null;
    return { kind: "join", stitch: "sl st", span: cursor.spanFrom(start), target: null, ring: true };
  });
}

/** "With MC, join": the main colour, where the text lists it or the words before can only bring a yarn. */
function isYarn(reading: Reading, start: number): boolean {
  const { cursor, context } = reading;
  const word = cursor.tokens[cursor.at - 1];
  if (word?.is !== "word" || word.norm !== "mc") return false;
  const before = cursor.tokens[start];
  return context.colours.includes("MC") || (before?.is === "word" && /^(with|using|use)$/u.test(before.norm));
}

/** "join with sl st in first sc", "ss to top of 3ch to join", "join", "close in ring", "join with hdc in first dc". */
export function readJoin(reading: Reading): Clause | readonly Clause[] | null {
  return (
    notTurning(reading) ??
    reading.cursor.attempt(() => ringFirst(reading)) ??
    reading.cursor.attempt(() => slipToJoin(reading)) ??
    reading.cursor.attempt(() => join(reading))
  );
}

/** "do not join", "do not turn", "without turning", "work in a spiral". */
function notTurning(reading: Reading): Clause | readonly Clause[] | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const start = cursor.at;
    const negated =
      cursor.accept("do|does not") ||
      cursor.accept("don't|dont|without|not|never|no") ||
      cursor.accept("instead of");
    if (negated) {
      const kinds: NegationClause["kind"][] = [];
      for (let guard = 0; guard < 3; guard += 1) {
        if (cursor.accept("turn|turning your? work?")) kinds.push("do-not-turn");
        else if (cursor.accept("join|joining|slip-stitch")) {
          kinds.push("do-not-join");
          cursor.accept("the? rounds|rnds|rnd|round|with? sl? st?");
        } else if (kinds.length === 0) return null;
        else break;
        cursor.accept("at|the end of? each|the? rnd|round|row|rnds|rows?");
        cursor.accept(
          "in|on|for|after this|these|the or|and|nor any|following|next|subsequent|later|other rnds|rnd|rounds|round|rows|row",
        ) || cursor.accept("in|on|for this|these|any|next rnds|rnd|rounds|round|rows|row");
        // "do not join, turn" forbids one and asks for the other.
        if (
          !cursor.fits("or|and|nor turn|join|turning|joining") &&
          !cursor.fits(", or|and|nor turn|join|turning|joining")
        )
          break;
        cursor.accept(",");
        cursor.accept("or|and|nor");
      }
      cursor.accept("the? work|rnd|round|rounds");
      const span = cursor.spanFrom(start);
      return kinds.map((kind) => ({ kind, span }));
    }
    if (
      cursor.accept(
        "work|working|continue|continuing|now|worked? now? in|as a? continuous? spiral|spirals",
      ) ||
      cursor.accept("in a|continuous spiral|rounds|rnds")
    ) {
      cursor.accept("rounds|rnds|round|fashion|without joining");
      return [{ kind: "do-not-join", span: cursor.spanFrom(start) }];
    }
    return null;
  });
}

/** "Form a ring with 1 sl st in first ch": the ring is named before the stitch that closes it. */
function ringFirst(reading: Reading): JoinClause | null {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("and|then");
  if (!cursor.accept("form|make|close|join a|the|into|in? a? ring|circle|loop")) return null;
  if (!cursor.accept("with|by|using")) return null;
  cursor.accept("working|making");
  readAmountOrArticle(reading);
  if (!acceptSlip(reading)) return null;
  const place = cursor.attempt(() => readPlace(reading));
  return {
    kind: "join",
    stitch: "sl st",
    span: cursor.spanFrom(start),
    target: place?.target ?? null,
    ring: true,
  };
}

/** "sl st in first sc to join", "ss to 1st st", "sl st to beg ch-3": a slip stitch that closes the round. */
function slipToJoin(reading: Reading): JoinClause | null {
  const { cursor } = reading;
  const start = cursor.at;
  readAmountOrArticle(reading);
  if (!acceptSlip(reading)) return null;
  cursor.accept("loosely");
  if (cursor.accept("tog|together")) {
    const ring = acceptRing(reading);
    return { kind: "join", stitch: "sl st", span: cursor.spanFrom(start), target: null, ring };
  }
  if (cursor.accept("to join|close|connect")) return finishJoin(reading, start, "sl st");
  cursor.accept("join|joining");
  const place = cursor.attempt(() => readPlace(reading));
  if (!place) return ringOf(reading, start, null);
  // "Ch 5, ss into a ring": before any stitch there is no ring yet to work into.
  if (place.target.what.is === "ring" && reading.out.length > 0 && !reading.out.some(standsInRing))
    return { kind: "join", stitch: "sl st", span: cursor.spanFrom(start), target: null, ring: true };
  const ring = acceptRing(reading);
  const said =
    cursor.accept(",? to|and join|close|connect|complete|finish|end|joining") ||
    (!joinsYarn(reading) && cursor.accept(",? join"));
  if (said) cursor.accept("the? rnd|round|circle|ring|row|in-the-round");
  const closes =
    place.target.ref === "first" ||
    place.target.what.is === "turning-chain" ||
    (place.target.ref === "nth" && place.target.of !== undefined);
  if (!ring && !said && !(closes && endsHere(reading))) return null;
  const target = said ? asTurningChain(reading, place.target) : place.target;
  return { kind: "join", stitch: "sl st", span: cursor.spanFrom(start), target, ring };
}

const standsInRing = ({ kind }: Clause): boolean =>
  !["chain", "aside", "colour", "hook", "facing", "remark"].includes(kind);

/** "sl st in next 5 sts, join A": the join is of a yarn, and another step. */
function joinsYarn(reading: Reading): boolean {
  const { cursor } = reading;
  const ahead = cursor.isMark(",") ? 1 : 0;
  return (
    cursor.fits("join the|a|new? yarn|thread|wool|color|colour|ball", ahead) > 0 ||
    (cursor.fits("join", ahead) > 0 && colourHere(reading, ahead + 1) > 0)
  );
}

/** A slip stitch in the first stitch closes the round only at its end; at a row's start it moves the hook along. */
function endsHere(reading: Reading): boolean {
  const worked = reading.out.some((clause) => ["work", "repeat", "group", "choice"].includes(clause.kind));
  const { cursor } = reading;
  return worked && (cursor.isBoundary() || cursor.fits("turn|and|[|(|-|=|for") > 0);
}

function acceptRing(reading: Reading): boolean {
  const { cursor } = reading;
  return cursor.acceptAny(RING);
}

function ringOf(reading: Reading, start: number, target: Target | null): JoinClause | null {
  return acceptRing(reading)
    ? { kind: "join", stitch: "sl st", span: reading.cursor.spanFrom(start), target, ring: true }
    : null;
}

/** After "join", "join with": the stitch, the place, the ring. */
function join(reading: Reading): Clause | null {
  const { cursor } = reading;
  const start = cursor.at;
  for (let ahead = 1; ahead < 5 && !cursor.isBoundary(ahead); ahead += 1) {
    if (cursor.fits("seam|seams", ahead)) return null;
  }
  if (!cursor.accept("join|jn|joining|close|closing|joined|connect|attach")) return null;
  if (cursor.fits("yarn|new|a|in|at|on") > 0 && yarnAhead(reading)) return null;
  cursor.accept("the|each|your? rnd|round|rounds|rnds|ends|end|circle|work|row|both|ch|chain");
  if (acceptRing(reading)) return finishJoin(reading, start, "sl st", true);
  cursor.accept("for working|work in the? rnd|round");
  cursor.accept("with|using|by|in|w|w/ a|an|1|one? loose?");
  cursor.accept("/");
  cursor.accept("working|making? a|1?");
  if (acceptRing(reading)) return finishJoin(reading, start, "sl st", true);
  const slip = acceptSlip(reading);
  let stitch = "sl st";
  if (!slip) {
    const named = stitchAt(cursor, reading, 0, false);
    if (named && named.code !== "ch" && !placeBefore(reading)) {
      stitch = named.code;
      cursor.at += named.length;
    }
  }
  return finishJoin(reading, start, stitch);
}

/** "join in sc": a stitch after a preposition is the place, not the joining stitch. */
function placeBefore(reading: Reading): boolean {
  const before = reading.cursor.tokens[reading.cursor.at - 1];
  return before?.is === "word" && ["in", "to", "into"].includes(before.norm);
}

function finishJoin(reading: Reading, start: number, stitch: string, ringBefore = false): JoinClause | null {
  const { cursor } = reading;
  let ring = ringBefore || acceptRing(reading);
  cursor.accept("the? rnd|round|circle|row");
  cursor.accept("together|loosely");
  // "close to a ring with a sl st": the stitch that closes it, named behind.
  if (ring) cursor.attempt(() => (cursor.accept("with|by|using a|an|1|one?") && acceptSlip(reading)) || null);
  const place = cursor.attempt(() => readPlace(reading, placeBefore(reading)));
  ring = ring || acceptRing(reading);
  cursor.accept("to join");
  cursor.accept("to form last|final? loop|lp|sp|space|ch-sp");
  return {
    kind: "join",
    stitch,
    span: cursor.spanFrom(start),
    target: place ? asTurningChain(reading, place.target) : null,
    ring,
  };
}

/** "join to ch 2": without the word "space" a chain that a round is joined to is the one it began with. */
function asTurningChain(reading: Reading, target: Target): Target {
  if (target.what.is !== "space" || target.what.chains === undefined || target.what.corner) return target;
  if (/\b(?:sps?|spaces?|lps?|loops?)\b/iu.test(reading.words(target.span))) return target;
  return { ...target, ref: "any", what: { is: "turning-chain", chains: target.what.chains } };
}

function yarnAhead(reading: Reading): boolean {
  const { cursor } = reading;
  let ahead = 0;
  while (cursor.fits("a|the|new|in|at|on|with", ahead)) ahead += 1;
  return (
    cursor.fits("yarn|color|colour|thread|wool|ball|strand|mc|cc", ahead) > 0 ||
    colourHere(reading, ahead) > 0
  );
}

const JOIN_YARN = "join|rejoin|re-join|attach|reattach|re-attach|start|add|tie|introduce|jn|joining";

/** "join A in next st", "with RS facing, rejoin yarn at underarm", "join yarn with sc in any ch-2 sp". */
export function readJoinYarn(reading: Reading): JoinYarnClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    let side: "RS" | "WS" | undefined;
    const facing = readFacing(reading);
    if (facing) {
      side = facing;
      cursor.accept(",|;");
      cursor.accept("and|then");
    }
    let stitch: string | undefined;
    // "dc join cream in any sp": the stitch it is joined with stands first.
    const joining = stitchAt(cursor, reading, 0, false);
    if (joining && cursor.fits("join|joining", joining.length)) {
      stitch = joining.code;
      cursor.at += joining.length;
    }
    if (!cursor.accept(JOIN_YARN)) return null;
    if (cursor.accept("again|in")) {
      /* "tie in" */
    }
    if (cursor.accept("with a? sl|slip? st|stitch")) stitch = "sl st";
    const colour = readYarn(reading);
    if (colour === null) return null;
    if (!stitch && cursor.accept("with|by|using|w a|an|1|one?")) {
      if (acceptSlip(reading)) stitch = "sl st";
      else {
        cursor.accept("standing");
        const named = stitchAt(cursor, reading, 0, false);
        if (named) {
          stitch = named.code;
          cursor.at += named.length;
        }
      }
    }
    const from = cursor.at;
    const place = cursor.attempt(() => readPlace(reading));
    let where: string | undefined;
    const vague =
      place?.target.ref === "center" &&
      place.target.what.is === "any" &&
      !place.target.of &&
      PLACE_WORDS.has(cursor.key());
    if (!place || vague || place.target.what.is === "row-end")
      where = readWhereWords(reading, from) ?? undefined;
    cursor.accept("to join");
    if (!side) {
      const late = cursor.attempt(() => {
        cursor.accept(",");
        return readFacing(reading);
      });
      if (late) side = late;
    }
    return made<JoinYarnClause>({
      kind: "join-yarn",
      span: cursor.spanFrom(start),
      colour: colour === "" ? undefined : colour,
      target: place && !vague ? place.target : null,
      where,
      side,
      stitch,
    });
  });
}

/** "yarn", "new yarn", "A", "yarn A", "the cream": "" for a yarn without a colour, null where none is named. */
function readYarn(reading: Reading): string | null {
  const { cursor } = reading;
  if (colourHere(reading) === 0) cursor.accept("the|a|an|your|with");
  cursor.accept("new|extra|separate|another|second|end|extra");
  cursor.accept("end|ball|strand|length of");
  if (cursor.accept("yarn|thread|wool|cotton|color|colour")) return readColourName(reading) ?? "";
  const name = readColourName(reading);
  if (name) {
    cursor.accept("yarn|thread|wool|color|colour");
    return name;
  }
  return null;
}

/** Words that tell a person where, and no hook. */
export const PLACE_WORDS = new Set([
  "instep",
  "bootie",
  "slipper",
  "mitten",
  "hat",
  "cap",
  "bonnet",
  "coat",
  "jacket",
  "sweater",
  "vest",
  "cardigan",
  "skirt",
  "blanket",
  "flap",
  "gusset",
  "ear",
  "ears",
  "nose",
  "tail",
  "sewing",
  "seaming",
  "assembly",
  "finishing",
  "later",
  "now",
  "shaping",
  "a",
  "whole",
  "middle",
  "centre",
  "strip",
  "strips",
  "slit",
  "rim",
  "flounce",
  "square",
  "heel",
  "toe",
  "crown",
  "ankle",
  "thumbhole",
  "leg",
  "waist",
  "waistband",
  "waistline",
  "hip",
  "brim",
  "strap",
  "pocket",
  "collar",
  "border",
  "rib",
  "ribbing",
  "body",
  "yoke",
  "hand",
  "fingers",
  "finger",
  "cup",
  "cups",
  "half",
  "piece",
  "second",
  "beginning",
  "armholes",
  "sleeves",
  "fronts",
  "shoulders",
  "hood",
  "tie",
  "belt",
  "button",
  "buttonhole",
  "buttonholes",
  "for",
  "and",
  "edging",
  "foot",
  "sole",
  "tip",
  "work",
  "each",
  "both",
  "head",
  "neckline",
  "this",
  "your",
  "next",
  "part",
  "long",
  "short",
  "panel",
  "underarm",
  "neck",
  "edge",
  "armhole",
  "shoulder",
  "bottom",
  "top",
  "lower",
  "upper",
  "side",
  "seam",
  "hem",
  "corner",
  "left",
  "right",
  "front",
  "back",
  "center",
  "centre",
  "cuff",
  "wrist",
  "sleeve",
  "thumb",
  "opening",
  "band",
  "of",
  "at",
  "in",
  "to",
  "on",
  "the",
  "any",
  "beg",
  "beginning",
  "end",
  "row",
  "same",
  "st",
  "first",
  "last",
  "inner",
  "outer",
  "point",
  "other",
  "opposite",
  "near",
  "from",
  "where",
  "hand",
  "foundation",
  "base",
]);

/** Words for a place that is none the hook knows: "at underarm", "at lower right corner". */
export function readWhereWords(reading: Reading, from: number): string | null {
  const { cursor } = reading;
  cursor.at = from;
  if (!cursor.fits("at|in|to|on|near|along|where|from")) return null;
  while (
    !cursor.isBoundary() &&
    (cursor.isWord() ? PLACE_WORDS.has(cursor.key()) || cursor.fits("row|rnd|round") > 0 : cursor.isNumber())
  )
    cursor.at += 1;
  return cursor.at > from + 1
    ? cursor.wordsFrom(from).replace(/^(at|in|to|on|near|along|from) (the )?/iu, "")
    : null;
}

/** "with RS facing", "right side facing you", "WS facing": the side, or null and no step. */
export function readFacing(reading: Reading): "RS" | "WS" | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    cursor.accept("and");
    cursor.accept("with|have|keeping");
    cursor.accept("the");
    const side = readSide(reading);
    if (!side) return null;
    cursor.accept("of the? work|piece|fabric|garment|yoke|body|sleeve|front|back");
    if (
      !cursor.accept("facing|facing|towards|toward|out|outside|up|uppermost you|up|me|out|outward|outwards?")
    )
      return null;
    return side;
  });
}

/** "RS", "right side". */
export function readSide(reading: Reading): "RS" | "WS" | null {
  const { cursor } = reading;
  if (cursor.accept("rs|right-side") || cursor.accept("right side")) return "RS";
  if (cursor.accept("ws|wrong-side") || cursor.accept("wrong side")) return "WS";
  return null;
}

/** "Fasten off", "break off yarn", "end off", "cut yarn". */
export function readFastenOff(reading: Reading): Clause | null {
  const { cursor } = reading;
  const start = cursor.at;
  if (
    !(
      cursor.accept("fasten|fastening|finish|break|end|bind|tie|cast|cut off") ||
      cursor.accept("fo|f/o|fastenoff")
    ) &&
    !cursor.accept("cut|break|snip|trim the|your? yarn|yarns|thread|wool|a|mc|cc|b|c")
  ) {
    return null;
  }
  cursor.accept("the|your|all|old? yarn|yarns|thread|end|ends|wool|colour|color|first");
  readColourName(reading);
  if (!cursor.accept("both|all sleeves|pieces|fronts|sides?"))
    cursor.accept("at|the sleeve|piece|back|front");
  cursor.accept("leaving|leave a? long tail|end");
  return { kind: "fasten-off", span: cursor.spanFrom(start) };
}

/** "turn", "turn work", "turn the work". */
export function readTurn(reading: Reading): Clause | null {
  const { cursor } = reading;
  const start = cursor.at;
  // "1 dc and 2 dc in turn": one after the other.
  const before = cursor.tokens[start - 1];
  if (before?.is === "word" && (before.norm === "in" || before.norm === "by")) return null;
  if (!cursor.accept("turn|turning|tum|turned|tn|turnover")) return null;
  if (cursor.fits("ch|chain|chs|- ch") && !cursor.isNumber(1)) return null;
  // "Turn the bag inside out", "turn the work so that ...": handled, not worked back.
  if (
    cursor.fits("the|your") &&
    (!cursor.fits("the|your work|piece") ||
      cursor.fits("the|your work|piece so|inside|upside|round|around|clockwise|90|180|to"))
  ) {
    let ahead = 2;
    while (!cursor.isBoundary(ahead) && !cursor.isOpener(ahead)) ahead += 1;
    if (ahead > 2) {
      cursor.at += ahead;
      return { kind: "aside", span: cursor.spanFrom(start) };
    }
  }
  cursor.accept("your|the|to? work|piece|and work back|ws|rs|over");
  cursor.accept("work|over");
  return { kind: "turn", span: cursor.spanFrom(start) };
}
