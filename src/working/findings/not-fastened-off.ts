import { declare } from "../../base/index.ts";

/** A part ends with no word on the yarn, where the other parts are fastened off. */
export interface Facts {
  readonly row: string;
  readonly piece: string;
  /** The part that begins anew behind it; null at the end of the pattern. */
  readonly next: string | null;
  /** Parts that are fastened off. */
  readonly others: number;
}

export const notFastenedOff = declare<Facts>({
  code: "pieces/not-fastened-off",
  severity: "warning",
  what: (d) => `${d.piece || "The work"} ends with ${d.row} and is not fastened off.`,
  why: (d) =>
    `${d.next ? `${d.next} begins with yarn of its own, and ` : ""}${d.others} other parts are fastened off.`,
  todo: (d) => [`Fasten off behind ${d.row}.`, `See whether a row is missing behind ${d.row}.`],
});
