import type { Span } from "../base/index.ts";

/** A yarn of the pattern: a letter ("A", "MC") or the name of a colour. */
export interface ColourFound {
  readonly span: Span;
  readonly name: string;
}

const LETTERED =
  /\b(?:colou?r|yarn|col\.?|shade)\s([A-H]|\d)\b(?!\s?(?:balls?|skeins?|hanks?|x\b))|\b(MC(?![,.:]\s\d{1,2}\s?(?:sc|hdc|dc|htr|tr)\b)|CC\d?|C[A-F])\b|[([]\s?([A-H])\s?[)\]]|\bcolou?r\s([A-H])\b/g;
const LISTED =
  /(?:^|[,;]\s?|\band\s|\bof\s)(?:\d{1,2}\s(?:balls?|skeins?|hanks?)\s(?:of\s)?)([A-Za-z][A-Za-z' -]{2,24}?)(?=\s?(?:\(|,|;|\.|$|and\b))/gi;

/** Yarns named in the stretch of plain text, each name once, in order of appearance. */
export function findColours(text: string, plain: string, from: number, to: number): ColourFound[] {
  const found = new Map<string, ColourFound>();
  const stretch = plain.slice(from, to);
  const add = (name: string, at: number) => {
    const key = name.toLowerCase();
    if (!found.has(key))
      found.set(key, { span: { from: at, to: at + name.length }, name: text.slice(at, at + name.length) });
  };
  for (const hit of stretch.matchAll(LETTERED)) {
    const name = (hit[1] ?? hit[2] ?? hit[3] ?? hit[4]) as string;
    add(name, from + hit.index + hit[0].lastIndexOf(name));
    // "color A (slate)": the shade is another name for it.
    const shade = /^\s?[([]\s?([a-z][a-z' -]{2,20}?)\s?(?:,[^)\]]*)?[)\]]/i.exec(
      stretch.slice(hit.index + hit[0].length, hit.index + hit[0].length + 60),
    );
    if (shade)
      add(shade[1] as string, from + hit.index + hit[0].length + shade[0].indexOf(shade[1] as string));
  }
  for (const hit of stretch.matchAll(LISTED)) {
    const name = (hit[1] as string).trim();
    if (!/\b(?:yarn|wool|cotton|thread|each|of|ball|skein|weight|worsted|sport|acrylic|dk)\b/i.test(name))
      add(name, from + hit.index + hit[0].indexOf(hit[1] as string));
  }
  return [...found.values()].sort((a, b) => a.span.from - b.span.from);
}
