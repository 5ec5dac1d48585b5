import { lex } from "./lex.ts";
import type { Amount } from "./tree.ts";

/** "(make 2)", "Make 2 alike", "(both alike)", "x 2", "- make two": how many of a piece. The words before it are its name. */
const MAKE =
  /[\s,(:[-]*\b(?:make|makes|work|crochet)\s(?:\w+\s)?(\d{1,2}|one|two|three|four|five|six|seven|eight)\b(?!\s?(?:sts?\b|rows?|rounds?|rnds?|sc|dc|hdc|ch|tr|more|even|inches|cm|"))([^)\].]{0,40})[)\].]*\s*$|\s[x(]\s?(\d)\)?$|[\s,(:[-]*(?:\b(?:work|make)\s)?\b(both)(?:\s(?:alike|the same|sleeves|pieces|sides|feet|hands|fronts|legs|arms|slits))?[)\].]*\s*$/i;

export interface MakeFound {
  readonly make: Amount;
  /** Offset behind the name of the piece. */
  readonly nameTo: number;
}

/** What the heading or line between the offsets says about how many to make; null where it says nothing. */
export function readMake(
  text: string,
  plain: string,
  from: number,
  to: number,
  sizes: number,
): MakeFound | null {
  if (to - from > 120) return null;
  const words = plain.slice(from, to);
  const found = MAKE.exec(words);
  if (!found) return null;
  if (found[4] !== undefined) {
    const both = from + found.index + found[0].toLowerCase().indexOf("both");
    return { make: { span: { from: both, to: both + 4 }, values: [2] }, nameTo: from + found.index };
  }
  const number = (found[1] ?? found[3]) as string;
  const at = from + found.index + found[0].search(new RegExp(`(?<![a-z0-9])${number}`, "i"));
  const token = lex(text, at, to, { sizes })[0];
  if (token?.is !== "number" || token.values.length === 0) return null;
  return { make: { span: token.span, values: token.values }, nameTo: from + found.index };
}
