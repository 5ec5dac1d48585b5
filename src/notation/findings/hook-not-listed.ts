import { declare } from "../../base/index.ts";

/** A hook that the rows ask for and the materials do not have. */
export interface Facts {
  /** Its size: "4 mm", or the number alone. */
  readonly mm: string;
}

const hook = (mm: string) => `${mm.replace(/ *mm$/i, "")} mm hook`;

export const hookNotListed = declare<Facts>({
  code: "materials/hook-not-listed",
  severity: "warning",
  what: (d) => `The ${hook(d.mm)} is used and not listed.`,
  why: () => "The materials do not have it.",
  todo: (d) => [`Add the ${hook(d.mm)} to the materials.`],
});
