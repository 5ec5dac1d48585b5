import { declare, inSizes } from "../../base/index.ts";

/** Counts as written that do not keep a rule of their own. */
export interface Facts {
  readonly count: string;
  /** The rule in the designer's own words, as a sentence without its full stop. */
  readonly rule: string;
  /** What is written in each size at fault, and what the rule's sum comes to there. */
  readonly cases: readonly { readonly size: string; readonly written: number; readonly off: number | null }[];
}

export const countBreaksRule = declare<Facts>({
  code: "design/count-breaks-rule",
  severity: "error",
  what: (d) => `"${d.count}" breaks its rule${inSizes(d.cases)}: ${d.rule}.`,
  why: (d) =>
    d.cases
      .map(({ size, written, off }) => {
        const miss =
          off === null ? "" : `, ${Math.round(Math.abs(off) * 100) / 100} too ${off > 0 ? "many" : "few"}`;
        return `${size}: ${written} is written${miss}.`;
      })
      .join(" "),
  todo: () => ["Choose all counts anew: loopwright grade.", "Or change the rule."],
});
