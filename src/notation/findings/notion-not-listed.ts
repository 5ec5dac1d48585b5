import { capital, declare } from "../../base/index.ts";

/** A button, a zip or another notion that the rows ask for and the materials do not have. */
export interface Facts {
  /** As the text names it, in the plural where more than one can be needed: "buttons", "stitch markers". */
  readonly notion: string;
}

export const notionNotListed = declare<Facts>({
  code: "materials/notion-not-listed",
  severity: "warning",
  what: (d) => `Notion used and not listed: ${d.notion}.`,
  why: () => "The materials do not have it.",
  todo: (d) => [`Add to the materials: ${capital(d.notion)}.`],
});
