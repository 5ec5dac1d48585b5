import { declare } from "../../base/index.ts";

/** An entry of the table that means nothing here. */
export interface Facts {
  readonly entry: string;
  /** The entry it stands under; null at the top. */
  readonly under: string | null;
  /** The known entry it may be a slip for. */
  readonly near: string | null;
}

export const entryUnknown = declare<Facts>({
  code: "design/entry-unknown",
  severity: "note",
  what: (d) => `"${d.entry}" is no entry that is known${d.under === null ? "" : ` under ${d.under}`}.`,
  why: () => "It is kept as it stands and changes nothing.",
  todo: (d) => [
    ...(d.near === null ? [] : [`Write "${d.near}", if that is meant.`]),
    "Leave it, if it is a note of your own.",
  ],
});
