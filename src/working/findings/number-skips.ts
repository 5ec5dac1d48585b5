import { declare } from "../../base/index.ts";

/** A row whose number is not the next one. */
export interface Facts {
  readonly row: string;
  readonly expected: number;
  readonly found: number;
}

export const numberSkips = declare<Facts>({
  code: "rows/number-skips",
  severity: "warning",
  what: (d) => `The row numbers jump at ${d.row}.`,
  why: (d) => {
    const gap = d.found - d.expected;
    const next = `The next number is ${d.expected}, and ${d.found} is written`;
    if (gap === 1) return `${next}: Number ${d.expected} is missing.`;
    if (gap > 1) return `${next}: Numbers ${d.expected} to ${d.found - 1} are missing.`;
    return `${next}, which goes back.`;
  },
  todo: (d) => [
    `Number it ${d.expected}.`,
    d.found > d.expected
      ? `Write the missing ${d.found - d.expected === 1 ? "row" : "rows"}.`
      : "Begin the count again under a heading of its own.",
  ],
});
