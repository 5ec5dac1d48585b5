import type { Token } from "./token.ts";
import type { Amount, RowRange } from "./tree.ts";

/*
 * Numbers of rows behind the word "row" or before it: "3, 5 and 7", "2-5", "8-19 (8-21, 8-25)", "5 to Rnd 9", "7th to 15th".
 */

export interface RowNumbersFound {
  readonly rows: readonly RowRange[];
  readonly to: number;
}

const THROUGH = new Set(["to", "thru", "through", "til", "till", "until"]);
const AND = new Set(["and", "or"]);
const ROW_WORDS = new Set(["row", "rows", "rnd", "rnds", "round", "rounds", "rd", "rds", "r"]);

/**
 * Reads from the first token on, as far as the numbers go.
 *
 * @param rounds    kept for ranges that repeat the word ("Rnd 5 to Rnd 9")
 * @param several   the word before is plural ("Rows"), so that a dash can only join two numbers
 * @param ordinals  only ordinals are numbers of rows here: "6th", "First"
 * @returns null where the tokens do not begin with a number
 */
export function rowNumbers(
  tokens: readonly Token[],
  _rounds: boolean,
  ordinals = false,
  several = false,
): RowNumbersFound | null {
  const rows: RowRange[] = [];
  let to = 0;
  let i = tokens[0]?.is === "word" && tokens[0].norm === "the" ? 1 : 0;
  // "Row -1" and "Row #3": a mark that belongs to the number.
  const lead = tokens[i];
  if (!ordinals && lead?.is === "mark" && (lead.text === "-" || lead.text === "#")) i++;
  for (;;) {
    const first = amountAt(tokens, i, ordinals);
    if (!first) break;
    i++;
    to = first.span.to;
    const last = throughTo(tokens, i, ordinals, several);
    if (last) {
      rows.push({ from: first, to: last.amount });
      to = last.amount.span.to;
      i = last.next;
    } else rows.push({ from: first, to: first });
    const next = joinedTo(tokens, i, ordinals);
    if (next === null) break;
    i = next;
  }
  return rows.length === 0 ? null : { rows, to };
}

function amountAt(tokens: readonly Token[], i: number, ordinals: boolean): Amount | null {
  const token = tokens[i];
  if (
    token?.is === "number" &&
    (!ordinals || token.ordinal) &&
    (ordinals || !token.word || token.values.length > 0)
  ) {
    // "Rows 5 6 times": no further check here; the separator behind the label decides.
    return { span: token.span, values: token.values };
  }
  if (ordinals && token?.is === "word" && token.norm === "first") return { span: token.span, values: [1] };
  return null;
}

function skipRowWord(tokens: readonly Token[], i: number): number {
  const token = tokens[i];
  return token?.is === "word" && ROW_WORDS.has(token.norm) ? i + 1 : i;
}

function throughTo(
  tokens: readonly Token[],
  i: number,
  ordinals: boolean,
  several: boolean,
): { amount: Amount; next: number } | null {
  const token = tokens[i];
  if (token === undefined) return null;
  const joins = token.is === "mark" ? token.text === "-" : token.is === "word" && THROUGH.has(token.norm);
  if (!joins) return null;
  const at = skipRowWord(tokens, i + 1);
  const amount = amountAt(
    tokens,
    at,
    ordinals && token.is === "word" && at === i + 1 && isOrdinalNext(tokens[at]),
  );
  if (!amount || (!several && isInstructionNumber(tokens, at, token))) return null;
  return { amount, next: at + 1 };
}

function isOrdinalNext(token: Token | undefined): boolean {
  return token?.is === "number" && token.ordinal;
}

/** "Row 1-1 dc in 5th st": the dash parts label and instruction where a stitch follows the number. */
function isInstructionNumber(tokens: readonly Token[], at: number, dash: Token): boolean {
  if (dash.is !== "mark") return false;
  const next = tokens[at + 1];
  if (next?.is === "word" && !ROW_WORDS.has(next.norm) && !AND.has(next.norm))
    return /^(?:sc|dc|hdc|tr|htr|dtr|ch|chs|chain|ss|sl|sts?|single|double|half|treble|slip|more|rows?|s|d|h|inc|dec)$/.test(
      next.norm,
    );
  return false;
}

/** Index behind a comma, "and" or "&" if another number follows; null otherwise. */
function joinedTo(tokens: readonly Token[], i: number, ordinals: boolean): number | null {
  let at = i;
  let joined = false;
  for (let steps = 0; steps < 3; steps++) {
    const token = tokens[at];
    const joins =
      token?.is === "mark"
        ? token.text === "," || token.text === "&" || token.text === "+"
        : token?.is === "word" && AND.has(token.norm);
    if (!joins) break;
    joined = true;
    at++;
  }
  if (!joined) return null;
  at = skipRowWord(tokens, at);
  const amount = amountAt(tokens, at, ordinals);
  if (!amount) return null;
  const next = tokens[at + 1];
  // "Row 5, 3 sc in next": the comma ends the label.
  if (
    !ordinals &&
    next?.is === "word" &&
    !AND.has(next.norm) &&
    !THROUGH.has(next.norm) &&
    !["rs", "ws", "incl", "inclusive", "rows", "only"].includes(next.norm)
  )
    return null;
  return at;
}
