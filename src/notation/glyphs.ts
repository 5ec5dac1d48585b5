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

/** Hearts, ticks, boxes and faces, that say nothing of the work. */
const PICTURES =
  /(?![©®™#*\d↔-⇿])(?:\p{Extended_Pictographic}|[\u2610-\u2612\u2660-\u2667\u2713\u2714]|\ufe0f)/gu;

/** What pages write for glyphs, by name or by number, and the tags for letters: as many spaces stay as letters go. */
const MARKUP =
  /&(?:[a-z]{2,8}\d{0,2}|#\d{2,5}|#x[\da-f]{2,4});|<\/?(?:b|i|u|em|strong|span|p|br|sup|sub|font|div|li|ul|ol|h\d)(?:\s[^<>\n]{0,80})?\s?\/?>/gi;
const ENTITIES: Readonly<Record<string, string>> = {
  amp: "&",
  nbsp: " ",
  ensp: " ",
  emsp: " ",
  thinsp: " ",
  quot: '"',
  ldquo: '"',
  rdquo: '"',
  lsquo: "'",
  rsquo: "'",
  apos: "'",
  ndash: "-",
  mdash: "-",
  minus: "-",
  hellip: "…",
  times: "x",
  lt: "<",
  gt: ">",
  bull: "•",
  frac12: "½",
  frac14: "¼",
  frac34: "¾",
};

function withoutMarkup(text: string): string {
  return text.replace(MARKUP, (markup) => {
    if (markup.startsWith("<")) return " ".repeat(markup.length);
    const name = markup.slice(1, -1).toLowerCase();
    const number = name.startsWith("#x")
      ? Number.parseInt(name.slice(2), 16)
      : name.startsWith("#")
        ? Number(name.slice(1))
        : 0;
    const glyph = number > 0 && number < 0xd800 ? String.fromCharCode(number) : ENTITIES[name];
    return glyph === undefined ? markup : glyph.padEnd(markup.length);
  });
}

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
  const written = text.includes("&") || text.includes("<") ? withoutMarkup(text) : text;
  if (written === text && !NOT_PLAIN.test(text)) return text;
  const plain = written
    .replace(CHANGED, plainOf)
    .replace(BARRED, "[$1]")
    .replace(PICTURES, (picture) => " ".repeat(picture.length));
  return FOREIGN.test(plain) ? plain.replace(FOREIGN_WORD, latinWord).replace(LONE_ZE, "3") : plain;
}

/** A word with Cyrillic and Greek look-alikes made Latin, if that makes all of it Latin; else the word unchanged. */
export function latinWord(word: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the question is whether the word is plain ASCII
  if (/^[\x00-\x7f]*$/.test(word)) return word;
  const latin = word.replace(LOOKS_LATIN, (letter) => LOOK_ALIKES[letter] ?? letter);
  return /^[A-Za-z0-9'.-]+$/.test(latin) ? latin : word;
}
