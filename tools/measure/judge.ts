import type { Edit, Finding, Span } from "../../src/base/index.ts";
import type { PatternTree } from "../../src/notation/index.ts";
import { makesRows, placeAll } from "./pattern-text.ts";

/** What came of one change. */
export interface Verdict {
  readonly found: boolean;
  /** A new finding stands on the changed instruction or on the next one that makes rows, or names the changed one beside. */
  readonly rightLine: boolean;
  /** Codes of the new findings, each with the offset in the text before the change. */
  readonly findings: readonly { readonly code: string; readonly at: number }[];
}

/** Errors and warnings: what a designer must look at. */
export const serious = (findings: readonly Finding[]): Finding[] =>
  findings.filter(({ severity }) => severity !== "note");

/** Holds the findings of a changed pattern against those of the clean one. */
export class Judge {
  private readonly spans: readonly Span[];
  private readonly rows: readonly (readonly number[] | null)[];
  private readonly before = new Map<string, readonly number[][]>();

  constructor(tree: PatternTree, findings: readonly Finding[]) {
    const placed = placeAll(tree);
    this.spans = placed.map(({ instruction }) => instruction.span);
    this.rows = placed.map(({ instruction }) => (makesRows(instruction) ? instruction.sizes : null));
    for (const { code, span, sizes } of serious(findings)) {
      const key = `${code} ${this.lineAt(span.from)}`;
      this.before.set(key, [...(this.before.get(key) ?? []), [...sizes]]);
    }
  }

  judge(findings: readonly Finding[], edit: Edit, instruction: number): Verdict {
    const back = (offset: number): number => {
      const { span, text } = edit;
      if (offset < span.from) return offset;
      return offset < span.from + text.length
        ? Math.min(offset, Math.max(span.from, span.to - 1))
        : offset - text.length + (span.to - span.from);
    };
    const fresh = serious(findings).filter(
      ({ code, span, sizes }) => !this.wasThere(code, back(span.from), sizes),
    );
    const next = this.nextRow(instruction);
    const right = [instruction, ...(next < 0 ? [] : [next])];
    return {
      found: fresh.length > 0,
      rightLine: fresh.some(
        ({ span, also }) =>
          right.includes(this.instructionAt(back(span.from))) ||
          (also !== undefined && this.instructionAt(back(also.from)) === instruction),
      ),
      findings: fresh.map(({ code, span }) => ({ code, at: back(span.from) })),
    };
  }

  /** The next instruction that makes rows for a maker of one of these sizes, or -1. No sizes are all sizes. */
  private nextRow(instruction: number): number {
    const mine = this.rows[instruction] ?? [];
    const shared = (theirs: readonly number[]): boolean =>
      mine.length === 0 || theirs.length === 0 || theirs.some((size) => mine.includes(size));
    return this.rows.findIndex((sizes, at) => at > instruction && sizes !== null && shared(sizes));
  }

  /** The same code on the same instruction in at least these sizes. */
  private wasThere(code: string, offset: number, sizes: readonly number[]): boolean {
    const known = this.before.get(`${code} ${this.lineAt(offset)}`) ?? [];
    return known.some(
      (those) => those.length === 0 || (sizes.length > 0 && sizes.every((size) => those.includes(size))),
    );
  }

  /** The instruction at an offset, or -1. */
  private instructionAt(offset: number): number {
    return this.spans.findIndex(({ from, to }) => from <= offset && offset < to);
  }

  private lineAt(offset: number): string {
    const at = this.instructionAt(offset);
    return at < 0 ? `text ${offset}` : `instruction ${at}`;
  }
}
