import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { tableNotRead } from "./table-not-read.ts";

it("says what, why and what to do", () =>
  expect(said(tableNotRead, { problem: "This bracket is never closed." })).toEqual([
    "The table at the head of the design cannot be read here.",
    "This bracket is never closed.",
    "Write each entry as a name, a colon, a space and what it is.",
    "Set entries that belong to another in by two spaces, all alike.",
  ]));
