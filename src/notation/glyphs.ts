/*
 * Glyphs that stand for others in pattern texts: typographic forms, full-width forms, and letters that only look Latin.
 * Every entry maps one UTF-16 unit to one, so that offsets never move.
 */

const PLAIN: Readonly<Record<string, string>> = {
  "×": "x",
  "✕": "x",
  "✖": "x",
  "⨯": "x",
  "╳": "x",
  "−": "-",
  "–": "-",
  "—": "-",
  "‐": "-",
  "‑": "-",
  "‒": "-",
  "―": "-",
  "﹣": "-",
  "－": "-",
  "­": "-",
  "“": '"',
  "”": '"',
  "„": '"',
  "″": '"',
  "‟": '"',
  "＂": '"',
  "‘": "'",
  "’": "'",
  "‚": "'",
  "′": "'",
  "`": "'",
  "´": "'",
  "＇": "'",
  "∗": "*",
  "✱": "*",
  "✲": "*",
  "✳": "*",
  "＊": "*",
  "﹡": "*",
  "★": "*",
  "☆": "*",
  "⁎": "*",
  "✻": "*",
  "•": "•",
  "·": "•",
  "●": "•",
  "▪": "•",
  "◦": "•",
  "（": "(",
  "）": ")",
  "［": "[",
  "］": "]",
  "｛": "{",
  "｝": "}",
  "＜": "<",
  "＞": ">",
  "，": ",",
  "；": ";",
  "：": ":",
  "．": ".",
  "＝": "=",
  "＋": "+",
  "＆": "&",
  "／": "/",
  "⁄": "/",
  "∕": "/",
  "？": "?",
  "！": "!",
  "＃": "#",
  "‹": "<",
  "›": ">",
  "⟨": "<",
  "⟩": ">",
  // The dotless i of a Turkish keyboard.
  ı: "i",
  "\u00a0": " ",
  "\u2007": " ",
  "\u2009": " ",
  "\u200a": " ",
  "\u202f": " ",
  "\u3000": " ",
  "\u2002": " ",
  "\u2003": " ",
  "\u2004": " ",
  "\u2005": " ",
  "\u2006": " ",
  "\u2008": " ",
  "\t": " ",
  "\u000b": " ",
  "\u000c": "\n",
  "\r": " ",
  "\u2028": "\n",
  "\u2029": "\n",
  "\u0085": "\n",
  // No ink and no width: byte-order marks, joiners, direction marks, NUL.
  "\ufeff": " ",
  "\u200b": " ",
  "\u200c": " ",
  "\u200d": " ",
  "\u200e": " ",
  "\u200f": " ",
  "\u202a": " ",
  "\u202b": " ",
  "\u202c": " ",
  "\u202d": " ",
  "\u202e": " ",
  "\u2066": " ",
  "\u2067": " ",
  "\u2068": " ",
  "\u2069": " ",
  "\u0000": " ",
};

/** Cyrillic and Greek letters that print like Latin ones. */
const LOOK_ALIKES: Readonly<Record<string, string>> = {
  а: "a",
  е: "e",
  о: "o",
  р: "p",
  с: "c",
  х: "x",
  у: "y",
  і: "i",
  ѕ: "s",
  ԁ: "d",
  һ: "h",
  ј: "j",
  к: "k",
  м: "m",
  т: "t",
  г: "r",
  п: "n",
  А: "A",
  В: "B",
  Е: "E",
  К: "K",
  М: "M",
  Н: "H",
  О: "O",
  Р: "P",
  С: "C",
  Т: "T",
  Х: "X",
  У: "Y",
  І: "I",
  Ѕ: "S",
  Ј: "J",
  ο: "o",
  α: "a",
  ν: "v",
  Α: "A",
  Β: "B",
  Ε: "E",
  Η: "H",
  Ι: "I",
  Κ: "K",
  Μ: "M",
  Ν: "N",
  Ο: "O",
  Ρ: "P",
  Τ: "T",
  Χ: "X",
};

const CHANGED = new RegExp(
  `[${Object.keys(PLAIN)
    .map((c) => `\\u{${c.charCodeAt(0).toString(16)}}`)
    .join("")}\uff10-\uff19\uff21-\uff3a\uff41-\uff5a]`,
  "gu",
);
const LOOKS_LATIN = new RegExp(`[${Object.keys(LOOK_ALIKES).join("")}]`, "gu");

const FOREIGN = /[\p{Script=Cyrillic}\p{Script=Greek}]/u;
const FOREIGN_WORD = /[A-Za-z\p{Script=Cyrillic}\p{Script=Greek}]{1,40}/gu;
/** A Cyrillic letter that scanners read for a 3. */
const LONE_ZE = /(?<![\p{L}\d])З(?!\p{L})/gu;

/** Upright strokes used as brackets: "|inc, sc in next 3 sts| x 6". */
const BARRED =
  /\|([^|\n]{3,160})\|(?=\s{0,2}(?:x\s?\d|\d{1,2}\s?(?:x|times)\b|(?:twice|times|across|around|rep)\b))/gi;

/** What is no plain letter, figure or mark, and the stroke. */
const NOT_PLAIN = /[^\n -{}~]/;

function plainOf(glyph: string): string {
  const known = PLAIN[glyph];
  if (known !== undefined) return known;
  // Full-width digits and letters stand 0xfee0 above the plain ones.
  return String.fromCharCode(glyph.charCodeAt(0) - 0xfee0);
}

/** The same text with plain glyphs; as long as the original, so that every offset holds. */
export function plainText(text: string): string {
  if (!NOT_PLAIN.test(text)) return text;
  const plain = text.replace(CHANGED, plainOf).replace(BARRED, "[$1]");
  return FOREIGN.test(plain) ? plain.replace(FOREIGN_WORD, latinWord).replace(LONE_ZE, "3") : plain;
}

/** A word with Cyrillic and Greek look-alikes made Latin, if that makes all of it Latin; else the word unchanged. */
export function latinWord(word: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the question is whether the word is plain ASCII
  if (/^[\x00-\x7f]*$/.test(word)) return word;
  const latin = word.replace(LOOKS_LATIN, (letter) => LOOK_ALIKES[letter] ?? letter);
  return /^[A-Za-z0-9'.-]+$/.test(latin) ? latin : word;
}
