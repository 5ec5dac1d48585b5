import { declare } from "../../base/index.ts";

/** A stitch pattern told without a width, worked on a sample. */
export interface Facts {
  /** "Fan pattern", or "This stitch pattern". */
  readonly name: string;
  /** "a multiple of 6 + 1"; null where no rule is told. */
  readonly rule: string | null;
  readonly wide: number;
  readonly unit: "ch" | "sts";
  readonly repeats: number | null;
  /** The second sample, that confirms the first. */
  readonly wider: number | null;
}

export const sampleWidth = declare<Facts>({
  code: "rows/sample-width",
  severity: "note",
  what: (d) => `The counts of ${d.name} are those of a sample ${d.wide} ${d.unit} wide.`,
  why: (d) =>
    d.rule === null
      ? "The text says neither how many stitches it is worked over nor a multiple of how many."
      : `The text gives ${d.rule} and no number. The rows are worked on ${d.repeats} repeats${
          d.wider === null ? "" : `, and again on ${d.wider} ${d.unit}`
        }.`,
  todo: (d) => [
    d.rule === null
      ? "Say over a multiple of how many stitches it is worked."
      : "Leave it, if it is meant for any width.",
  ],
});
