import { declare, inSizes, sayCm } from "../../base/index.ts";

/** A sleeve top and an armhole that cannot be sewn together. */
export interface Facts {
  readonly one: string;
  readonly other: string;
  readonly cases: readonly { readonly size: string; readonly one: number; readonly other: number }[];
}

export const edgeLengthsDiffer = declare<Facts>({
  code: "design/edge-lengths-differ",
  severity: "warning",
  what: (d) => `"${d.one}" and "${d.other}" do not go together${inSizes(d.cases)}.`,
  why: (d) =>
    d.cases.map(({ size, one, other }) => `${size}: ${sayCm(one)} against ${sayCm(other)}.`).join(" "),
  todo: (d) => [
    `Tie the counts of "${d.one}" and "${d.other}" to each other, and choose them anew.`,
    "A sleeve top may be up to 2.5 cm longer than its armhole, and is then eased in; it is never shorter.",
  ],
});
