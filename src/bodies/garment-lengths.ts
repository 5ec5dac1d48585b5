import { LENGTH_ROWS } from "./data/charts.ts";
import type { Cm } from "./measurement.ts";
import type { Population, Status } from "./rows.ts";

/** Where a garment of a named length ends. */
export interface GarmentLength {
  readonly population: Population;
  readonly length: string;
  /** What the drop is measured from, in words. */
  readonly from: string;
  readonly drop: Cm;
  readonly inches: number;
  readonly status: Status;
  readonly note?: string;
}

/** Named lengths of tops with how far below the waist they end; men's are printed as the length to the hip itself. */
export function garmentLengths(): GarmentLength[] {
  return LENGTH_ROWS.map(([population, length, from, inches, drop, status, note]) => ({
    population,
    length,
    from,
    drop,
    inches,
    status,
    ...(note === undefined ? {} : { note }),
  }));
}
