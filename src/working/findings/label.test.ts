import { expect, it } from "vitest";
import { verb } from "./label.ts";

it.each(["Row 4", "Row 4 (RS)", "Rnd 12", "R4", "Foundation", "Next row", "Inc row", "2nd row"])(
  "%s ends",
  (label) => expect(verb(label, "ends", "end")).toBe("ends"),
);

it.each([
  "Rows 5-12",
  "Rows 3 and 4 (RS)",
  "Rnds 2-5",
  "Next 4 rows",
  "Next 4 rows (WS)",
  "Row 5 & 6",
  "R4-6",
  "Rnd 9 thru 11",
])("%s end", (label) => expect(verb(label, "ends", "end")).toBe("end"));
