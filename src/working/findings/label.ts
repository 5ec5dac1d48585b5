const ROWS = "(?:rows|rnds|rounds)";
const SEVERAL = new RegExp(
  // "Rows 5-12", "Next 4 rows", and sloppy "Row 5 & 6", "R4-6".
  String.raw`^${ROWS}\b|\b${ROWS}(?: \((?:RS|WS)\))?$|^(?:r|row|rnd|round) *\d+ *(?:-|–|&|,|and\b|to\b|thru\b)`,
  "i",
);

/** Picks the verb that goes with a row's label: verb("Row 4", "ends", "end") is "ends", verb("Rows 5-12", ...) is "end". */
export function verb(label: string, one: string, many: string): string {
  return SEVERAL.test(label) ? many : one;
}
