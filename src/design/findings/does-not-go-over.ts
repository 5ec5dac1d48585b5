import { declare, inSizes, sayCm } from "../../base/index.ts";

/** An opening that what it is for does not go through. */
export interface Facts {
  readonly opening: string;
  /** What has to go through it: head, hand. */
  readonly body: string;
  readonly cases: readonly {
    readonly size: string;
    /** Round the opening at rest, and pulled out; null where its fabric was not measured pulled out. */
    readonly rest: number;
    readonly stretched: number | null;
    readonly needs: number;
  }[];
}

export const doesNotGoOver = declare<Facts>({
  code: "design/does-not-go-over",
  severity: "warning",
  what: (d) => `The ${d.body} does not go through "${d.opening}"${inSizes(d.cases)}.`,
  why: (d) =>
    d.cases
      .map(({ size, rest, stretched, needs }) => {
        const pulled =
          stretched === null
            ? ", and how far it stretches was not measured"
            : `, ${sayCm(stretched)} pulled out`;
        return `${size}: ${sayCm(rest)} round${pulled}; the ${d.body} is ${sayCm(needs)}.`;
      })
      .join(" "),
  todo: (d) => [
    "Make the opening larger.",
    `Or measure a swatch of its fabric pulled out, and write it behind stretched.`,
    `Or leave it open: a placket or a button${d.body === "head" ? " at the neck" : ""} needs no such room.`,
  ],
});
