import { type FabricPattern, type FabricRow, isPlain, type Whole } from "./fabric.ts";

/** "{notch sts}", "3", "{notch sts + 1}". */
export function say({ count, plus = 0 }: Whole, more = 0): string {
  const all = plus + more;
  if (count === undefined) return String(all);
  return all === 0 ? `{${count}}` : `{${count} ${all < 0 ? "-" : "+"} ${Math.abs(all)}}`;
}

export const count = (name: string, plus = 0): Whole => ({ count: name, plus });

/** How far a row goes. */
export type Reach =
  | { readonly to: "end" }
  /** Stops before the last stitches. */
  | { readonly to: "last"; readonly left: Whole }
  /** Over so many from where the work stands: in a plain row stitches, else repeats. */
  | { readonly to: "many"; readonly stitches: Whole; readonly repeats: Whole };

const END: Reach = { to: "end" };

/** The stitches of a row as they are written, from the first one to where it stops, without turning chain and turn. */
export function stitchesOf({ stitches }: FabricRow, reach: Reach): string {
  if (isPlain(stitches)) {
    const stitch = stitches.loops ? `${stitches.plain} ${stitches.loops}` : stitches.plain;
    if (reach.to === "end") return `${stitch} in each st across`;
    if (reach.to === "last") return `${stitch} in each st to last ${say(reach.left)} sts`;
    return `${stitch} in each of next ${say(reach.stitches)} sts`;
  }
  const { before, unit, after } = stitches;
  const head = before === undefined ? "" : `${before}, `;
  if (reach.to === "many")
    return `${head}(${unit}) ${say(reach.repeats)} times${after ? `, ${asNext(after.words)}` : ""}`;
  if (reach.to === "last")
    return `${head}*${unit}; rep from * to last ${say(reach.left, after?.takes ?? 0)} sts${after ? `, ${asNext(after.words)}` : ""}`;
  if (after === undefined) return `${head}*${unit}; rep from * across`;
  const left = after.edge
    ? `${say(after.edge, after.takes)} sts`
    : after.takes === 1
      ? "st"
      : `${after.takes} sts`;
  return `${head}*${unit}; rep from * to last ${left}, ${after.words}`;
}

/** Where stitches are left behind it, what was the last of a row is the next. */
const asNext = (words: string): string => words.replace(/\blast\b/g, "next");

/** "Ch 1, sc in each st across, turn." */
export function rowWords(row: FabricRow, reach: Reach = END): string {
  return `Ch ${row.chains}, ${stitchesOf(row, reach)}, turn${leaving(reach)}.`;
}

/** A row that begins after stitches which are slipped over; the chain then stands beside the first stitch worked. */
export function rowAfterSlips(row: FabricRow, slipped: Whole, reach: Reach = END): string {
  const words = stitchesOf(row, reach).replace(/\bfirst (\d+ sts|st)\b/, "next $1");
  return `Sl st in each of first ${say(slipped)} sts, ch ${row.chains}, ${words}, turn${leaving(reach)}.`;
}

const leaving = (reach: Reach): string =>
  reach.to === "last" ? `, leaving these ${say(reach.left)} sts unworked` : "";

/** The first row after yarn was joined in its first stitch, over a part of the edge. */
export function rowFromJoin(row: FabricRow, reach: Reach & { readonly to: "many" }): string {
  const { stitches } = row;
  if (isPlain(stitches)) {
    const stitch = stitches.loops ? `${stitches.plain} ${stitches.loops}` : stitches.plain;
    return `Ch ${row.chains}, ${stitch} in same st as joining, ${stitch} in each of next ${say(reach.stitches, -1)} sts, turn.`;
  }
  const { before, unit, after } = stitches;
  const first = inJoin(before ?? unit);
  const repeats = `(${unit}) ${say(reach.repeats, before === undefined ? -1 : 0)} times`;
  return `Ch ${row.chains}, ${first}, ${repeats}${after ? `, ${asNext(after.words)}` : ""}, turn.`;
}

/** "hdc in each of first 3 sts" begins with "hdc in same st as joining, hdc in each of next 2 sts". */
function inJoin(words: string): string {
  return words.replace(
    /^(\S+(?: BLO)?) (in|around) (?:(?:first|next) st|each of (?:first|next) (\d+) sts)/,
    (_, stitch: string, at: string, many?: string) => {
      const rest = many === undefined ? 0 : Number(many) - 1;
      const more =
        rest === 0 ? "" : `, ${stitch} ${at} ${rest === 1 ? "next st" : `each of next ${rest} sts`}`;
      return `${stitch} ${at} same st as joining${more}`;
    },
  );
}

/** The row of a fabric that stands in a row number of a section, from 1. */
export function fabricRow({ rows }: FabricPattern, number: number): FabricRow {
  return rows[(number - 1) % rows.length] as FabricRow;
}

/** "Row 1", "Rows 1 and 2", "Rows 1-4". */
export function rowsNamed(from: number, to: number): string {
  if (from === to) return `Row ${from}`;
  return to === from + 1 ? `Rows ${from} and ${to}` : `Rows ${from}-${to}`;
}

/** The label of rows that are told together: "Row 3 (WS)", "Rows 3 and 4", "Rows 3-6". */
export const rowsFrom = (from: number, to: number): string =>
  from === to ? `Row ${from} (${sideOf(from)})` : rowsNamed(from, to);

/** A fabric with so many plain stitches beside its repeats at both edges, where it names a stitch for them. */
export function edgedFabric(fabric: FabricPattern, edge: Whole): FabricPattern {
  const stitch = fabric.edge;
  if (stitch === undefined) return fabric;
  return {
    ...fabric,
    rows: fabric.rows.map((row): FabricRow => {
      if (isPlain(row.stitches)) return row;
      const { before, unit, after } = row.stitches;
      const ground = new RegExp(`^${stitch} in each of first (\\d+) sts$`).exec(before ?? "");
      const first = `${stitch} in each of first ${say(edge, Number(ground?.[1] ?? 0))} sts`;
      const last = `${stitch} in each of last ${say(edge)} sts`;
      return {
        ...row,
        stitches: {
          before: ground || before === undefined ? first : `${first}, ${before.replace(/\bfirst\b/, "next")}`,
          unit,
          after: { words: after ? `${asNext(after.words)}, ${last}` : last, takes: after?.takes ?? 0, edge },
        },
      };
    }),
  };
}

export const sideOf = (number: number): "RS" | "WS" => (number % 2 === 1 ? "RS" : "WS");
