import { stitchAt } from "../stitch-words.ts";
import type { Amount, RepeatRowsClause } from "../tree.ts";
import { readAmount, readOrdinal } from "./amounts.ts";
import { made, type Reading } from "./reading.ts";
import { readRowsMeant } from "./rows-meant.ts";

/** Words that are no name of a row: they point at one by its place or its number. */
const POINTERS = new Set(
  "next last this that each every first second third same previous prev following foll other another row rnd round of in to on at for until and or with rs ws right wrong side alternate alt rem remaining all these those more pattern patt more than per one final any from into begin beginning end start starting turn join ch sk skip rep repeat across around work sc dc hdc tr st sts once twice times".split(
    " ",
  ),
);

/**
 * "Work the Full increase rnd 3 times", "(even round twice, decrease round once) 4 times", "work the increase row again on every 4th row
 * 10 times": rows called by a name of their own, which a label of the pattern gives them.
 */
export function readNamedRows(reading: Reading): RepeatRowsClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("now|then|and");
    cursor.accept("then|now");
    const verb = cursor.accept("work|rep|repeat|working|repeating");
    cursor.accept("the|a|an|one|your");
    const from = cursor.at;
    let words = 0;
    while (words < 4 && cursor.isWord(words) && !POINTERS.has(cursor.key(words))) words += 1;
    const shaped = cursor.fits("dec|inc|increase|decrease|increases|decreases", 0) > 0;
    if (
      words === 0 ||
      (!shaped && stitchAt(cursor, reading, 0, false) !== null) ||
      !cursor.fits("row|rows|rnd|rnds|round|rounds", words)
    )
      return null;
    cursor.at += words + 1;
    const name = cursor.wordsFrom(from).toLowerCase();
    const rowsSpan = cursor.spanFrom(from);
    if (!cursor.accept("as before")) cursor.accept("again");
    let times = readTimes(reading);
    const every = readEvery(reading);
    times ??= readTimes(reading);
    const ends = cursor.isBoundary() || cursor.fits("and|then|until|-|=|on|over") > 0;
    if (!ends || !(times || every || verb || reading.inRepeat)) return null;
    // Without a verb only a list of such rows is meant: "even round twice, decrease round once".
    if (!verb && !times && !reading.inRepeat) return null;
    return made<RepeatRowsClause>({
      kind: "repeat-rows",
      span: cursor.spanFrom(start),
      rows: { are: "numbered", span: rowsSpan, list: [], name },
      times: times ?? undefined,
      every: every ?? undefined,
      until: undefined,
    });
  });
}

/** A numbered row among rows worked in turn: "(Row 1, increase row) 4 times", "(Rnd 3 twice, Rnd 4) 6 times". */
export function readRowInTurn(reading: Reading): RepeatRowsClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    if (!reading.inRepeat) return null;
    const start = cursor.at;
    cursor.accept("then|and");
    if (!cursor.fits("row|rows|rnd|rnds|round|rounds")) return null;
    const rows = readRowsMeant(reading);
    if (rows?.are !== "numbered") return null;
    const times = readTimes(reading) ?? undefined;
    const ends = cursor.done || cursor.isBoundary() || cursor.fits("and|then") > 0;
    if (!ends) return null;
    return made<RepeatRowsClause>({ kind: "repeat-rows", span: cursor.spanFrom(start), rows, times });
  });
}

function readTimes(reading: Reading): Amount | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("for");
    cursor.accept("a total of");
    const token = cursor.token();
    const amount = readAmount(reading);
    if (!amount || token?.is !== "number") return null;
    cursor.accept("more");
    const said = cursor.accept("times|time|x") || (token.word && /^(once|twice|thrice)$/iu.test(token.text));
    cursor.accept("more|in all");
    return said ? amount : null;
  });
}

/** "on every 4th row", "every other rnd". */
function readEvery(reading: Reading): Amount | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("on|in|at");
    if (!cursor.accept("every|each|alternate|alt")) return null;
    const word = cursor.tokens[cursor.at - 1];
    let every: Amount | null =
      word?.is === "word" && word.norm.startsWith("alt") ? { span: word.span, values: [2] } : null;
    if (!every && cursor.accept("other|alt|alternate|second"))
      every = { span: cursor.spanFrom(cursor.at - 1), values: [2] };
    every ??= readOrdinal(reading);
    cursor.accept("foll|following");
    return cursor.accept("row|rows|rnd|rnds|round|rounds")
      ? (every ?? { span: cursor.spanFrom(cursor.at - 1), values: [1] })
      : null;
  });
}
