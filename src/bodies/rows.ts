import type { Cm, Measurement } from "./measurement.ts";

/** Whose chart: women's, men's, or one of the three for children. */
export type Population = "women" | "men" | "youth" | "child" | "baby";

/**
 * How well a printed number is known: seen in two places, in one public copy and recalled independently, in one place,
 * only remembered, computed from measured people, carried on past the last measured person, or usual in the trade without
 * a source.
 */
export type Status =
  | "two"
  | "copy-and-memory"
  | "one-copy"
  | "one"
  | "memory"
  | "measured"
  | "carried on"
  | "common practice";

// The tables of data/bodies as they are compiled in, one tuple a row; the note is left out where there is none.

export type SizeRow = readonly [
  population: Population,
  size: string,
  measurement: Measurement,
  inMin: number | null,
  inMax: number | null,
  cmMin: Cm,
  cmMax: Cm,
  status: Status,
  note?: string,
];

export type EaseRow = readonly [
  source: string,
  word: string,
  least: number | null,
  most: number | null,
  unit: "cm" | "in" | "percent",
  status: Status,
  note?: string,
];

export type GarmentEaseRow = readonly [
  garment: string,
  measurement: Measurement,
  leastCm: Cm,
  mostCm: Cm,
  status: Status,
];

export type LengthRow = readonly [
  population: Population,
  length: string,
  from: string,
  dropIn: number,
  dropCm: Cm,
  status: Status,
  note?: string,
];

export type HeadRow = readonly [
  who: string,
  inMin: number,
  inMax: number,
  cmMin: Cm,
  cmMax: Cm,
  kind: "head" | "hat",
  source: string,
  status: Status,
];

export type LetterRow = readonly [
  letters: string,
  chestMin: Cm,
  chestMax: Cm,
  bustMin: Cm,
  bustMax: Cm,
  statusMen: Status,
  statusWomen: Status,
];
