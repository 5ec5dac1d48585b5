import { declare, sayList } from "../../base/index.ts";

/** A colour that rows name and the table does not have. */
export interface Facts {
  readonly colour: string;
  readonly yarns: readonly string[];
}

export const colourWithoutYarn = declare<Facts>({
  code: "design/colour-without-yarn",
  severity: "warning",
  what: (d) => `The rows are worked in ${d.colour}, and no yarn of the table is called so.`,
  why: (d) => `The table has ${sayList(d.yarns)}. Its yarn is reckoned as ${d.yarns[0]} for the time being.`,
  todo: (d) => [
    `Give a yarn the name ${d.colour}, or write beside it what the rows call it: called: ${d.colour}.`,
  ],
});
