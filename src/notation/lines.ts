/*
 * The lines of a text with what typing conventions put before the words: indents, bullets, list numbers, Markdown marks.
 */

/** One line; offsets into the whole text. */
export interface Line {
  /** First character and the line break (or the end of the text). */
  readonly from: number;
  readonly to: number;
  /** The words: without indent, bullet, heading marks, surrounding bold marks and trailing space. */
  readonly start: number;
  readonly end: number;
  /** Depth of a Markdown heading, 1 to 6; 0 for other lines. */
  readonly hashes: number;
  /** The whole line stands between bold or italic marks. */
  readonly bold: boolean;
  readonly bullet: boolean;
  readonly blank: boolean;
}

/** Splits plain text (see glyphs.ts) into lines. */
export function splitLines(plain: string): Line[] {
  const lines: Line[] = [];
  for (let from = 0; from <= plain.length; ) {
    const found = plain.indexOf("\n", from);
    const to = found === -1 ? plain.length : found;
    lines.push(readLine(plain, from, to));
    from = to + 1;
  }
  return lines;
}

function readLine(plain: string, from: number, to: number): Line {
  let start = from;
  let end = to;
  while (start < end && plain[start] === " ") start++;
  while (end > start && plain[end - 1] === " ") end--;
  if (start === end) return { from, to, start, end, hashes: 0, bold: false, bullet: false, blank: true };
  const head = plain.slice(start, Math.min(end, start + 12));
  const hashes = /^#{1,6}(?= )/.exec(head)?.[0].length ?? 0;
  if (hashes > 0) {
    start += hashes;
    while (plain[start] === " ") start++;
    while (end > start && plain[end - 1] === "#") end--;
    while (end > start && plain[end - 1] === " ") end--;
  }
  // A star is a bullet only with a space and no other star in the line: "* skip 1 st; rep from *" is a repeat.
  const mark = /^(?:[-+>•o](?= )|•|_{2,8}|<(?= )|\*(?= ))\s*/.exec(head);
  let bullet = false;
  if (
    mark &&
    !(
      mark[0].startsWith("*") &&
      plain.indexOf("*", start + 1) !== -1 &&
      plain.indexOf("*", start + 1) < end
    ) &&
    start + mark[0].length < end
  ) {
    bullet = true;
    start += mark[0].length;
    while (plain[start] === " ") start++;
  }
  const marks = /^(?:\*\*\*|\*\*|__)/.exec(plain.slice(start, start + 3))?.[0];
  let bold = false;
  if (
    marks &&
    end - start > marks.length * 2 &&
    plain.startsWith(marks, end - marks.length) &&
    !plain.slice(start + marks.length, end - marks.length).includes(marks)
  ) {
    bold = true;
    start += marks.length;
    end -= marks.length;
  }
  // "**Row 1:** ..." and "*Row 1:* ...": the label alone is marked; its reader passes over the closing marks.
  const opening = bold
    ? null
    : /^(?:\*\*|__|\*(?=(?:row|rnd|round)\b))(?=[^*_\n]{1,60}(?:\*|_))/i.exec(
        plain.slice(start, Math.min(end, start + 70)),
      );
  if (opening) start += opening[0].length;
  return { from, to, start, end, hashes, bold, bullet, blank: false };
}

/** Width at which the text was wrapped by its typist, or 0 where each line is a paragraph. */
export function wrapWidth(lines: readonly Line[]): number {
  const lengths = lines.filter((line) => !line.blank).map((line) => line.to - line.from);
  if (lengths.length < 4) return 0;
  const longest = Math.max(...sample(lengths));
  if (longest > 120 || longest < 30) return 0;
  const full = lengths.filter((length) => length >= longest * 0.75).length;
  return full >= lengths.length * 0.35 ? longest : 0;
}

/** At most a thousand of them, evenly taken, so that they can be spread into one call. */
function sample(lengths: readonly number[]): number[] {
  const step = Math.max(1, Math.ceil(lengths.length / 1000));
  return lengths.filter((_, i) => i % step === 0);
}
