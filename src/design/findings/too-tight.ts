import { declare, inSizes, sayCm } from "../../base/index.ts";

/** A girth that does not reach round the body even when its fabric is pulled out. */
export interface Facts {
  readonly measure: string;
  readonly body: string;
  readonly cases: readonly {
    readonly size: string;
    readonly made: number;
    readonly body: number;
    /** Width pulled out over width at rest, as measured on the swatch. */
    readonly has: number;
  }[];
}

export const tooTight = declare<Facts>({
  code: "design/too-tight",
  severity: "warning",
  what: (d) => `"${d.measure}" is too tight${inSizes(d.cases)}.`,
  why: (d) =>
    d.cases
      .map(
        ({ size, made, body, has }) =>
          `${size}: ${sayCm(made)} made, and the ${d.body} is ${sayCm(body)}; it would have to stretch to ${(body / made).toFixed(2)} times its width, and the swatch stretched to ${has.toFixed(2)}.`,
      )
      .join(" "),
  todo: () => ["Give it more ease.", "Or use a fabric that stretches more."],
});
