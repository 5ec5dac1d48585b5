import { declare } from "../../base/index.ts";

/** A list whose values turn round on the way from the smallest size to the largest. */
export interface Facts {
  /** The list, as written. */
  readonly words: string;
  /** The two neighbours between which it turns. */
  readonly from: number;
  readonly to: number;
}

const way = (up: boolean) => (up ? "up" : "down");

export const listOutOfOrder = declare<Facts>({
  code: "sizes/list-out-of-order",
  severity: "warning",
  what: (d) => `"${d.words}" goes ${way(d.to > d.from)} from ${d.from} to ${d.to}.`,
  why: (d) => `The rest of the list goes ${way(d.to < d.from)} from size to size.`,
  todo: () => [
    "Put the values in the order of the sizes.",
    "See whether two figures changed places in a number.",
  ],
});
