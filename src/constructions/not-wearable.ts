import type { FinishedMeasure, Proof, RuleCost } from "../design/index.ts";
import { ruleCosts } from "../design/index.ts";
import type { Choices } from "./choices.ts";

/** What people could not wear, by the codes of its findings. */
const WEARING = new Set([
  "design/does-not-go-over",
  "design/too-tight",
  "design/stretch-not-measured",
  "design/edge-lengths-differ",
]);

/** A girth that is off by more than this share of itself, and by more than so many cm, is another garment than was asked for. */
const OTHER = { share: 0.1, cm: 4 } as const;

/**
 * Why a draft is not the garment that was chosen: nobody could wear it, or its counts had to go so far from the plan that it is
 * another one. Whole sentences; none where the draft will do.
 */
export function whyNotWearable(proof: Proof, choices: Choices): readonly string[] {
  const worn = proof.findings
    .filter(({ code }) => WEARING.has(code))
    .map(({ what, why }) => `${what} ${why}`);
  const far = (proof.finished ?? []).flatMap((measure) => otherSizes(measure, proof.sizes));
  if (worn.length + far.length === 0) return [];
  return [...far, ...(far.length > 0 ? bindingRule(proof) : []), ...worn, remedy(choices)];
}

function otherSizes(
  { name, measurement, wanted, made }: FinishedMeasure,
  sizes: readonly string[],
): string[] {
  if (measurement === null) return [];
  const off = made.flatMap((cm, size) => {
    const want = wanted[size];
    if (cm === null || want == null) return [];
    const miss = Math.abs(cm - want);
    return miss > OTHER.cm && miss > OTHER.share * want ? [{ size: sizes[size], cm, want, miss }] : [];
  });
  const [worst] = off.sort((a, b) => b.miss - a.miss);
  if (!worst) return [];
  const others =
    off.length > 1
      ? ` Other sizes are as far off: ${off
          .slice(1)
          .map(({ size }) => size)
          .join(", ")}.`
      : "";
  return [
    `The ${name.replace(/^finished /, "")} of ${worst.size} would be ${tenth(worst.cm)} cm where ${tenth(worst.want)} cm is wanted.${others}`,
  ];
}

function bindingRule(proof: Proof): string[] {
  const [dearest]: readonly RuleCost[] = proof.table ? ruleCosts(proof.table) : [];
  return dearest ? [`What stands in the way most is the rule "${dearest.words}".`] : [];
}

function remedy({ fabric, gauge }: Choices): string {
  const ways = [
    ...(gauge.stitches < 12 ? ["a finer yarn and gauge"] : []),
    ...(fabric.multiple.of > 2 || fabric.rows.length > 2 ? ["a fabric with a smaller repeat"] : []),
    "other sizes",
    "other ease",
  ];
  return `Choose ${ways.slice(0, -1).join(", ")} or ${ways.at(-1)}.`;
}

const tenth = (cm: number): number => Math.round(cm * 10) / 10;
