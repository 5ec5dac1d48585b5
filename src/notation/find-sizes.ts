import type { SizeRun, Span } from "../base/index.ts";
import { signs } from "./evidence.ts";
import type { Line } from "./lines.ts";
import { SIZE_NAME } from "./size-names.ts";

/*
 * The size run of a text: what a line on sizes says, held against how many values the lists in the rows have.
 */

export interface SizesFound {
  readonly names: SizeRun;
  /** The words that set the run; null where it was inferred from the lists. */
  readonly span: Span | null;
}

const ONE: SizesFound = { names: ["one size"], span: null };

/** @param plain  the text in plain glyphs; the span found is an offset into it */
export function findSizes(plain: string, lines: readonly Line[]): SizesFound {
  const oneSize = /^[^\S\n]{0,8}(?:sizes?\s?[:.-]?\s{0,3})?one size\b(?! larger| smaller| up| down)/im.test(
    plain.slice(0, 6000),
  );
  const votes = voteOnLists(plain, lines);
  const stated = statedRuns(plain, lines);
  const inferred = oneSize ? null : mostVotes(votes, plain.length < 800 ? 1 : 3);
  // The statement that the lists bear out is the run; a run that no list bears out is believed where there are no lists.
  const borne = stated.filter((run) => (votes.get(run.names.length) ?? 0) > 0);
  const best = [...borne].sort((a, b) => b.sure - a.sure)[0];
  if (best && (inferred === null || best.names.length === inferred || best.sure >= 2))
    return { names: best.names, span: best.span };
  if (inferred !== null && (votes.get(inferred) ?? 0) >= 1) return { names: numbered(inferred), span: null };
  const first = [...stated].sort((a, b) => b.sure - a.sure)[0];
  if (oneSize && borne.length === 0) return ONE;
  if (first && (inferred === null || first.sure >= 2)) return { names: first.names, span: first.span };
  return inferred === null ? ONE : { names: numbered(inferred), span: null };
}

function numbered(count: number): SizeRun {
  return Array.from({ length: count }, (_, i) => `size ${i + 1}`);
}

/* ------------------------------------------------------------------- lists */

const N = '(?:\\d{1,4}(?:[.½¼¾]\\d?|\\s\\d\\/\\d)?|½|¼|¾|-{1,2})"?';
const GROUPED = new RegExp(
  `(?<![\\d½-])\\d{1,4}[½¼¾]?"?\\s?,?\\s?((?:[([{]\\s?${N}(?:\\s?[,;:/-]\\s{0,3}${N}){0,12}\\s?[)\\]}]\\s?){1,4})`,
  "g",
);
const HYPHENS = /(?<![\d.½-])\d{1,4}(?:-\d{1,4}){2,10}(?![\d-])/g;
const ALTERNATING = /(?<![\d½])\d{1,4}\s?\(\d{1,4}\)\s?\d{1,4}(?:\s?\(\d{1,4}\)(?:\s?\d{1,4}\b)?){0,6}/g;
const ALONE = /(?<!\d\s?)[([{]\s?\d{1,4}(?:\s?[,;]\s?\d{1,4}){1,12}\s?[)\]}]/g;
const COLONS = /(?<![\d:])\d{1,4}(?:\s?:\s?\d{1,4}){2,10}(?![\d:])/g;
const SLASHES = /(?<![\d/])\d{1,4}(?:\/\d{1,4}){1,8}(?![\d/])/g;
const SEMICOLONS = /(?<!\d)\d{1,4}(?:;\s?\d{1,4}){2,10}/g;
const COMMAS = /(?<![\d,]\s?)\b\d{2,4}(?:,\s?\d{2,4}){2,10}(?=\s(?:sts?|sc|dc|hdc|tr|stitches)\b)/g;
const PAIR_CONTEXT =
  /\d{1,4}\s?[([{]\s?\d{1,4}\s?[)\]}]\s?(?:sts?\b|sc\b|dc\b|hdc\b|tr\b|htr\b|ch\b|rows?\b|rnds?\b|rounds?\b|times\b|more\b|stitches|cm\b|in\b|mm\b|"|ch-)|\bch(?:ain)?\s?\d{1,4}\s?[([{]\s?\d{1,4}\s?[)\]}]/gi;

function numbersIn(words: string): number {
  return (
    words.replace(/\s\d\/\d/g, "½").match(/\d{1,4}(?:\.\d)?|(?<!\d)[½¼¾]|(?<=[,([{]\s?)-{1,2}/g)?.length ?? 0
  );
}

/** How many lists there are of each length, lists in rows counting more. */
function voteOnLists(plain: string, lines: readonly Line[]): Map<number, number> {
  const votes = new Map<number, number>();
  const vote = (length: number, weight: number) => {
    if (length >= 2 && length <= 30) votes.set(length, (votes.get(length) ?? 0) + weight);
  };
  let paragraph = "";
  for (const line of lines) {
    const words = plain.slice(line.start, Math.min(line.end, line.start + 4000));
    if (!/\d/.test(words)) continue;
    const inRow = signs(plain, line.start, line.end) > 0;
    const weight = inRow ? 2 : 1;
    // A list may break over the end of the line.
    paragraph = /[([{][^)\]}]{0,40}$/.test(words) ? `${words} ${nextWords(plain, lines, line)}` : words;
    const pairs = paragraph.match(PAIR_CONTEXT)?.length ?? 0;
    for (const [list] of paragraph.matchAll(ALTERNATING)) vote(numbersIn(list), weight * 2);
    const rest = paragraph.replace(ALTERNATING, " ");
    for (const found of rest.matchAll(GROUPED)) {
      const length = numbersIn(found[0]);
      if (length > 2) vote(length, weight);
    }
    if (pairs > 0 && !/\(\d{1,4}\)\s?\d{1,4}\s?\(/.test(paragraph)) vote(2, inRow ? pairs : pairs * 0.5);
    if (!/\b\d{3}-\d{3}-\d{4}\b/.test(rest))
      for (const [list] of rest.matchAll(HYPHENS))
        vote(numbersIn(list.replace(/-/g, ",")), inRow ? weight : 0.5);
    for (const [list] of rest.matchAll(ALONE)) {
      const length = numbersIn(list);
      if (length > 2 || inRow) vote(length, length > 2 ? weight : 0.5);
    }
    if (inRow) {
      for (const [list] of rest.matchAll(COLONS)) vote(numbersIn(list), weight);
      for (const [list] of rest.matchAll(SEMICOLONS)) vote(numbersIn(list), weight);
      for (const [list] of rest.matchAll(COMMAS)) vote(numbersIn(list), weight);
      for (const [list] of rest.replace(/\d\s\d\/\d|(?<!\d)\d\/[2348]\b/g, " ").matchAll(SLASHES))
        vote(numbersIn(list), 0.6);
    }
  }
  return votes;
}

function nextWords(plain: string, lines: readonly Line[], line: Line): string {
  const next = plain.slice(line.to + 1, line.to + 200).split("\n")[0] ?? "";
  return lines.length > 1 ? next.trim() : "";
}

function mostVotes(votes: ReadonlyMap<number, number>, least: number): number | null {
  let best: number | null = null;
  for (const [length, count] of votes) {
    const needed = length === 2 ? Math.max(2, least) : least;
    if (count < needed) continue;
    const most = best === null ? 0 : (votes.get(best) as number);
    if (count > most || (count === most && length > (best as number))) best = length;
  }
  return best;
}

/* ----------------------------------------------------------- stated in words */

interface Stated {
  readonly names: SizeRun;
  readonly span: Span;
  /** 3: a line of names after the word "size"; 2: a sentence on sizes; 1: a measurement given for every size. */
  readonly sure: number;
}

const WORD_SIZES =
  /^(?:(?:finished |available |garment |pattern )?(?:sizes?|sizing)|to fit(?: (?:bust|chest|ages?|sizes?|head|waist|child sizes?))?|ages?|bust size|finished (?:bust|chest|size)(?: size)?)(?: (?:available|included|range|guide|chart))?\b\s*[:=.-]*\s*/i;
const RUN = new RegExp(
  `^\\(?${SIZE_NAME}(?:\\s?[,;:/(|[{)\\]}&-]{1,3}\\s?|\\s?\\)?,?\\s(?:and|or)\\s|\\s?[)\\]}]?\\s?[([{]\\s?|\\s{2,})(?:${SIZE_NAME})`,
  "i",
);
const ITEM = new RegExp(`${SIZE_NAME}(?![a-z0-9])`, "iy");
const GAP = /(?:[\s,;:|&=/()[\]{}"-]|\band\b|\bor\b){1,12}/iy;
const ASIDE = /\s?[[(]\s?\d{1,3}(?:\s?-\s?\d{1,3})?\s?(?:cm|in|ins|inches|")?\s?[\])]/iy;
const ONE_A_LINE = new RegExp(`^(?:size\\s)?(${SIZE_NAME}|(?<=size\\s)[A-H])\\s?(?:[:=(]|-\\s|\\s-)`, "i");
const LETTERS_ALONE = /^(?:(?:\d?X{0,4}S|M|L|\d?X{1,5}L?|\d{1,2}XL?)(?:[\s,/|]+|$)){3,12}$/;
const LETTER_NAME =
  /^(?:\d{0,2}X{0,5}[SL]|M|\dX|XX?S|X{1,4}L|(?:extra[ -]?|x-?|\dx-?)?(?:small|large)|medium|sm|md|lg|newborn|preemie|baby|toddler|child|adult|teen|women|men|ladies)$/i;
const CHANGES =
  /(?:fit|fits|for|are for|is for|written for|given for|in)\s(?:the\s)?(?:(?:adult|child|child's|infant's|ladies|women's|men's)\s)?(?:the\s)?(?:smallest\s)?(?:sizes?\s)?(?:to fit\s)?([^.;()]{1,40}?)[.;,)]?\s{0,2}\(?(?:with\s)?(?:the\s)?(?:changes?|others?|larger sizes?)\s(?:are\s)?(?:for|are)?\s?(?:the\s)?(?:(?:infant|child|toddler|adult|wom[ae]n|m[ae]n|girl|boy)'?s?\s)?(?:sizes?\s)?([^.()]{1,160}?)\s(?:are\s|is\s|will be\s)?(?:given\s|shown\s|written\s|indicated\s)?(?:in|within|with)\s\(?(?:parenthes[ei]s|parentheses|brackets|the brackets|\()/i;
const WITH = new RegExp(
  `(?:for|is)\\s(?:size\\s)?(${SIZE_NAME})\\s?,?\\s(?:with|and)\\s(?:sizes?\\s)?((?:${SIZE_NAME}(?:,\\s|\\sand\\s|,\\sand\\s)?){1,8})\\s(?:sizes?\\s)?(?:are\\s|is\\s)?(?:given\\s|indicated\\s|shown\\s)?in\\s?(?:with\\s)?(?:parenthes|brackets|\\(|\\{)|(?:for|is)\\s(?:size\\s)?(${SIZE_NAME})\\s?,?\\swith\\s((?:${SIZE_NAME}(?:,\\s|\\sand\\s|,\\sand\\s)?){1,8})\\s?(?:indicated|shown|given)?\\s?(?:with|in)\\s?[({[]`,
  "i",
);

/** "Directions are given for size 10. Sizes 12, 14 and 16 are given in parentheses." */
const SIZES_BEHIND = new RegExp(
  `\\bsize\\s(${SIZE_NAME})\\b[^()]{0,60}[.;]\\s{0,2}sizes?\\s([^.()]{1,120}?)\\s(?:are|is|follow|given|shown|in)\\b[^.]{0,40}(?:parenthes|bracket)`,
  "i",
);

function statedRuns(plain: string, lines: readonly Line[]): Stated[] {
  const runs: Stated[] = [];
  const most = Math.min(lines.length, 400);
  for (let i = 0; i < most; i++) {
    const line = lines[i] as Line;
    if (line.blank) continue;
    const end = Math.min(line.end, line.start + 600);
    const words = plain.slice(line.start, end);
    const head = WORD_SIZES.exec(words);
    if (head) {
      // "Size: Bust size = 32 (36, 40)": one heading behind the other.
      const begin = head[0].length + (WORD_SIZES.exec(words.slice(head[0].length))?.[0].length ?? 0);
      const rest = words.slice(begin);
      const named = runOf(rest, line.start + begin) ?? namedFreely(rest, line.start + begin);
      if (named)
        runs.push({ ...named, sure: /^(?:sizes?|sizing|available|garment|pattern)/i.test(head[0]) ? 3 : 2 });
      else if (words.length === head[0].length) {
        const below = listBelow(plain, lines, i + 1);
        if (below) runs.push(below);
      }
    } else if (LETTERS_ALONE.test(words)) {
      const names = words.trim().split(/[\s,/|]+/);
      if (new Set(names).size === names.length)
        runs.push({ names, span: { from: line.start, to: line.end }, sure: 3 });
    } else if (
      /^[(]?\s?(?:\d{0,2}X{0,5}[SML]|extra|small|newborn|preemie|x-?small)\b/i.test(words) &&
      words.length < 120 &&
      signs(plain, line.start, end) === 0
    ) {
      const named = runOf(words, line.start);
      if (named?.names.every((name) => LETTER_NAME.test(name.split(/[/&]|\s\(/)[0]?.trim() ?? "")))
        runs.push({ ...named, sure: 3 });
    }
    if (
      /\bchang|\bwith\b/i.test(words) &&
      /\bsizes?\b|parenthes|bracket|\bwritten\b|\bfits?\b|\(\s?\)|\{\s?\}/i.test(
        plain.slice(line.start, line.end + 160),
      )
    ) {
      const sentence = sentenceRun(plain, line, lines[i + 1], lines[i + 2]);
      if (sentence) runs.push(sentence);
    }
    const two = LARGER.exec(words);
    const second = (two?.[1] ?? two?.[2])?.toLowerCase();
    if (two && second) {
      const from = line.start + two.index;
      runs.push({
        names: [OTHER_SIZE[second] ?? "first", second],
        span: { from, to: from + two[0].length },
        sure: 2,
      });
    }
    if (runs.length > 12) break;
  }
  return runs;
}

/** "Use the numbers in brackets for the larger size": two sizes without a name. */
const LARGER =
  /\b(?:in|within)\s(?:the\s)?(?:parenthes[ei]s|brackets)\b[^.()]{0,30}?\bfor\s(?:the\s)?(larger|bigger|large|second|smaller|small|adult|child)(?:'s)?\ssize\b|\b(larger|bigger|second|smaller)\ssize\s(?:is\s|are\s|numbers\sare\s)?(?:given\s|shown\s)?in\s(?:parenthes[ei]s|brackets)/i;
const OTHER_SIZE: Readonly<Record<string, string>> = {
  larger: "smaller",
  bigger: "smaller",
  large: "small",
  second: "first",
  smaller: "larger",
  small: "large",
  adult: "child",
  child: "adult",
};

/** "XS (S, M, L) (XL, 2X)", "small, medium and large", "2 (4, 6) years", "XS/S (M/L, 1X/2X)", "32 (34, 36)\" bust". */
function runOf(words: string, offset: number): Omit<Stated, "sure"> | null {
  // A full stop ends the run unless it stands in a number.
  const stretch = words.split(/(?<!\d)\.(?:\s|$)|\.\s(?=[A-Z])|\bto fit\b|\bwith\b|\bshown\b/i)[0] as string;
  if (!RUN.test(stretch)) return null;
  const names: string[] = [];
  let at = 0;
  let until = 0;
  const lead = /^[\s(]+/.exec(stretch);
  if (lead) at = lead[0].length;
  const start = at;
  while (at < stretch.length && names.length < 30) {
    ITEM.lastIndex = at;
    const found = ITEM.exec(stretch);
    if (!found) break;
    names.push(found[0].trim());
    at += found[0].length;
    until = at;
    // "S [32-34]": a measurement in brackets behind a letter name belongs to it.
    ASIDE.lastIndex = at;
    const measure = /^[a-z]/i.test(found[0]) ? ASIDE.exec(stretch) : null;
    if (measure) at += measure[0].length;
    GAP.lastIndex = at;
    const between = GAP.exec(stretch);
    if (!between) break;
    at += between[0].length;
  }
  const split = splitHyphens(names);
  const letters = split.filter((name) => /^[a-z]/i.test(name)).length;
  // Names and measures do not mix: "S (M, L) 32 (34, 36)" is the names.
  const kept = letters >= 2 ? split.slice(0, lastLetter(split) + 1) : split;
  const unit = /^[\s)\]}]{0,3}(months?|mos?\.?|years?|yrs?\.?)(?![a-z])/i.exec(stretch.slice(until))?.[1];
  const clean = unitsToAll(
    unit
      ? kept.map((name, i) => (i === kept.length - 1 && /\d$/.test(name) ? `${name} ${unit}` : name))
      : kept,
  );
  if (clean.length < 2 || new Set(clean.map((name) => name.toLowerCase())).size !== clean.length) return null;
  if (letters === 0 && !ascending(clean)) return null;
  let last = until;
  const closing = /[)\]}]/y;
  closing.lastIndex = last;
  while (closing.exec(stretch)) last = closing.lastIndex;
  return { names: clean, span: { from: offset + start, to: offset + last } };
}

/** "Pram (Lap, Throw)": names of the designer's own, which only a line on sizes can hold. */
function namedFreely(words: string, offset: number): Omit<Stated, "sure"> | null {
  const found =
    /^\s*(\p{Lu}[\p{L}\d' -]{0,16}?)\s?[([{]\s?([\p{L}\d][\p{L}\d', ;/-]{0,120}?)\s?[)\]}]\s*[.,]?\s*$/u.exec(
      words,
    );
  if (!found) return null;
  const names = [found[1] as string, ...(found[2] as string).split(/\s*[,;]\s*/)].map((name) => name.trim());
  if (
    names.some((name) => name === "" || name.split(/\s+/).length > 3) ||
    new Set(names).size !== names.length
  )
    return null;
  const start = offset + words.search(/\S/);
  return { names, span: { from: start, to: start + found[0].trim().length } };
}

/** "4-6-8-10" came as "4-6" and "8-10": ranges of equal steps all joined by hyphens were single sizes. */
function splitHyphens(names: readonly string[]): string[] {
  const ranges = names.filter((name) => /^\d+\s?-\s?\d+$/.test(name)).length;
  const singles = names.filter((name) => /^\d+$/.test(name)).length;
  if (ranges > 0 && singles > 0)
    return names.flatMap((name) => (/^\d+\s?-\s?\d+$/.test(name) ? name.split(/\s?-\s?/) : [name]));
  return [...names];
}

function lastLetter(names: readonly string[]): number {
  for (let i = names.length - 1; i >= 0; i--) if (/^[a-z]|^\dx/i.test(names[i] as string)) return i;
  return -1;
}

/** "2 (4, 6) years": the unit that follows the last belongs to all. */
function unitsToAll(names: readonly string[]): string[] {
  const last = names.at(-1) ?? "";
  const unit = /^\d[\d\s/-]*?\s?(months?|mos?\.?|years?|yrs?\.?|y|t)$/i.exec(last)?.[1];
  return names.map((name) =>
    unit && /^\d[\d\s/-]*$/.test(name) ? `${name.trim()} ${unit}` : name.replace(/\s*"$/, "").trim(),
  );
}

function ascending(names: readonly string[]): boolean {
  const numbers = names.map((name) => Number(/\d+/.exec(name)?.[0]));
  const mixed = names.some((name) => /mo|month/i.test(name)) && names.some((name) => /y/i.test(name));
  return mixed || numbers.every((number, i) => i === 0 || number > (numbers[i - 1] as number));
}

/** Under the heading "Sizes": one line that is a run, or a line for each size ("Small: 32-34 in bust"). */
function listBelow(plain: string, lines: readonly Line[], from: number): Stated | null {
  const names: string[] = [];
  let start = -1;
  let end = -1;
  for (let i = from; i < Math.min(lines.length, from + 24); i++) {
    const line = lines[i] as Line;
    if (line.blank) {
      if (names.length > 0) break;
      continue;
    }
    const words = plain.slice(line.start, Math.min(line.end, line.start + 300));
    const one = ONE_A_LINE.exec(words);
    if (!one) {
      if (names.length > 1) break;
      const first = lines[i - 1] as Line;
      return names.length === 0 ? runBelow(plain, line) : runBelow(plain, first);
    }
    names.push((one[1] as string).trim());
    if (start === -1) start = line.start;
    end = line.end;
  }
  return names.length > 1 && new Set(names).size === names.length
    ? { names, span: { from: start, to: end }, sure: 3 }
    : null;
}

function runBelow(plain: string, line: Line): Stated | null {
  const words = plain.slice(line.start, Math.min(line.end, line.start + 300));
  const named = runOf(words, line.start) ?? namedFreely(words, line.start);
  return named ? { ...named, sure: 3 } : null;
}

/** "Directions are for size Small; changes for Medium and Large are in parentheses." over up to three lines. */
function sentenceRun(
  plain: string,
  line: Line,
  second: Line | undefined,
  third: Line | undefined,
): Stated | null {
  const end = Math.min((third ?? second ?? line).end, line.start + 500);
  const words = plain.slice(line.start, end).replace(/\n/g, " ");
  const changes = CHANGES.exec(words);
  if (changes) {
    const span = { from: line.start + changes.index, to: line.start + changes.index + changes[0].length };
    const first = (changes[1] as string).replace(/^(?:size|sizes|adult size)\s/i, "").trim();
    const rest = (changes[2] as string).replace(/\bsizes?\b/gi, " ").trim();
    const names = unitsToAll(
      [first, ...rest.split(/\s*(?:,\s*(?:and\s)?|\band\b|&|;)\s*/)]
        .map((name) => name.trim())
        .filter((name) => name !== ""),
    );
    const real = names.every(
      (name) =>
        new RegExp(`^(?:${SIZE_NAME}|[a-z]+'?s?)(?:\\sto\\s.{1,14})?$`, "i").test(name) && name.length < 28,
    );
    const known = names.some((name) => new RegExp(`^${SIZE_NAME}`, "i").test(name));
    if (real && known && names.length > 1) return { names, span, sure: 2 };
  }
  const behind = SIZES_BEHIND.exec(words);
  if (behind) {
    const names = [behind[1] as string, ...(behind[2] as string).split(/\s*(?:,\s*(?:and\s)?|\band\b|&)\s*/)]
      .map((name) => name.trim())
      .filter((name) => name !== "");
    if (names.length > 1 && names.every((name) => name.length < 20))
      return {
        names,
        span: { from: line.start + behind.index, to: line.start + behind.index + behind[0].length },
        sure: 2,
      };
  }
  const pair = WITH.exec(words);
  if (pair) {
    const first = (pair[1] ?? pair[3]) as string;
    const rest = (pair[2] ?? pair[4]) as string;
    const names = [first, ...rest.split(/\s*(?:,\s*(?:and\s)?|\band\b|&)\s*/)]
      .map((name) => name.trim())
      .filter((name) => name !== "");
    if (names.length > 1)
      return {
        names,
        span: { from: line.start + pair.index, to: line.start + pair.index + pair[0].length },
        sure: 2,
      };
  }
  return null;
}
