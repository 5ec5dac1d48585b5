import { declare, sayCm } from "../../base/index.ts";

/** Shoulders that do not grow as backs do. */
export interface Facts {
  readonly measure: string;
  /** How far the armhole seam falls below the shoulder bone on each side; below zero it sits on the shoulder. */
  readonly cases: readonly { readonly size: string; readonly drop: number }[];
}

export const shoulderOff = declare<Facts>({
  code: "design/shoulder-off",
  severity: "note",
  what: (d) => `The shoulder falls otherwise in other sizes, by "${d.measure}".`,
  why: (d) =>
    `On each side the seam lies beyond the shoulder by ${d.cases.map(({ size, drop }) => `${sayCm(drop)} in ${size}`).join(", ")}.`,
  todo: () => [
    "Let the width across the shoulders follow the cross back, which grows far less than the bust.",
    "Or answer it as meant: larger sizes of a dropped shoulder drop further.",
  ],
});
