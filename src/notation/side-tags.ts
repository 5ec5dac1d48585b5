/*
 * Tags beside a label: the side that faces the maker, and the colour of the row.
 */

export interface SideFound {
  readonly side: "RS" | "WS";
  readonly to: number;
}

const SIDE =
  /[\s,;]{0,3}(?:-\s?)?([([{])?\s?(?:(?:with\s)?(?:the\s)?(rs|ws|right[ -]?side|wrong[ -]?side|rightside|wrongside)(?:[ -]?(?:row|rnd|round|facing|side))?(?:\s?=?\s?\(?(?:right side|wrong side|rs|ws)\)?)?)\b\s?([)\]}])?(?:\s?-(?=\s))?/iy;

/**
 * "(RS)", "- RS -", "WS:", "(wrong side)", "right-side facing": the tag at `at`, or null.
 * A bare "RS" or "WS" must stand alone: "RS of work" and "right side seam" are no tags.
 */
export function readSideTag(plain: string, at: number, end: number): SideFound | null {
  if (at < 0) return null;
  SIDE.lastIndex = at;
  const found = SIDE.exec(plain);
  if (!found || at + found[0].length > end) return null;
  const to = at + found[0].length;
  const bracketed = found[1] !== undefined;
  const behind = plain.slice(to, to + 14);
  if (bracketed && found[3] === undefined) return null;
  if (
    !bracketed &&
    /^\s?(?:of|edge|seam|neck|front|shoulder|sleeve|together|facing each|up|out|and)\b/i.test(behind)
  )
    return null;
  const word = (found[2] as string).toLowerCase();
  return { side: word.startsWith("r") ? "RS" : "WS", to };
}

export interface ColourFound {
  /** The colour's own words. */
  readonly from: number;
  readonly until: number;
  /** Behind the whole tag. */
  readonly to: number;
}

const COLOUR_WORD =
  /^(?:(?:light|dark|deep|pale|bright|dusty|off|navy|royal|sky|baby|hot|forest|olive)[ -]?)?(?:white|cream|ecru|ivory|black|grey|gray|silver|charcoal|blue|navy|teal|turquoise|aqua|green|olive|mint|sage|yellow|mustard|gold|orange|peach|coral|red|burgundy|maroon|pink|rose|purple|lilac|lavender|violet|plum|brown|tan|beige|camel|natural|variegated|multi|main colou?r|contrast(?:ing)? colou?r|mc|cc\d?|[a-h])$/i;
const BRACKETED =
  /\s{0,2}[([{]\s?((?:with\s|in\s|using\s)?(?:colou?r\s|col\.?\s|yarn\s)?)([a-z][a-z0-9' -]{0,24}?)(\s(?:yarn|only))?\s?[)\]}]/iy;
const PLAIN =
  /\s{0,2}[,-]{0,1}\s?((?:with|in|using)\s(?:colou?r\s|col\.?\s|yarn\s)?|colou?r\s|col\.?\s|yarn\s)([a-z][a-z0-9'-]{0,16})(?=\s?[:.,;-])/iy;

function isColour(words: string, introduced: boolean, colours: readonly string[]): boolean {
  if (/^(?:colou?r|col|yarn)/i.test(words)) return false;
  const norm = words.toLowerCase();
  if (colours.some((colour) => colour.toLowerCase() === norm)) return true;
  return COLOUR_WORD.test(words) || (introduced && /^[a-z0-9]{1,2}$/i.test(words));
}

/** "(cream)", "(MC)", "(color B)", ", col A", "- with A": the tag at `at`, or null. */
export function readColourTag(
  plain: string,
  at: number,
  end: number,
  colours: readonly string[],
  behindSeparator = false,
): ColourFound | null {
  for (const pattern of behindSeparator ? [BRACKETED] : [BRACKETED, PLAIN]) {
    pattern.lastIndex = at;
    const found = pattern.exec(plain);
    if (!found || at + found[0].length > end) continue;
    const words = found[2] as string;
    const introduced = found[1] !== "";
    if (!isColour(words, introduced, colours)) continue;
    const from =
      at + found[0].indexOf(words, found[0].indexOf(found[1] as string) + (found[1] as string).length);
    return { from, until: from + words.length, to: at + found[0].length };
  }
  return null;
}
