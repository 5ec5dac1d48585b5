/*
 * What tells an instruction from talk: a stitch word with a number, a chain, the verbs of the craft. All functions read
 * plain text (see glyphs.ts) and look at a bounded stretch, so that a whole text is judged in linear time.
 */

const STITCH =
  "(?:e?sc|f?sc|f?hdc|e?dc|fdc|tr|dtr|trtr|htr|ttr|trc|tc|ss|sl\\.? ?-?st|slst|slip[ -]?stitch(?:es)?|(?:(?:half|single|double|treble|triple|foundation)[ -]?){1,3}crochets?|sts|stitch(?:es)?|st|shells?|v-?st|cl|clusters?|puffs?|popcorns?|bobbles?|picots?|fans?|inc|dec|invdec|[fb]p\\.?[a-z]{1,4}|bl[op]?sc|\\w{2,6}\\dtog|\\d[a-z]{2,4}tog|ps|s\\.? ?c\\.?|h\\.? ?d\\.? ?c\\.?|d\\.? ?c\\.?)(?:'?s)?";
const NUMBER = "(?:\\d{1,4}|one|two|three|four|five|six|seven|eight|nine|ten)";
const LIST = "(?:\\s?[([{][\\d\\s,;:/.½¼¾)([\\]-]{1,60}[)\\]}])?";

const CHAIN = new RegExp(
  `\\bch(?:ain)?s?[-.]?\\s{0,2}\\d|\\b${NUMBER}${LIST}\\s?ch(?:ain)?s?\\b|\\bchain\\s(?:of\\s)?${NUMBER}\\b|\\bch\\s[([]\\d|\\bchain\\s\\(ch\\)\\s?\\d`,
  "i",
);
const COUNTED = new RegExp(`\\b${NUMBER}${LIST}\\s?${STITCH}\\b`, "i");
const PLACED = new RegExp(
  `\\b${STITCH}\\s(?:in|into|across|around|round|to|each|ea|even|evenly|next|nx|nxt|blo|flo|along|over|loosely|tbl|${NUMBER})\\b`,
  "i",
);
const SKIP = /\b(?:sk|skip|miss)\.?\s?(?:next|first|\d|the|to|st|1|ch|sc|dc|hdc|tr|all|ps|same)/i;
const REPEAT =
  /\b(?:rep|rpt|repeat)\b\.?\s?(?:from|rows?|rnds?|rounds?|r\d|the \d|all|once|twice|\d{1,3}(?:st|nd|rd|th|d)\s|the last|last|these|this|between|as|pattern|patt|\*|\(|to end|across|around|previous|until|row)/i;
const ENDING =
  /\b(?:fasten|finish|break|end|tie|cut|bind)\s(?:off|yarn|thread|the yarn)\b|\bcut (?:the )?(?:yarn|thread)\b/i;
const JOINING =
  /\b(?:re-?join|join|attach|tie on)\b.{0,40}\b(?:yarn|thread|wool|with|to|in|into|colou?r|mc|cc|[A-F])\b/i;
const TURN = /\bturn(?:ing)?\b(?! ch)/i;
const EVEN =
  /\b(?:make|work)\s\d{1,3}\s(?:more\s)?rows?\b|\bend(?:ing)?\b.{0,30}\b(?:rows?|rnds?|rounds?)\b|\b(?:back|front|both)\s(?:loops?|lps?)\b|\bwork(?:ing)?\s(?:even|straight|in patt|\d|across|evenly|on|to|as|one|until|same|first|remaining|rem|around|all|along)|\brows?\s(?:even|straight)\b|\beven\b.{0,20}\brows?\b|\bcont(?:inue)?\b.{0,40}\b(?:patt|pattern|even|until|working|work|rows?|rounds?|straight|in)\b/i;
const SEAM = /\b(?:sew|seam|whip ?stitch|mattress)\b/i;
const SHAPE =
  /\b(?:inc|dec|increase|decrease|bind off)\b\.?\s?(?:\d|one|two|three|each|every|at|evenly)|\beach (?:end|side)\b.{0,30}\b(?:every|next|row)/i;
const RING = /\b(?:magic|adjustable|slip)\s(?:ring|circle|loop)\b|\bin(?:to)?\s(?:a\s)?(?:mr|mc|ring)\b/i;
const MEASURE = /\b(?:until|for)\b.{0,60}\b(?:measures?|inches|cm|rows|rounds|ins|remain|long)\b/i;
const HOOK = /\b(?:change|switch)\sto\b|\bwith\b.{0,30}\b(?:hook|colou?r|yarn|mc|cc)\b/i;
const MARKER = /\b(?:pm|(?:place|put) (?:a )?(?:st(?:itch)? )?marker|mark)\b/i;
const AS_BEFORE =
  /\b(?:same as|as (?:for|given|on|in|before|directed|established|set)|to (?:match|correspond)|revers(?:e|ing) (?:all )?shaping)\b/i;
const SCHEDULE =
  /\bevery\s(?:\d|other|alt|second|third|fourth|row|rnd|round|rs|ws|following|foll)|\bwork(?:ing)? (?:the )?\(?(?:[a-z]{3,10} ){1,3}(?:row|rnd|round)s?\b/i;
const STARS = /\*[^*]{3,200}\b(?:rep|repeat|rpt)\b/i;

const SIGNS = [
  CHAIN,
  COUNTED,
  PLACED,
  SKIP,
  REPEAT,
  ENDING,
  JOINING,
  TURN,
  EVEN,
  SEAM,
  SHAPE,
  RING,
  MEASURE,
  AS_BEFORE,
  SCHEDULE,
  MARKER,
  STARS,
] as const;

/** What a sentence of instruction begins with. */
const STARTS = new RegExp(
  `^[\\s*#([{"-]{0,6}(?:(?:now|then|next|and|also|again|at end|thus|meanwhile|lastly|finally|first|from here|when|once)[,.]?\\s)?(?:(?:loosely|carefully)\\s)?(?:` +
    "ch(?:ain(?:ed)?)?s?(?=\\b|\\d)|(?:sc|hdc|dc|tr|htr)(?=\\d)|make\\b|work\\b|works?ing\\b|rep\\b|rpt\\b|repeat|join|rejoin|re-join|attach|fasten|finish\\b|break|cut\\b|end off|end\\b|ending|sew\\b|turn\\b|with\\b|using\\b|skip|sk\\b|miss\\b|slip|sl\\b|ss\\b|inc\\b|dec\\b|increase|decrease|cont\\b|continue|continuing|keep|keeping|change|changing|switch|place\\b|pm\\b|leave|leaving|fold\\b|weave|do not|don't|insert|begin|beginning|beg\\b|starting|start\\b|complete|crochet\\b|create|draw\\b|pull\\b|pick up|hold\\b|pin\\b|divide|bind off|tie\\b|stitch\\b|use\\b|rotate|move\\b|remove\\b|mark\\b|marking|put\\b|form\\b|yo\\b|yarn over|evenly|across|along|around|on\\b|in\\b|into\\b|to\\b|for\\b|at\\b|after\\b|drop\\b|pass\\b|from\\b|over\\b|through|try\\b|close\\b|carry|decr|incr|alternat|duplicate|graft|tack\\b|gather|lay\\b|match\\b|seam\\b|whip|overlap|f?sc\\b|f?hdc\\b|f?dc\\b|tr\\b|htr\\b|dtr\\b|fhdc\\b|blo\\b|flo\\b|bl\\b|fl\\b|single|half|double|treble|foundation|magic|m[cr][,.:]?\\s(?=\\d)|patt\\b|same as|as row|as rnd|as round|as for|as \\d|same\\b|all\\b|row ends|wrong side|right side|rs\\b|ws\\b|working|shell|v-?st|2?\\w{2,4}\\dtog|[fb]p[a-z]{2,4}\\b|" +
    `${NUMBER}${LIST}\\s?(?:more\\s)?(?:${STITCH}|ch|chs|chains?|rows?|rnds?|rounds?)\\b|[sdh]\\.? ?d?\\.? ?c\\b)`,
  "i",
);

const TALK =
  /(?<!\b(?:toward|towards|facing|from|to)\s)\b(?:you|you'll|you're|you've|your|i|i'm|i've|i'd|my|we|we'll|our|please|enjoy|love|loved|photo|photos|picture|video|tutorial|blog|copyright|website|link|click|sell|sold|thank|thanks|happy|because|maybe|perhaps|probably|recommend|optional|suggest|prefer|designed|wear|wearing|beginner|intermediate|skill|email|inspired|cozy|perfect|gorgeous|beautiful|easy)\b/gi;
const FINITE =
  /\b(?:is|are|was|were|will be|has been|have been|can be|should be|may be|means|makes|begins|starts|comes|consists|features|shows)\b/i;

function window(plain: string, from: number, to: number, most: number): string {
  return plain.slice(from, Math.min(to, from + most)).replace(/\s{2,}/g, " ");
}

/** How many kinds of sign of instruction stand in the stretch (the first 400 characters of it). */
export function signs(plain: string, from: number, to: number): number {
  const words = window(plain, from, to, 400);
  let count = 0;
  for (const sign of SIGNS) if (sign.test(words)) count++;
  return count;
}

/** Whether the stretch begins as instructions begin: a verb of the craft, a stitch, a number of stitches, a repeat mark. */
export function beginsInstruction(plain: string, from: number, to: number): boolean {
  return STARTS.test(window(plain, from, to, 90));
}

/** Words of talk in the stretch: "you", "I", "photo". */
export function talk(plain: string, from: number, to: number): number {
  return window(plain, from, to, 400).match(TALK)?.length ?? 0;
}

/** Whether a sentence, standing by itself, tells the maker to do something. */
export function isInstruction(plain: string, from: number, to: number): boolean {
  const found = signs(plain, from, to);
  if (found === 0)
    return (
      HOOK.test(window(plain, from, to, 160)) &&
      beginsInstruction(plain, from, to) &&
      /^\s*(?:change|switch|with|using)\b/i.test(window(plain, from, to, 40))
    );
  const words = window(plain, from, to, 400);
  const begins = beginsInstruction(plain, from, to);
  const chatter = talk(plain, from, to);
  if (begins) return found >= 1 && chatter <= found && !isStatement(words);
  if (FINITE.test(words) && found < 3) return false;
  return found >= 2 && chatter < found;
}

/** "Ch 3 counts as dc", "Row 1 is the right side": says how things are, asks for nothing. */
function isStatement(words: string): boolean {
  if (CHAIN_EQUALS.test(words) || ALL_ROUNDS.test(words)) return true;
  return (
    /^[\s*([-]{0,4}[^.;,(]{0,80}\b(?:does(?: not|n't) count|do(?: not|n't) count|counts? as|stands? for|acts? as|is (?:not|never) an? st(?:itch)?|never counts?|will (?:not )?count|is worked|are worked|is made|are made|is written|are written|is used|refers? to|is given|are given|is crocheted)\b/i.test(
      words,
    ) && !/^[\s*([-]{0,4}ch(?:ain)?\s?\d{1,2}\s\(/i.test(words)
  );
}

/** "ch3 = first dc": what a chain stands for, as an equation. */
const CHAIN_EQUALS = /^[\s*([-]{0,4}(?:ch(?:ain)?[\s-]?\d|\d\s?ch)\s?=\s?(?:\d\s?)?[a-z]/i;
/** "Join all rounds with ss to top of 3ch": how every round ends. */
const ALL_ROUNDS =
  /^[\s*([-]{0,4}(?:join|close|turn)\s(?:(?:the\s)?end of\s)?(?:all|each|every)\s(?:rounds?|rnds?|rows?)\b/i;

/** A stretch that holds nothing but a count: "24 sts.", "[16 (18, 20) sc]", "- 40 sts", "You now have 24 sts." */
export function isCountOnly(plain: string, from: number, to: number): boolean {
  if (to - from > 260) return false;
  const words = plain.slice(from, to);
  // "15 rows even" is work to do.
  return (
    COUNT_ONLY.test(words) &&
    !/\b(?:rows?|rnds?|rounds?)\s(?:even|straight|plain|more)\b|\bmore\s(?:rows?|rnds?|rounds?)\b/i.test(
      words,
    )
  );
}

const COUNT_ONLY = new RegExp(
  `^[-=:([{<*\\s]{0,5}(?:(?:total(?: of)?|you (?:should |will |now )*have|there (?:should be|are|will be)|=)[\\s:]*)?(?:\\d{1,4}${LIST}(?:${LIST})?|[([{]\\d[\\d\\s,;:/½-]{1,40}[)\\]}])[\\s)\\]}>]{0,4}(?:\\s?(?:[a-z-]{1,12}|ch-?\\d sps?)){0,4}(?:[,;+&]\\s?\\d{1,4}${LIST}(?:\\s?[a-z0-9-]{1,12}){0,3}){0,4}[)\\]}>.;,\\s]{0,4}$`,
  "i",
);

/** A stretch that says how many rows there are by now: "With Rnd 1 you have worked 22 rnds.", "The scarf has 196 (340) rows." */
export function isRowTotal(plain: string, from: number, to: number): boolean {
  return to - from <= 260 && ROW_TOTAL.test(plain.slice(from, to));
}

const ROW_TOTAL = new RegExp(
  "^[\\s*(]{0,3}(?:with (?:the )?(?:[a-z0-9]{1,12} ){1,4})?(?:you (?:should |will |now )*have|there (?:are|should be|will be)|(?:the|this|each|your) (?:[a-z]{2,14} ){1,4}(?:now )?has)\\s" +
    `(?:now |then )?(?:worked |made |done )?\\d{1,4}${LIST}(?:${LIST})?\\s(?:[a-z]{2,12} )?(?:rows|rnds|rounds)(?: in all| in total| altogether| so far)?[\\s.)]{0,4}$`,
  "i",
);

/** A count with its parts named behind it: "112 (104, 116) hdc: back 38 (36, 40), each sleeve 12 (12, 12)." */
export function beginsWithCount(plain: string, from: number, to: number): boolean {
  const words = plain.slice(from, Math.min(to, from + 300));
  return (
    COUNT_LED.test(words) &&
    !/\b(?:in|into)\s(?:next|each|first|last|same)\b|\b(?:across|around|turn|join|times|rep|repeat|skip|ch \d)\b/i.test(
      words,
    )
  );
}

const COUNT_LED = new RegExp(`^[-=:([\\s]{0,4}\\d{1,4}${LIST}(?:${LIST})?\\s?${STITCH}\\s?[:,;=-]`, "i");

const RING_CLOSED =
  /^\s*(?:(?:then\s|and\s)?(?:form|make|close)\s(?:into\s|in\s)?(?:a\s|the\s)?(?:ring|circle|loop)\s(?:with|by)\b|(?:then\s)?(?:join\s(?:with|by)\s(?:a\s|1\s)?)?(?:sl(?:ip)?[\s.-]{0,2}st(?:itch)?|ss)\s[^.,;]{0,40}\b(?:ring|circle|loop)\b)[^.,;]{0,40}[\s.]*$/i;

/** "Ch 1, turn.", "Turn.", "Join.", "Form a ring with a sl st.": ends the row before, and is no row of its own. */
export function isRowEnd(plain: string, from: number, to: number): boolean {
  if (to - from > 80) return false;
  if (RING_CLOSED.test(plain.slice(from, to))) return true;
  if (to - from > 60) return false;
  return /^\s*(?:(?:ch(?:ain)?[\s.-]?\d\s?[,;.]?\s?(?:and\s)?)?turn(?:over)?|turn[,;.]?\s?(?:and\s)?ch(?:ain)?[\s.-]?\d|ch(?:ain)?[\s.-]?\d\s?(?:and\s|,\s?)?(?:turn(?:over)?|to)?|join(?:\.|\swith\s[^.]{3,40}))[\s.]*$/i.test(
    plain.slice(from, to),
  );
}
