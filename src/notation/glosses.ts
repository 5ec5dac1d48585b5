import type { Token } from "./token.ts";

/*
 * Words with their own abbreviation in brackets behind them, or the other way about: "chain (ch) 20", "6 single crochet (sc)",
 * "dc (double crochet)". The bracket says the word again and nothing else.
 */

const SPELLINGS: readonly (readonly [abbreviations: string, words: string])[] = [
  ["ch chs", "chain|chains"],
  ["st sts", "stitch|stitches"],
  ["sp sps", "space|spaces"],
  ["lp lps", "loop|loops"],
  ["sc", "single crochet|single crochets|single crochet stitch|single crochet stitches"],
  ["hdc", "half double crochet|half double crochets|half double"],
  ["dc", "double crochet|double crochets"],
  ["tr trc tc", "treble|trebles|treble crochet|triple crochet|treble crochets"],
  ["htr", "half treble|half trebles|half treble crochet"],
  ["dtr", "double treble|double trebles|double treble crochet"],
  ["sl|st ss slst sl", "slip stitch|slip stitches|slip st"],
  ["rep rpt", "repeat"],
  ["rnd rnds rd rds", "round|rounds"],
  ["sk", "skip|miss"],
  ["beg", "beginning|begin"],
  ["yo yoh", "yarn over|yarn over hook"],
  ["inc", "increase|increases"],
  ["dec", "decrease|decreases"],
  ["tog", "together"],
  ["rem", "remaining|remain"],
  ["patt pat", "pattern"],
  ["tch tc", "turning chain"],
  ["mr", "magic ring"],
  ["mc mr", "magic circle"],
  ["blo bl", "back loop only|back loops only|back loop"],
  ["flo fl", "front loop only|front loops only|front loop"],
  ["fpdc", "front post double crochet"],
  ["bpdc", "back post double crochet"],
  ["pm", "place marker|place a marker"],
];

/** Abbreviation and words of the same thing, both in lower case with a space between words. */
const SAME = new Set(
  SPELLINGS.flatMap(([abbreviations, words]) =>
    abbreviations
      .split(" ")
      .flatMap((short) => words.split("|").map((long) => `${short.replace("|", " ")}=${long}`)),
  ),
);

/** No spelling has more words than this. */
const MOST_WORDS = 4;

/** The tokens without brackets that only say the words before them again. */
export function withoutGlosses(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some((token) => token.is === "mark" && token.text === "(")) return tokens;
  const kept: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const close = glossEnd(tokens, at, kept);
    if (close === null) kept.push(tokens[at] as Token);
    else at = close;
  }
  return kept;
}

/** Where the bracket that opens at `at` closes, if it is a gloss of the words before it. */
function glossEnd(tokens: readonly Token[], at: number, before: readonly Token[]): number | null {
  const open = tokens[at];
  if (open?.is !== "mark" || open.text !== "(") return null;
  let inside = "";
  let close = at + 1;
  for (; close - at <= MOST_WORDS; close++) {
    const token = tokens[close];
    if (token?.is !== "word") break;
    inside = inside === "" ? token.norm : `${inside} ${token.norm}`;
  }
  const end = tokens[close];
  if (inside === "" || end?.is !== "mark" || end.text !== ")") return null;
  let words = "";
  for (let back = before.length - 1; back >= 0 && before.length - back <= MOST_WORDS; back--) {
    const token = before[back] as Token;
    if (token.is !== "word") return null;
    words = words === "" ? token.norm : `${token.norm} ${words}`;
    if (SAME.has(`${inside}=${words}`) || SAME.has(`${words}=${inside}`)) return close;
  }
  return null;
}
