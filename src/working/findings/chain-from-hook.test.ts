import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { chainFromHook } from "./chain-from-hook.ts";

it("counts the chain", () =>
  expect(said(chainFromHook, { row: "Row 1", nth: 4, chains: 3 })).toEqual([
    "Row 1 begins beyond the end of the chain.",
    "The chain has 3 ch, and the row begins in the 4th ch from hook.",
    "Make a chain of at least 4 ch.",
    "Begin in a chain nearer to the hook.",
  ]));
