import type { PerSize } from "../../base/index.ts";
import type { Cm, Share } from "../units.ts";
import type { Expression } from "./expression.ts";

/**
 * A length, and how far it rests on gauges that may be off. Stitches of one fabric are all off together, so what rests on
 * the same gauge adds up before it is squared.
 */
export interface Length {
  readonly cm: Cm;
  /** cm that rest on each gauge, by the name of the gauge. */
  readonly restsOn: ReadonlyMap<string, Cm>;
}

/** A length that rests on no gauge. */
export const exactly = (cm: Cm): Length => ({ cm, restsOn: NOTHING });

const NOTHING: ReadonlyMap<string, Cm> = new Map();

/**
 * How far a length may be off, 19 times of 20.
 *
 * @param shares  standard uncertainty of each gauge as a share; 0 where it is not known
 */
export function plusMinusOf({ restsOn }: Length, shares: ReadonlyMap<string, Share>): Cm {
  let squares = 0;
  for (const [gauge, cm] of restsOn) squares += (cm * (shares.get(gauge) ?? 0)) ** 2;
  return 2 * Math.sqrt(squares);
}

/** Where an expression has its lengths from. */
export interface Lookup {
  /** A measure in a size; null where it is not known. */
  measure(name: string, size: number): Length | null;
  /** So many stitches or rows of a fabric. */
  fabric(fabric: string, of: "stitches" | "rows", count: number): Length | null;
}

/** The length an expression comes to in one size; null where something in it is not known. */
export function lengthOf(expression: Expression, size: number, lookup: Lookup): Length | null {
  const at = (list: PerSize<number>): number => (list.length === 1 ? list[0] : list[size]) ?? 0;
  switch (expression.is) {
    case "length":
      return exactly(at(expression.cm));
    case "number":
      return exactly(at(expression.value));
    case "name":
      return lookup.measure(expression.name, size);
    case "fabric":
      return lookup.fabric(expression.fabric, expression.of, at(expression.count));
    case "times": {
      const what = lengthOf(expression.what, size, lookup);
      return what && timesLength(what, expression.times);
    }
    case "sum": {
      let all = exactly(0);
      for (const { sign, what } of expression.terms) {
        const one = lengthOf(what, size, lookup);
        if (one === null) return null;
        all = addLengths(all, timesLength(one, sign));
      }
      return all;
    }
    case "larger":
    case "smaller": {
      let best: Length | null = null;
      for (const one of expression.of) {
        const length = lengthOf(one, size, lookup);
        if (length === null) return null;
        if (best === null || (expression.is === "larger" ? length.cm > best.cm : length.cm < best.cm))
          best = length;
      }
      return best;
    }
  }
}

export function timesLength({ cm, restsOn }: Length, times: number): Length {
  if (times === 1) return { cm, restsOn };
  return { cm: cm * times, restsOn: new Map([...restsOn].map(([gauge, one]) => [gauge, one * times])) };
}

export function addLengths(a: Length, b: Length): Length {
  if (b.restsOn.size === 0) return { cm: a.cm + b.cm, restsOn: a.restsOn };
  const restsOn = new Map(a.restsOn);
  for (const [gauge, cm] of b.restsOn) restsOn.set(gauge, (restsOn.get(gauge) ?? 0) + cm);
  return { cm: a.cm + b.cm, restsOn };
}
