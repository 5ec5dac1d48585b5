import type { GaugeStatement, Until } from "../notation/index.ts";
import type { PieceWork } from "./piece-work.ts";
import type { Trouble } from "./trouble.ts";

/** A written length may be missed by this much before it is said: swatches are counted to a row, ribs are shorter. */
const LENGTH_SLACK = 1.1;

/** Width of a stitch and height of a row, cm. */
export interface FabricSize {
  readonly stitchCm: number;
  readonly rowCm: number;
}

/** The first whole gauge statement; null where there is none. */
export function fabricSize(gauges: readonly GaugeStatement[]): FabricSize | null {
  for (const gauge of gauges) {
    const stitches = gauge.stitches?.values[0];
    const rows = gauge.rows?.values[0];
    if (gauge.widthCm && gauge.heightCm && stitches && rows)
      return { stitchCm: gauge.widthCm / stitches, rowCm: gauge.heightCm / rows };
  }
  return null;
}

/** The length from the beginning of the piece that rows are worked to, cm; null where it is not told so. */
export function lengthTold(work: PieceWork, until: Until | undefined): number | null {
  if (!until?.measure || until.measure.unit === null || until.from === "other") return null;
  return work.number(until.measure);
}

/**
 * Holds a length to be worked to against the rows worked so far: shaping that is longer already cannot end there.
 * Only where one gauge is written and the rows are known.
 */
export function rowsToMeasure(work: PieceWork, until: Until, troubles: Trouble[]): void {
  const { measure } = until;
  const { gauges } = work.context.tree;
  const whole = gauges.filter((gauge) => gauge.rows && gauge.heightCm);
  const fabric = whole.length === 1 ? fabricSize(gauges) : null;
  const rows = work.state.crossed ? null : work.state.rowsWorked;
  if (!measure || measure.unit === null || until.from === "other" || !fabric || rows === null) return;
  const statedCm = work.number(measure);
  const workedCm = rows * fabric.rowCm;
  if (statedCm !== null && statedCm > 0 && workedCm > statedCm * LENGTH_SLACK + fabric.rowCm)
    troubles.push({
      is: "outside-measure",
      span: until.span,
      workedCm: Math.round(workedCm * 10) / 10,
      statedCm,
    });
}
