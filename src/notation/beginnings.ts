/*
 * The words that a piece of work begins with.
 */

/** What a piece begins with: a chain, a ring, foundation stitches. */
const FOUNDATION =
  /^[\s*(]{0,3}(?:(?:with|using|starting with|holding)\b[^.;]{0,90}?,?\s)?(?:loosely,?\s)?(?:(?:beg(?:in|inning)?|start(?:ing)?)\b[^.;]{0,50}?,?\s)?(?:(?:ch|chain|chained)s?(?:\s\((?:ch|chain)\))?[-. ]{0,2}(?:\d|[([{]\s?\d|\{|(?:an?|any) multiple)|(?:make|work|create|begin with|start with|form)\s(?:a\s|an\s)?(?:\d[\w\s(),:/[\]-]{0,40}?(?:\b|(?<=\d))ch|(?:foundation |base |starting )?chain|magic|slip ?knot|adjustable|\d+\s?(?:ch|chain|sc|hdc|dc))|(?:fsc|fdc|fhdc|fhdc)\s?\d|\d{1,3}\s?(?:[([{][\d\s,-]+[)\]}]\s?)?ch(?:ain)?\b|magic (?:ring|circle|loop)|(?:to )?(?:begin|start),? (?:with|by|ch|chain)|\d{1,2}\s?(?:sc|hdc|dc|tr|htr)\s(?:in|into)\s(?:an?\s|the\s)?(?:mr\b|mc\b|magic|ring|adjustable|2nd|second|3rd)|into (?:a )?magic|foundation (?:ch|row|chain))/i;

/** Whether the words begin a piece. */
export function beginsPiece(words: string): boolean {
  return FOUNDATION.test(words);
}
