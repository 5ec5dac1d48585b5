import { declare } from "../../base/index.ts";

/** Words between the two lines of hyphens that are no table. */
export interface Facts {
  /** What is wrong, as a sentence. */
  readonly problem: string;
}

export const tableNotRead = declare<Facts>({
  code: "design/table-not-read",
  severity: "error",
  what: () => "The table at the head of the design cannot be read here.",
  why: (d) => d.problem,
  todo: () => [
    "Write each entry as a name, a colon, a space and what it is.",
    "Set entries that belong to another in by two spaces, all alike.",
  ],
});
