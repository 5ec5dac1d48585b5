import type { Finding } from "../base/index.ts";
import { sampleWidth } from "./findings/index.ts";
import type { Placed, WorkedSizes } from "./worked-sizes.ts";

/** One note for each stitch pattern that was worked on a sample, where its width is told or should be. */
export function reportSamples({ placed, outcomes, wider }: WorkedSizes): Finding[] {
  const findings: Finding[] = [];
  const told = new Set<number>();
  const [lines] = outcomes;
  lines?.forEach((line, at) => {
    const { sample } = line;
    if (!sample || line.made === "nothing" || told.has(sample.span.from)) return;
    told.add(sample.span.from);
    const { of, plus, wide, repeats, span, name } = sample;
    const where = { span, piece: (placed[at] as Placed).piece || null, row: null, sizes: [] };
    findings.push(
      sampleWidth.at(where, {
        name: name === "" ? "this stitch pattern" : name,
        rule: of === null ? null : `a multiple of ${of}${plus === 0 ? "" : ` + ${plus}`}`,
        wide,
        unit: sample.chains ? "ch" : "sts",
        repeats,
        wider: of === null ? null : (wider?.[0]?.[at]?.sample?.wide ?? null),
      }),
    );
  });
  return findings;
}
