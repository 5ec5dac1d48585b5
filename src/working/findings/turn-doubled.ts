import { declare } from "../../base/index.ts";

/** A turn at the end of one row and again at the start of the next. */
export interface Facts {
  readonly row: string;
  readonly before: string;
}

export const turnDoubled = declare<Facts>({
  code: "rows/turn-doubled",
  severity: "warning",
  what: (d) => `The turn between ${d.before} and ${d.row} is written twice.`,
  why: () => "Two turns bring the same side to the front again; they are read as one.",
  todo: (d) => [`Take "turn" out at the end of ${d.before} or at the start of ${d.row}.`],
});
