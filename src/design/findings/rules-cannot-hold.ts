import { declare, sayList } from "../../base/index.ts";

/** Rules of counts that no numbers keep. */
export interface Facts {
  readonly rules: readonly { readonly words: string; readonly line: number }[];
  /** Whether leaving out any one of them lets the others hold. */
  readonly tight: boolean;
}

export const rulesCannotHold = declare<Facts>({
  code: "design/rules-cannot-hold",
  severity: "error",
  what: (d) =>
    `${d.rules.length === 1 ? "One rule" : `${d.rules.length} rules`} cannot hold, whatever the counts.`,
  why: (d) => {
    const rules = d.rules.map(({ words, line }) => `${words} (line ${line})`);
    return `${d.rules.length === 1 ? "It is" : "They are"}: ${sayList(rules)}.`;
  },
  todo: (d) => [
    d.rules.length === 1
      ? "Change it."
      : d.tight
        ? "Change or take out any one of them; the others then hold together."
        : "Change or take out one of them.",
  ],
});
