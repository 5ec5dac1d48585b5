/** A stretch of the designer's text: offsets in UTF-16 units, `from` included, `to` not. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** A place as a person counts it: lines and columns from 1. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** The span that covers both; neither needs to come first. */
export function joinSpans(a: Span, b: Span): Span {
  return { from: Math.min(a.from, b.from), to: Math.max(a.to, b.to) };
}

/** Turns offsets into lines and columns. Built once a text, each look-up is a binary search. */
export class LineIndex {
  /** Offset at which each line begins; line 1 is entry 0. */
  private readonly starts: number[] = [0];

  constructor(private readonly text: string) {
    for (let at = text.indexOf("\n"); at !== -1; at = text.indexOf("\n", at + 1)) this.starts.push(at + 1);
  }

  get lineCount(): number {
    return this.starts.length;
  }

  /** Line and column of an offset; an offset past the end is the place after the last character. */
  position(offset: number): Position {
    const at = Math.max(0, Math.min(offset, this.text.length));
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.starts[middle] as number) <= at) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: at - (this.starts[low] as number) + 1 };
  }

  /** Offset of the first character of a line, counted from 1. @throws {RangeError} when there is no such line. */
  startOf(line: number): number {
    const start = this.starts[line - 1];
    if (start === undefined) throw new RangeError(`line ${line} of ${this.starts.length}`);
    return start;
  }

  /** The text of a line without its line break. */
  lineText(line: number): string {
    const start = this.startOf(line);
    const next = this.starts[line];
    const end = next === undefined ? this.text.length : next - 1;
    const text = this.text.slice(start, end);
    return text.endsWith("\r") ? text.slice(0, -1) : text;
  }
}
