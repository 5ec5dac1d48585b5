import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { missesPlan } from "./misses-plan.ts";

it("says what, why and what to do", () =>
  expect(said(missesPlan, { measure: "bust", cases: [{ size: "M", wanted: 109, made: 115.7 }] })).toEqual([
    '"bust" misses the plan by more than half a size in size M.',
    "M: 115.7 cm made, 109 cm wanted.",
    "Choose all counts anew: loopwright grade.",
    "Or use a smaller repeat, or another ease.",
  ]));
