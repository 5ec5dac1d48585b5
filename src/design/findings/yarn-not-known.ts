import { declare } from "../../base/index.ts";

/** What keeps the yarn from being told. */
export interface Facts {
  readonly missing: readonly string[];
}

export const yarnNotKnown = declare<Facts>({
  code: "design/yarn-not-known",
  severity: "note",
  what: () => "The yarn cannot be told in full.",
  why: (d) => d.missing.join(" "),
  todo: () => ["Give what is missing, to have the yarn of every size."],
});
