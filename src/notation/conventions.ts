import { lookupStitch } from "../stitches/index.ts";
import { splitSentences } from "./sentences.ts";
import type { ConventionNote, LoopWord } from "./tree.ts";

/*
 * Sentences of the notes that set how things count: what a turning chain stands for, whether rounds are joined.
 */

type Says = ConventionNote["says"];

/** The conventions in a stretch of flat text, one or more a sentence. */
export function readConventions(
  flat: string,
  from: number,
  to: number,
  terms: "US" | "UK",
): ConventionNote[] {
  const notes: ConventionNote[] = [];
  for (const span of splitSentences(flat, from, to)) {
    const words = flat.slice(span.from, Math.min(span.to, span.from + 500));
    for (const says of conventionsIn(words, terms)) notes.push({ span, says });
  }
  return notes;
}

function conventionsIn(words: string, terms: "US" | "UK"): Says[] {
  const found: Says[] = [];
  found.push(...turningChains(words, terms));
  if (found.length === 0) found.push(...chains(words));
  const join = joining(words);
  if (join) found.push(join);
  const turn = turning(words);
  if (turn) found.push(turn);
  if (
    /\b(?:work(?:ed|ing)?|made)\b[^.;]{0,40}\b(?:in (?:a )?(?:continuous )?(?:spirals?|continuous rounds?)|spirally)\b|\bcontinuous(?:ly)?\b[^.;]{0,12}\b(?:rounds?|spirals?|rnds?)\b/i.test(
      words,
    )
  )
    found.push({ about: "spiral" });
  const stated =
    /\b(us|u\.s\.|american|uk|u\.k\.|british)\s(?:crochet\s)?(?:terms?|terminology|abbreviations)\b/i.exec(
      words,
    );
  if (stated) found.push({ about: "terms", terms: /^(?:u\.?s|am)/i.test(stated[1] as string) ? "US" : "UK" });
  const loops = loopWords(words);
  if (loops) found.push({ about: "loops", loops });
  return found;
}

/** "3", "ch-3", "3 ch", with the chain that begins or turns a row. */
const CHAIN_WORDS =
  /\b(?:(?:turning|beginning|beg|starting|initial|first)\sch(?:ain)?s?[\s-]{0,2}(\d)?|ch(?:ain)?s?[\s-]{0,2}(\d)|(\d)\s?ch(?:ain)?s?)(?![a-z]*\s?sp)/i;
const COUNTS =
  /\b(?:(never|not|n't|doesn't|don't|won't)\s(?:be\s)?counts?(?:ed)?|(?:is|are)\s(?:never|not)\scounted|(?:does not|do not|doesn't|don't|will not|won't|never|is not|are not|isn't)\s(?:get\s)?(?:count(?:s|ed)?|be counted|a (?:st|stitch)))\b|\b(?:counts?|counting|is counted|are counted|will count|acts?|stands?|used)\s(?:as|for)\s([^.;)]+)|=\s?(\d?\s?[a-z][^.;)]*)|\b(?:counts?)\b/i;

function turningChains(words: string, terms: "US" | "UK"): Says[] {
  if (
    !/\b(?:beg|beginning|start|starts|begins?|turning|turn|tch|starting|first)\b|^\W*(?:notes?\b\W*)?(?:the\s)?(?:ch(?:ain)?[\s-]{0,2}\d|\d\s?ch)\b/i.test(
      words,
    )
  )
    return [];
  const says: Says[] = [];
  let at = 0;
  // "The 3 ch at the beginning count as 1 tr and the 1 ch does not count": one after the other, each chain with what follows it.
  for (let guard = 0; guard < 6; guard++) {
    const chain = CHAIN_WORDS.exec(words.slice(at));
    if (!chain) break;
    const start = at + chain.index + chain[0].length;
    const rest = ownWords(words.slice(start));
    const next = CHAIN_WORDS.exec(words.slice(start));
    const counts = COUNTS.exec(rest);
    if (!counts) {
      if (says.length === 0 && !next) break;
      at = start;
      if (!next) break;
      continue;
    }
    const number = chain[1] ?? chain[2] ?? chain[3];
    // "The 2 ch and the 1 ch at the start do not count": one verb for several chains.
    const stitch = /\bof\s(?:a|an|each|every)\s([a-z]+)\s(?:row|rnd|round)\b/i.exec(
      rest.slice(0, counts.index),
    );
    const negative =
      /\b(?:not|never|n't)\b|n't\b/i.test(counts[0]) || /\bnot\s+$/.test(rest.slice(0, counts.index));
    const meant = counts[2] ?? counts[3];
    const parts = negative ? [] : meant === undefined ? ["st"] : partsOf(meant, terms);
    if (negative || parts.length > 0) {
      const code = stitch ? lookupStitch(stitch[1] as string, terms)?.code : undefined;
      says.push({
        about: "turning-chain",
        ...(number ? { chains: Number(number) } : {}),
        ...(code ? { stitch: code } : {}),
        parts,
      });
    }
    // A second chain before the verb shares it.
    at = next && next.index < counts.index ? start : start + counts.index + counts[0].length;
  }
  return says;
}

/** "3 ch counts as 1 tr, 1 ch does not count": what is said of one chain ends where another with a verb of its own begins. */
function ownWords(rest: string): string {
  const verb = COUNTS.exec(rest);
  if (!verb) return rest;
  for (let at = verb.index + 4; at < rest.length; ) {
    const chain = CHAIN_WORDS.exec(rest.slice(at));
    if (!chain) return rest;
    const from = at + chain.index;
    at = from + chain[0].length;
    if (
      /^(?:[^,;()]{0,50}?\b(?:counts?|does|do|don't|doesn't|never|is|are|stands?|acts?)\b|\s?=)/i.test(
        rest.slice(at),
      )
    )
      return rest.slice(0, from);
  }
  return rest;
}

/** "as dc", "as the first dc, ch 1", "1 tr": dictionary codes in order; "st" where it only says "a stitch". */
function partsOf(words: string, terms: "US" | "UK"): string[] {
  const parts: string[] = [];
  for (const part of words.toLowerCase().split(/\s*(?:,|\+|&|\band\b|\bplus\b)\s*/)) {
    const plain = part
      .replace(
        /\b(?:as|for|the|a|an|first|1st|one|1|here|also|throughout|of|each|row|rnd|round|unless|otherwise|stated|in|always|every|following|rows|rounds|pattern|this)\b/g,
        " ",
      )
      .replace(/\s+/g, " ")
      .trim();
    const chain = /\bch(?:ain)?s?[ -]?(\d)|(\d) ?ch\b/.exec(part);
    if (chain && parts.length > 0) {
      parts.push(`ch ${chain[1] ?? chain[2]}`);
      continue;
    }
    if (/^ch$/.test(plain) && parts.length > 0) {
      parts.push("ch 1");
      continue;
    }
    const code = lookupStitch(plain, terms)?.code ?? lookupStitch(plain.split(" ")[0] ?? "", terms)?.code;
    if (code) parts.push(code);
    else if (/^(?:st|stitch)\b/.test(plain) && parts.length === 0) parts.push("st");
    else break;
  }
  return parts;
}

function chains(words: string): Says[] {
  const found =
    /\b(?:each\s|every\s|all\s|the\s)?(?:ch(?:ain)?s?[\s-]{0,2}(\d)?[\s-]{0,2}(?:sps?|spaces?)|chains?(?: stitches)?|chs)\b[^.;]{0,30}\b((?:do(?:es)? not|don't|doesn't|never|not)\s)?count(?:s|ed)?\b/i.exec(
      words,
    );
  if (!found) return [];
  return [
    {
      about: "chains",
      counted: found[2] === undefined && !/\bnot\b|\bnever\b/i.test(found[0]),
      ...(found[1] ? { chains: Number(found[1]) } : {}),
    },
  ];
}

function joining(words: string): Says | null {
  if (/\b(?:do not|don't|without|never|not)\sjoin(?:ing|ed)?\b/i.test(words))
    return { about: "join", joined: false };
  if (
    /["'(]join["')]\s?(?:\w+\s)?(?:means|=|:)|\b(?:rounds?|rnds?)\b[^.;]{0,60}\b(?:are|is|being|end(?:s|ing)?|closed?|joined)\b[^.;]{0,40}\b(?:joined|sl(?:ip)? ?st(?:itch)?|ss)\b|\bjoin(?:s|ing)?\s(?:each|every|all|the)\s(?:end of (?:each|every)\s)?(?:rounds?|rnds?|first)|\b(?:each|every|all)\s(?:rounds?|rnds?)\b[^.;]{0,80}\b(?:join|sl(?:ip)? ?st(?:itch)?|ss)\b/i.test(
      words,
    )
  )
    return { about: "join", joined: true };
  return null;
}

function turning(words: string): Says | null {
  if (
    /\b(?:do not|don't|never|without)\sturn(?:ing|ed)?\b/i.test(words) &&
    /\b(?:rounds?|rnds?|rows?|unless|throughout|always|side)\b/i.test(words)
  )
    return { about: "turn", turned: false };
  if (
    /\bturn(?:ed)?\b[^.;]{0,30}\b(?:at (?:the )?end of|after)\s(?:each|every|all|the)\b|\b(?:each|every|all)\s(?:row|rnd|round)s?\b[^.;]{0,40}\bturn/i.test(
      words,
    )
  )
    return { about: "turn", turned: true };
  return null;
}

function loopWords(words: string): LoopWord | null {
  const found =
    /\b(?:in|through|into)\s(?:the\s)?(back|front|both|third)\s(?:loops?|lps?)(?:\sonly)?\b/i.exec(words);
  if (
    !found ||
    !/\b(?:throughout|all (?:st|sts|stitches|rows|rounds|sc|dc|hdc)|unless|entire|every|whole)\b/i.test(words)
  )
    return null;
  return (found[1] as string).toLowerCase() as LoopWord;
}
