import type { PerSize } from "../base/index.ts";
import type { MadePiece, MadeRow, Making } from "../working/index.ts";
import { gramsOf, type Purchase, purchaseOf } from "./buying.ts";
import { CARRY_FACTOR, MOST_CARRIED_ROWS, SEAM_FACTOR, type YarnJob } from "./job.ts";
import { lengthsOf, metresPerGram, type StitchLengths } from "./lengths.ts";
import { MINUTES_AN_END, TURNING_AND_COUNTING, USUAL_PER_MINUTE } from "./time.ts";

/** Metres of one yarn by the two ways; null where a way has nothing to go by. */
export interface TwoWays {
  /** Stitches by kind, times the length of each. */
  readonly byStitch: number | null;
  /** Worked area at the washed gauge, times what the swatch weighs for its area. */
  readonly byArea: number | null;
}

/** What all of one piece takes, "make 2" counted twice. */
export interface PieceYarn {
  readonly name: string;
  readonly times: PerSize<number>;
  /** In the order of the job's yarns. */
  readonly yarns: readonly PerSize<TwoWays>[];
  /** Square centimetres at the washed gauge. */
  readonly areaCm2: PerSize<number | null>;
  readonly hours: PerSize<number | null>;
}

/** What the garment takes of one yarn. */
export interface YarnTotal {
  readonly name: string;
  readonly ways: PerSize<TwoWays>;
  /** Ends, ball joins and yarns carried up the side; sewing. Metres, in what is used. */
  readonly endsMetres: PerSize<number | null>;
  readonly seamMetres: PerSize<number>;
  /** Used: by stitch where that is known, else by area, with ends and seams. */
  readonly metres: PerSize<number | null>;
  readonly grams: PerSize<number | null>;
  readonly buy: PerSize<Purchase>;
}

/** Yarn and time of a design, size by size. */
export interface YarnEstimate {
  readonly pieces: readonly PieceYarn[];
  readonly yarns: readonly YarnTotal[];
  readonly hours: PerSize<number | null>;
  /** Hours of them that go into finishing. */
  readonly finishing: PerSize<number | null>;
  /** No swatch was weighed for some fabric: lengths are by geometry alone. */
  readonly rough: boolean;
  /** No swatch was timed: hours are by the usual speed. */
  readonly roughHours: boolean;
  /** Sections whose rows are not known in some size, so that their piece is not reckoned. */
  readonly unknown: readonly { readonly piece: string; readonly section: string; readonly size: number }[];
  readonly lengths: StitchLengths;
}

/** What one copy of a piece takes in one size. */
interface PieceTake {
  readonly cm: number[];
  /** Grams by area; a fabric without a weighed swatch makes them unknown. */
  readonly grams: (number | null)[];
  readonly endsCm: number[];
  area: number;
  minutes: number;
  ends: number;
  unknown: MadeRow | null;
}

/** Works out yarn and time. Numbers in, numbers out; what is not known is null. */
export function estimateYarn(job: YarnJob): YarnEstimate {
  const lengths = lengthsOf(job);
  const rates = ratesOf(job, lengths);
  const takes = job.makings.map(({ made }) =>
    made.map((piece) => piece && takeOf(job, lengths, rates, piece)),
  );
  const sizes = Array.from({ length: job.sizes }, (_, size) => size);
  const pieces = job.makings.map((making, at) => pieceYarn(job, making, takes[at] ?? []));
  const unknown = job.makings.flatMap(({ name }, at) =>
    (takes[at] ?? []).flatMap((take, size) =>
      take?.unknown ? [{ piece: name, section: take.unknown.section, size }] : [],
    ),
  );
  const sumOver = (size: number, value: (take: PieceTake) => number | null): number | null => {
    let sum = 0;
    for (const [at, { times }] of job.makings.entries()) {
      const take = takes[at]?.[size];
      if (!take) continue;
      const one = take.unknown ? null : value(take);
      if (one === null) return null;
      sum += one * (times[size] ?? 1);
    }
    return sum;
  };
  const ends = sizes.map((size) => sumOver(size, (take) => take.ends));
  const yarns = job.yarns.map((yarn, at): YarnTotal => {
    const ways = sizes.map(
      (size): TwoWays => ({
        byStitch: metres(sumOver(size, (take) => take.cm[at] ?? 0)),
        byArea: toMetres(
          sumOver(size, (take) => take.grams[at] ?? (take.cm[at] ? null : 0)),
          yarn,
        ),
      }),
    );
    const seamMetres = sizes.map((size) => (at === 0 ? (SEAM_FACTOR * (job.seamsCm?.[size] ?? 0)) / 100 : 0));
    const endsMetres = sizes.map((size) => {
      const own = sumOver(size, (take) => take.endsCm[at] ?? 0);
      const used = ways[size]?.byStitch ?? ways[size]?.byArea ?? null;
      if (own === null || used === null) return null;
      // A new ball begins wherever one ends: two more ends.
      const joins = yarn.metres === null ? 0 : Math.floor(used / yarn.metres);
      return (own + joins * 2 * job.tailCm) / 100;
    });
    const used = sizes.map((size) => {
      const way = ways[size];
      const worked = way?.byStitch ?? way?.byArea ?? null;
      const hanging = endsMetres[size] ?? null;
      return worked === null || hanging === null ? null : worked + hanging + (seamMetres[size] ?? 0);
    });
    return {
      name: yarn.name,
      ways,
      endsMetres,
      seamMetres,
      metres: used,
      grams: used.map((one) => (one === null ? null : gramsOf(one, yarn))),
      buy: used.map((one) => purchaseOf(one, yarn, job.safety)),
    };
  });
  const finishing = ends.map((count) =>
    job.finishing === null ? (count === null ? null : (count * MINUTES_AN_END) / 60) : job.finishing / 60,
  );
  return {
    pieces,
    yarns,
    finishing,
    hours: sizes.map((size) => {
      const making = sumOver(size, (take) => take.minutes / 60);
      const after = finishing[size] ?? null;
      return making === null || after === null ? null : making + after;
    }),
    rough: lengths.weighed.length === 0 || usedFabrics(job).some((fabric) => !lengths.weighed[fabric]),
    roughHours: rates.rough,
    unknown,
    lengths,
  };
}

const metres = (cm: number | null): number | null => (cm === null ? null : cm / 100);

const toMetres = (
  grams: number | null,
  yarn: { readonly metres: number | null; readonly grams: number | null },
): number | null =>
  grams === null || yarn.metres === null || yarn.grams === null ? null : (grams * yarn.metres) / yarn.grams;

function usedFabrics(job: YarnJob): readonly number[] {
  const used = new Set<number>();
  for (const { made } of job.makings)
    for (const piece of made) for (const row of piece?.rows ?? []) used.add(job.fabricOf(row));
  return [...used];
}

function pieceYarn(
  job: YarnJob,
  { name, times, made }: Making,
  takes: readonly (PieceTake | null)[],
): PieceYarn {
  const each = <T>(value: (take: PieceTake, times: number) => T): (T | null)[] =>
    made.map((_, size) => {
      const take = takes[size];
      return !take || take.unknown ? null : value(take, times[size] ?? 1);
    });
  return {
    name,
    times,
    yarns: job.yarns.map((yarn, at) =>
      made.map((_, size): TwoWays => {
        const take = takes[size];
        if (!take || take.unknown) return { byStitch: null, byArea: null };
        const count = times[size] ?? 1;
        const cm = (take.cm[at] ?? 0) * count;
        const grams = take.grams[at] ?? (cm === 0 ? 0 : null);
        return { byStitch: cm / 100, byArea: toMetres(grams === null ? null : grams * count, yarn) };
      }),
    ),
    areaCm2: each((take, count) => take.area * count),
    hours: each((take, count) => (take.minutes * count) / 60),
  };
}

/* --------------------------------------------------------------------- time */

interface Rates {
  /** Minutes a stitch of the fabric's count. */
  readonly minutes: readonly number[];
  readonly rough: boolean;
}

/** Minutes for a stitch of each fabric, from swatches that were timed; a fabric that was not goes at the same yarn an hour. */
function ratesOf(job: YarnJob, lengths: StitchLengths): Rates {
  const usual = TURNING_AND_COUNTING / USUAL_PER_MINUTE;
  let [minutes, cm] = [0, 0];
  const perStitch = job.fabrics.map((fabric, at) => cmPerStitch(lengths, at) ?? fabric.stitchCm ?? 1);
  const own = job.fabrics.map(({ swatches }, at) => {
    const timed = swatches.filter((swatch) => swatch.minutes !== null);
    const stitches = timed.reduce((sum, one) => sum + one.stitches * one.rows, 0);
    const spent = timed.reduce((sum, one) => sum + (one.minutes ?? 0), 0);
    minutes += spent;
    cm += stitches * (perStitch[at] ?? 0);
    return stitches === 0 ? null : spent / stitches;
  });
  if (cm === 0) return { minutes: job.fabrics.map(() => usual), rough: true };
  return {
    minutes: own.map((rate, at) => rate ?? (minutes / cm) * (perStitch[at] ?? 0)),
    rough: false,
  };
}

function cmPerStitch(lengths: StitchLengths, fabric: number): number | null {
  let cm = 0;
  for (const [kind, share] of lengths.mixes[fabric] ?? []) cm += share * (lengths.of(kind, fabric) ?? 0);
  return cm > 0 ? cm : null;
}

/* -------------------------------------------------------------------- pieces */

function takeOf(job: YarnJob, lengths: StitchLengths, rates: Rates, piece: MadePiece): PieceTake {
  const none = (): number[] => job.yarns.map(() => 0);
  const take: PieceTake = {
    cm: none(),
    grams: none(),
    endsCm: none(),
    area: 0,
    minutes: 0,
    ends: 0,
    unknown: null,
  };
  const begin = (yarn: number): void => {
    take.endsCm[yarn] = (take.endsCm[yarn] ?? 0) + 2 * job.tailCm;
    take.ends += 2;
  };
  const first = piece.rows[0];
  const firstFabric = first ? job.fabricOf(first) : 0;
  for (const { kind, colour, count } of piece.chains) {
    const yarn = job.yarnOf(colour, firstFabric);
    take.cm[yarn] = (take.cm[yarn] ?? 0) + count * (lengths.of(kind, firstFabric) ?? 0);
    take.minutes += count * (rates.minutes[firstFabric] ?? 0);
    begin(yarn);
  }
  /** Row after which each yarn was last in work, and the row's end. */
  const seen = new Map<number, number>();
  let [rowsSoFar, heightCm] = [0, 0];
  let hand: number | null =
    piece.chains.length > 0 ? job.yarnOf(piece.chains[0]?.colour ?? null, firstFabric) : null;
  if (hand !== null) seen.set(hand, 0);
  for (const row of piece.rows) {
    const fabric = job.fabricOf(row);
    const stitchCm = job.fabrics[fabric]?.stitchCm ?? null;
    const rowCm = lengths.rowCm[fabric] ?? null;
    const rows = row.rows ?? rowsTo(row.untilCm, heightCm, rowCm);
    if (row.stitches === null || rows === null || stitchCm === null || rowCm === null) {
      take.unknown ??= row;
      continue;
    }
    const cells = rows * row.stitches;
    const byYarn = new Map<number, number>();
    for (const { kind, colour, count } of row.made) {
      const yarn = job.yarnOf(colour, fabric);
      const cm = rows * count * (lengths.of(kind, fabric) ?? 0);
      byYarn.set(yarn, (byYarn.get(yarn) ?? 0) + cm);
    }
    const all = [...byYarn.values()].reduce((sum, cm) => sum + cm, 0);
    const perCell = gramsPerStitch(job, fabric);
    for (const [yarn, cm] of byYarn) {
      take.cm[yarn] = (take.cm[yarn] ?? 0) + cm;
      const before = take.grams[yarn] ?? null;
      const share = all === 0 ? 0 : cm / all;
      // Grams of the fabric's own yarn, made into grams of this one by their lengths.
      take.grams[yarn] =
        before === null || perCell === null
          ? null
          : before + cells * perCell * share * weightOf(job, yarn, fabric);
      const last = seen.get(yarn);
      if (row.begins && yarn === [...byYarn.keys()][0]) begin(yarn);
      else if (last === undefined || (yarn !== hand && rowsSoFar - last > MOST_CARRIED_ROWS)) begin(yarn);
      else if (yarn !== hand && byYarn.size === 1)
        take.endsCm[yarn] = (take.endsCm[yarn] ?? 0) + CARRY_FACTOR * rowCm * (rowsSoFar - last);
      seen.set(yarn, rowsSoFar + rows);
      hand = yarn;
    }
    take.area += cells * stitchCm * rowCm;
    take.minutes += cells * (rates.minutes[fabric] ?? 0);
    rowsSoFar += rows;
    heightCm += rows * rowCm;
  }
  return take;
}

/** Rows up to a length of the piece; one at least, since it was told. */
function rowsTo(untilCm: number | null, beforeCm: number, rowCm: number | null): number | null {
  if (untilCm === null || rowCm === null) return null;
  return Math.max(1, Math.round((untilCm - beforeCm) / rowCm));
}

/** Grams that one stitch of the count weighs in a fabric, from all its weighed swatches; null without one. */
function gramsPerStitch(job: YarnJob, fabric: number): number | null {
  let [grams, stitches] = [0, 0];
  for (const swatch of job.fabrics[fabric]?.swatches ?? []) {
    if (swatch.grams === null) continue;
    grams += swatch.grams;
    stitches += swatch.stitches * swatch.rows;
  }
  return stitches === 0 ? null : grams / stitches;
}

/** Grams of this yarn for a gram of the one the swatch was made in, at the same length. */
function weightOf(job: YarnJob, yarn: number, fabric: number): number {
  const own = job.fabrics[fabric] ? metresPerGram(job, job.fabrics[fabric]) : null;
  const { metres: length, grams } = job.yarns[yarn] ?? { metres: null, grams: null };
  return own === null || !length || !grams ? 1 : (own * grams) / length;
}
