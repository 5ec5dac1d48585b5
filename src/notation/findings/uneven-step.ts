import { declare, inSizes } from "../../base/index.ts";

/** One value that leaves the even steps of its neighbours. */
export interface Facts {
  /** The list, as written. */
  readonly words: string;
  readonly size: string;
  readonly found: number;
  readonly expected: number;
}

export const unevenStep = declare<Facts>({
  code: "sizes/uneven-step",
  severity: "note",
  what: (d) => `"${d.words}" leaves its even steps${inSizes([d.size])}.`,
  why: (d) => `The other steps lead to ${d.expected}; ${d.found} is written.`,
  todo: (d) => [`Write ${d.expected}${inSizes([d.size])}.`],
});
