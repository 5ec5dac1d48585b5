import { HEAD_ROWS } from "./data/charts.ts";
import type { Cm } from "./measurement.ts";
import type { Status } from "./rows.ts";

/** Girth of a head, or of a hat, as one source gives it. */
export interface HeadSize {
  readonly who: string;
  readonly min: Cm;
  readonly max: Cm;
  readonly inches: { readonly min: number; readonly max: number };
  /** A table of hats has its negative ease taken off already; taking it off again makes a tight hat. */
  readonly kind: "head" | "hat";
  readonly source: string;
  readonly status: Status;
}

/**
 * Heads and hats by age, source by source. The council's older booklet calls its numbers heads; measured against people
 * its woman and man are hats, and stand here as such.
 */
export function headSizes(): HeadSize[] {
  return HEAD_ROWS.map(([who, inMin, inMax, min, max, kind, source, status]) => ({
    who,
    min,
    max,
    inches: { min: inMin, max: inMax },
    kind: source === "cyc" ? "hat" : kind,
    source,
    status,
  }));
}
