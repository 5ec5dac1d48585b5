import { declare } from "../../base/index.ts";

/** A colour that the rows ask for and the materials do not have. */
export interface Facts {
  /** Name or letter, as the row has it: "B", "cream". */
  readonly colour: string;
}

export const colourNotListed = declare<Facts>({
  code: "materials/colour-not-listed",
  severity: "warning",
  what: (d) => `Colour ${d.colour} is used and not listed.`,
  why: () => "The materials do not have it.",
  todo: (d) => [`Add colour ${d.colour} and its yarn to the materials.`],
});
