import type { Clause } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import type { Reading } from "./reading.ts";
import { hereTarget } from "./targets.ts";

export const STARTS = "draw|pull|pulling|drawing|yo|yoh|insert|inserting|yarn|wrap|bring";

/**
 * A stitch told by its movements, up to "through all loops": "draw up a lp in each of next 2 sts, yo and draw through all 3 lps" is a
 * decrease over two places. The movements say which stitch: without a yarn over first sc, with "through 2 loops" dc, else hdc.
 */
export function readSpelledOut(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    if (!cursor.fits(STARTS) && !(cursor.isOpener() && cursor.fits(STARTS, 1))) return null;
    let yarnOverFirst = cursor.fits("yo|yoh|yarn|wrap") > 0 || cursor.fits("yo|yoh|yarn|wrap", 1) > 0;
    let partial = false;
    let legs = 0;
    let same = false;
    let times = 1;
    let all: number | null = null;
    let ended = false;
    let skipped = 0;
    const from = start;
    for (let guard = 0; guard < 140 && !cursor.done; guard += 1) {
      if (cursor.accept("through|thru|thro|off all? the? rem|remaining? all?")) {
        const before = cursor.tokens
          .slice(Math.max(0, cursor.at - 4), cursor.at)
          .some(
            (token) =>
              token.is === "word" &&
              (token.norm === "all" || token.norm === "rem" || token.norm === "remaining"),
          );
        const amount = readAmount(reading);
        const count = amount?.values[0] ?? null;
        cursor.accept("rem|remaining");
        const loops = cursor.accept("loop|loops|lp|lps|l");
        if (loops || before) {
          if (before || (count !== null && count > 2 && !cursor.fits("rep|repeat|twice|,"))) {
            all = count;
            cursor.accept("on|at|left hook|hk|your|the hook?");
            cursor.accept("at once");
            ended = true;
            break;
          }
          partial = true;
        }
        continue;
      }
      if (cursor.accept("twice")) times = Math.max(times, 2);
      else if (cursor.fits("times|more", 1) && cursor.isNumber()) {
        const amount = readAmount(reading);
        times = Math.max(times, (amount?.values[0] ?? 1) + (cursor.fits("more") ? 1 : 0));
      } else if (cursor.accept("in|into|over|through each? of? the? next|first|last|following")) {
        const amount = readAmount(reading);
        legs += amount?.values[0] ?? 1;
      } else if (cursor.accept("in|into same|the|st same|st?")) {
        same = same || cursor.tokens[cursor.at - 1]?.is === "word";
        legs += 1;
      } else if (cursor.accept("sk|skip|miss")) skipped += 1;
      else if (
        cursor.fits("turn|ch|join|fasten|rep|repeat") &&
        cursor.at > from + 2 &&
        !cursor.fits("rep|repeat")
      )
        return null;
      else cursor.at += 1;
    }
    if (!ended) return null;
    // "dec over next 2 sts as follows: draw up ...": the stitch is said already, and this is how it is made.
    const said = reading.out.findLast((clause) => clause.kind !== "aside");
    const lead = cursor.tokens.slice(Math.max(0, start - 4), start);
    if (
      said?.kind === "work" &&
      /dec|tog|cluster/u.test(said.stitch) &&
      lead.some((token) => token.is === "word" && /^(follows|foll|fol|thus)$/u.test(token.norm))
    )
      return { kind: "aside", span: cursor.spanFrom(start) };
    if (skipped > 0) yarnOverFirst = false;
    const loops = all;
    const base = !yarnOverFirst ? "sc" : partial ? "dc" : "hdc";
    const byLoops = loops === null ? null : base === "hdc" ? Math.floor((loops - 1) / 2) : loops - 1;
    const count = byLoops !== null && byLoops >= 1 ? byLoops : Math.max(legs, times);
    const span = cursor.spanFrom(start);
    if (count < 2)
      return {
        kind: "work",
        span,
        stitch: base,
        stitchSpan: span,
        target: { ...hereTarget(span), ref: "next" },
      };
    const inOne = same && legs <= times;
    return {
      kind: "work",
      span,
      stitch: inOne ? `${count}${base}-cluster` : `${base}${count}tog`,
      stitchSpan: span,
      target: { ...hereTarget(span), ref: inOne ? "next" : "next" },
    };
  });
}
