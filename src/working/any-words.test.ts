import { array, assert, constantFrom, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { readPattern } from "../notation/index.ts";
import { workPattern } from "./work-pattern.ts";

const STEPS = (
  "ch 1|sc in each st across|2 sc in next st|*sc in next st, ch 1|rep from * across|turn|join|skip next 2 sts|dc in ring|(sc, ch 2, sc) in corner sp|" +
  "sc2tog|leave rem sts unworked|sl st in next 3 sts|in same st|rep from * 3 more times|in next ch-2 sp|fasten off|Rep last 2 rows|dec 1 st each end|" +
  "Rep Rows 1 and 2|work even for 4 rows|as for Back|join yarn in first st|sc evenly around|12 sts|until piece measures 10 cm|FPdc around next st"
).split("|");
const LABELS = [
  "Row 1:",
  "Row 2 (RS):",
  "Row 3:",
  "Rows 4-7:",
  "Rnd 1.",
  "Next row:",
  "Sleeve",
  "Back",
  "Border",
  "Ch 20.",
  "Ch 4, join.",
];

describe("steps in any order", () => {
  it("are worked to an end, whatever they come to", () => {
    assert(
      property(
        array(array(constantFrom(...STEPS), { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 12 }),
        array(constantFrom(...LABELS), { minLength: 12, maxLength: 12 }),
        (rows, labels) => {
          const text = rows.map((steps, at) => `${labels[at]} ${steps.join(", ")}.`).join("\n");
          const worked = workPattern(readPattern(text));
          for (const piece of worked.pieces)
            for (const line of piece.lines)
              expect(line.stitches.every((sts) => sts === null || sts >= 0)).toBe(true);
        },
      ),
      { numRuns: 100 },
    );
  });
});
