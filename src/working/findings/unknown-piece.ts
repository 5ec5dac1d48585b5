import { declare } from "../../base/index.ts";

/** "Work as for Left Front" where no heading has that name. */
export interface Facts {
  readonly row: string;
  /** The piece asked for, as written. */
  readonly asked: string;
}

export const unknownPiece = declare<Facts>({
  code: "pieces/unknown-piece",
  severity: "warning",
  what: (d) => `${d.asked} is named at ${d.row} and is no piece of this pattern.`,
  why: (d) => `No heading above reads "${d.asked}".`,
  todo: () => ["Name the piece as its heading does.", "Write the piece, or move it above."],
});
