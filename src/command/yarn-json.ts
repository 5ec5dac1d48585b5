import type { Proof, YarnProof } from "../design/index.ts";
import { findingJson } from "./json.ts";
import { viewOf } from "./view.ts";

/** Tenths: what lies below them is not known. */
const tenth = (value: number | null): number | null => (value === null ? null : Math.round(value * 10) / 10);
const cent = (value: number | null): number | null => (value === null ? null : Math.round(value * 100) / 100);

/** Yarn, hours and money of a pattern, for other programs. */
export function yarnJson(proof: Proof) {
  const { yarn, sizes } = proof;
  return {
    title: proof.title,
    sizes,
    rough: yarn?.rough ?? true,
    currency: yarn?.currency ?? null,
    safety: yarn?.safety ?? null,
    colours: (yarn?.yarns ?? []).map(({ name, metres, grams, buy, ways, endsMetres, seamMetres }) => ({
      name,
      metres: metres.map(tenth),
      grams: grams.map(tenth),
      balls: buy.map(({ balls }) => balls),
      cost: buy.map(({ cost }) => cent(cost)),
      leftGrams: buy.map(({ leftGrams }) => tenth(leftGrams)),
      byStitch: ways.map(({ byStitch }) => tenth(byStitch)),
      byArea: ways.map(({ byArea }) => tenth(byArea)),
      ends: endsMetres.map(tenth),
      seams: seamMetres.map(tenth),
    })),
    pieces: yarn ? piecesJson(yarn) : [],
    hours: yarn?.hours.map(tenth) ?? sizes.map(() => null),
    finishing: yarn?.finishing.map(tenth) ?? sizes.map(() => null),
    timed: yarn !== undefined && !yarn.roughHours,
    instead: (yarn?.instead ?? []).map(({ of, name, substitution, buy }) => ({
      of,
      name,
      fit: substitution.fit,
      balls: buy.map(({ balls }) => balls),
      cost: buy.map(({ cost }) => cent(cost)),
    })),
    money: yarn?.business ? moneyJson(yarn.business) : null,
    missing: yarn?.missing ?? [],
    findings: proof.findings.map((finding) => findingJson(viewOf(proof), finding)),
  };
}

function piecesJson({ pieces, yarns }: YarnProof) {
  return pieces.map(({ name, times, yarns: own, areaCm2, hours }) => ({
    name,
    times,
    areaCm2: areaCm2.map(tenth),
    hours: hours.map(tenth),
    colours: own.map((ways, at) => ({
      name: yarns[at]?.name ?? "",
      byStitch: ways.map(({ byStitch }) => tenth(byStitch)),
      byArea: ways.map(({ byArea }) => tenth(byArea)),
    })),
  }));
}

function moneyJson(business: NonNullable<YarnProof["business"]>) {
  const { price, fee, perCopy, cash, hours, sampleHours, wage, sold, sums } = business;
  const { copiesForCash, copiesForAll, left, perHour, profit } = business;
  return {
    currency: business.currency,
    price,
    fee,
    perCopy: cent(perCopy),
    sums: sums.map(({ name, amount }) => ({ name, amount: cent(amount) })),
    cash: cent(cash),
    hours: tenth(hours),
    sampleHours: tenth(sampleHours),
    wage,
    sold,
    copiesForCash,
    copiesForAll,
    left: cent(left),
    perHour: cent(perHour),
    profit: cent(profit),
  };
}
