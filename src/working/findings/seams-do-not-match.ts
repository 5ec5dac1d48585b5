import { declare, inSizes, sayCm, sayNumbers } from "../../base/index.ts";

interface Case {
  readonly size: string;
  /** The two edges, in words: "side of Back". */
  readonly one: string;
  /** Length in cm; null where no gauge tells it. */
  readonly oneCm: number | null;
  /** Places along the edge; null where they are not known. */
  readonly oneCount: number | null;
  readonly other: string;
  readonly otherCm: number | null;
  readonly otherCount: number | null;
}

/** Two edges that are sewn together and are not alike. */
export interface Facts {
  /** The instruction, as written. */
  readonly words: string;
  readonly cases: readonly Case[];
}

export const seamsDoNotMatch = declare<Facts>({
  code: "seams/do-not-match",
  severity: "warning",
  what: (d) => `The edges of "${d.words}" do not match${inSizes(d.cases)}.`,
  why: (d) => {
    const pairs = new Map<string, Case[]>();
    for (const one of d.cases) {
      const pair = `${one.one}\n${one.other}`;
      pairs.set(pair, [...(pairs.get(pair) ?? []), one]);
    }
    const several = pairs.size > 1;
    return [...pairs.values()].flatMap((cases) => compare(cases, several ? inSizes(cases) : "")).join(" ");
  },
  todo: () => [
    "Change one of the pieces so that the edges match.",
    "Say how much of the longer edge is eased in.",
  ],
});

/** One sentence on lengths and one on places, so far as either is known of both edges. */
function compare(cases: readonly Case[], sizes: string): string[] {
  const { one, other } = cases[0] as Case;
  const pick = (key: "oneCm" | "otherCm" | "oneCount" | "otherCount") =>
    cases.flatMap((c) => (c[key] === null ? [] : [c[key]]));
  const [oneCm, otherCm, oneCount, otherCount] = [
    pick("oneCm"),
    pick("otherCm"),
    pick("oneCount"),
    pick("otherCount"),
  ];
  const known = (a: readonly number[], b: readonly number[]) =>
    a.length === cases.length && b.length === cases.length;
  return [
    ...(known(oneCm, otherCm) ? [`Length: ${one} ${sayCm(oneCm)}, ${other} ${sayCm(otherCm)}${sizes}.`] : []),
    ...(known(oneCount, otherCount)
      ? [`Places: ${one} ${sayNumbers(oneCount)}, ${other} ${sayNumbers(otherCount)}${sizes}.`]
      : []),
  ];
}
