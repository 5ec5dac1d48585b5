import { sayList } from "../base/index.ts";
import { type WhomItFits, whomItFits } from "../design/index.ts";
import type { Paint } from "./paint.ts";
import type { DesignProved } from "./size.ts";
import { cmOf, setSizeTable } from "./size-table.ts";
import { wrap } from "./wrap.ts";

/** Whom a design fits, for other programs; null where the design does not say for whom it is, or within which ease. */
export function coverageJson(proof: DesignProved) {
  const fits = whomItFits(proof);
  if (fits === null || fits.coverage.share === null) return null;
  const { share, bySize, shutOut, widening, notJudged, leftOut } = fits.coverage;
  return {
    population: fits.population,
    share,
    bySize: bySize.map((one) => (notJudged.sizes.includes(one.size) ? null : one.share)),
    shutOut: shutOut.map(({ measurement, share: out, tooTight, tooLoose }) => ({
      measurement,
      share: out,
      tooTight,
      tooLoose,
    })),
    widening: widening.map(({ measurement, gain, gainTighter, gainLooser }) => ({
      measurement,
      larger: gain,
      lessEase: gainTighter,
      moreEase: gainLooser,
    })),
    notJudged: notJudged.sizes,
    notCounted: leftOut.map(({ measurement, why }) => ({ measurement, why })),
  };
}

const inHundred = (share: number): string => {
  const parts = share * 100;
  return parts > 0 && parts < 0.5 ? "fewer than 1 in 100" : `${Math.round(parts)} in 100`;
};

/** Whom a design fits: a line of shares by size, then what stands in the way of the rest and what would let more in. */
export function setWhom(proof: DesignProved, width: number, prose: number, paint: Paint): string[] {
  const fits = whomItFits(proof);
  if (fits === null || fits.coverage.share === null) return [];
  const { bySize, notJudged } = fits.coverage;
  const shares = bySize.map(({ size, share }) =>
    notJudged.sizes.includes(size)
      ? "?"
      : share > 0 && share < 0.005
        ? "<1"
        : String(Math.round(share * 100)),
  );
  return [
    ...setSizeTable(
      `Of 100 measured ${fits.population}`,
      proof.sizes,
      [{ label: "take this size", values: shares }],
      width,
      paint,
    ),
    ...sentences(fits).flatMap((words) => wrap(words, prose)),
    "",
  ];
}

function sentences({ population, by, coverage }: WhomItFits): string[] {
  const { share, shutOut, several, widening, notJudged } = coverage;
  const out = shutOut
    .filter((one) => one.share >= 0.005)
    .map(
      ({ measurement, share: all, tooTight, tooLoose }) =>
        `${measurement} ${inHundred(all)} (${bySide(tooTight, tooLoose)})`,
    );
  const gains = widening
    .flatMap(({ measurement, gainTighter, gainLooser }) => [
      { words: `1 cm less ease at the ${measurement}`, gain: gainTighter },
      { words: `1 cm more at the ${measurement}`, gain: gainLooser },
    ])
    .filter(({ gain }) => gain >= 0.005)
    .sort((a, b) => b.gain - a.gain)
    .map(({ words, gain }) => `${words} ${inHundred(gain)}`);
  return [
    `${inHundred(share ?? 0)} measured ${population} find a size that fits them at ${sayList(by)}.`,
    ...(out.length > 0 ? [`Shut out by one measurement alone: ${out.join(", ")}.`] : []),
    ...(several >= 0.005 ? [`Shut out by several together: ${inHundred(several)}.`] : []),
    ...(gains.length > 0 ? [`Let in, if it still counted as fitting: ${gains.join(", ")}.`] : []),
    ...(notJudged.sizes.length > 0
      ? [
          `Not judged: ${notJudged.sizes.length === 1 ? "size" : "sizes"} ${notJudged.sizes.join(", ")}, since nobody was measured above ${cmOf(notJudged.most)} or below ${cmOf(notJudged.least)} cm at the ${notJudged.measurement}.`,
        ]
      : []),
  ];
}

function bySide(tight: number, loose: number): string {
  if (loose === 0) return "too tight";
  if (tight === 0) return "too loose";
  return `${Math.round(tight * 100)} too tight, ${Math.round(loose * 100)} too loose`;
}
