import { declare } from "../../base/index.ts";

/** Yarn that is joined again without saying where. */
export interface Facts {
  readonly row: string;
}

export const rejoinWithoutPlace = declare<Facts>({
  code: "rows/rejoin-without-place",
  severity: "warning",
  what: (d) => `The place to rejoin the yarn is not said at ${d.row}.`,
  why: () => "More than one edge is open here, and the place decides which stitches are worked.",
  todo: () => [
    'Name the stitch, such as "rejoin yarn in next unworked st".',
    'Say how many are passed first, such as "sk next 12 sts, join yarn in next st".',
  ],
});
