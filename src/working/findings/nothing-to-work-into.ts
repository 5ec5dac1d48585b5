import { capital, declare } from "../../base/index.ts";
import { verb } from "./label.ts";

/** A place that is named and that the row below does not have. */
export interface Facts {
  readonly row: string;
  /** "ch-2 space", "post", "free loop", "marked stitch". */
  readonly place: string;
  readonly before: string;
  /** The clause at fault, as written. */
  readonly words: string;
}

export const nothingToWorkInto = declare<Facts>({
  code: "rows/nothing-to-work-into",
  severity: "error",
  what: (d) => `${d.row} ${verb(d.row, "finds", "find")} no ${d.place} for "${d.words}".`,
  why: (d) => `${capital(d.before)} ${verb(d.before, "has", "have")} no ${d.place} from here on.`,
  todo: (d) => [
    `Name a place that ${d.before} has.`,
    `Change ${d.before} so that ${/^[aeiou]/i.test(d.place) ? "an" : "a"} ${d.place} stands here.`,
  ],
});
