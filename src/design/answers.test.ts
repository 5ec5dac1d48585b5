import { describe, expect, it } from "vitest";
import { proveDesign } from "./prove.ts";

// The rows are our own; the counts follow from the stitches one by one.
const HEAD = `Note: Ch 1 does not count as a st throughout.

Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. 10 sts.
`;
const prove = (rows: string) => proveDesign(HEAD + rows);
const codes = (rows: string) => prove(rows).findings.map((finding) => finding.code);

describe("an answer that something is meant", () => {
  it("closes the finding of its row, on the same line or the next", () => {
    for (const between of [" ", "\n"]) {
      const proof = prove(
        `Row 2: Ch 1, sc in next 9 sts, turn.${between}(As meant: the last stitch is left for the band.)\n`,
      );
      expect(proof.findings).toEqual([]);
      expect(proof.answered.map((each) => each.finding.code)).toEqual(["rows/stitches-left-over"]);
      expect(proof.answered[0]?.answer.reason).toBe("the last stitch is left for the band.");
    }
  });

  it("closes only the code it names", () =>
    expect(
      codes(
        "Row 2: Ch 1, sc in next 9 sts, turn. (As meant, rows/count-differs: the edge stitch is not counted.)\n",
      ),
    ).toEqual(["rows/stitches-left-over", "answers/matches-nothing"]));

  it("leaves the findings of other rows open", () =>
    expect(
      codes(
        "Row 2: Ch 1, sc in next 9 sts, turn. (As meant: for the band.)\nRow 3: Ch 1, sc in next 8 sts, turn.\n",
      ),
    ).toEqual(["rows/stitches-left-over"]));

  it("keeps with its stamp while the row stays as it was, and opens again when the row changes", () => {
    const row = "Row 2: Ch 1, sc in next 9 sts, turn. (As meant: for the band.)\n";
    const edit = prove(row).unstamped[0]?.edit;
    const text = HEAD + row;
    const stamped = text.slice(0, edit?.span.from) + edit?.text + text.slice(edit?.span.to);
    expect(proveDesign(stamped).findings).toEqual([]);
    expect(proveDesign(stamped).unstamped).toEqual([]);
    const changed = stamped.replace("sc in next 9 sts", "sc in next 8 sts");
    expect(proveDesign(changed).findings.map((finding) => finding.code)).toEqual([
      "rows/stitches-left-over",
      "answers/reopened",
    ]);
    // A row further up that changes what this row meets opens it as well.
    const upstream = stamped.replace("Ch 11.", "Ch 12.").replace("turn. 10 sts.", "turn. 11 sts.");
    expect(proveDesign(upstream).findings.map((finding) => finding.code)).toContain("answers/reopened");
  });
});

describe("a row the designer vouches for", () => {
  const rows =
    "Row 2: Zigzag the hook thrice over the moon, turn. (Vouched, 10 sts: the chart shows this row.)\nRow 3: Ch 1, sc in each st across, turn. 10 sts.\n";

  it("goes on from the count it states, and is told as vouched", () => {
    const proof = prove(rows);
    expect(proof.findings).toEqual([]);
    expect(proof.vouched.map((each) => each.row)).toEqual(["Row 2"]);
  });

  it("does not hide a wrong count after it", () =>
    expect(codes(rows.replace("turn. 10 sts.\n", "turn. 12 sts.\n"))).toEqual(["rows/count-differs"]));
});
