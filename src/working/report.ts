import type { Finding } from "../base/index.ts";
import { ordinal } from "../base/index.ts";
import type { Choices } from "./choices.ts";
import { reportLine, sayKind } from "./line-report.ts";
import { settleAllSides, sideFindings } from "./side-report.ts";
import { reportTroubles } from "./trouble-report.ts";
import type { WorkedLine, WorkedPattern } from "./worked.ts";
import type { WorkedSizes } from "./worked-sizes.ts";

/** Puts the sizes side by side: one line an instruction, one finding for the same trouble of several sizes. */
export function reportWork(work: WorkedSizes, choices: Choices): WorkedPattern {
  const { tree, placed } = work;
  const sides = settleAllSides(work);
  const findings: Finding[] = [];
  const pieces: { name: string; lines: WorkedLine[] }[] = [];
  placed.forEach((place, at) => {
    findings.push(...reportTroubles(work, at), ...sideFindings(work, sides, at));
    const line = reportLine(work, sides, at);
    const last = pieces[pieces.length - 1];
    if (last && placed[at - 1]?.pieceAt === place.pieceAt) last.lines.push(line);
    else pieces.push({ name: place.piece, lines: [line] });
  });
  return { sizes: tree.sizes, pieces, findings, conventions: sayConventions(choices, tree.terms) };
}

/** The choices of reading in sentences. */
function sayConventions(choices: Choices, terms: "US" | "UK"): string[] {
  const said: string[] = [];
  for (const form of choices.met.values()) {
    const taken = choices.taken.get(form.key) ?? 0;
    const chain = /^turning-chain:(\d+):(.+)$/.exec(form.key);
    if (chain) {
      const stitch = sayKind(chain[2] as string, terms);
      said.push(
        `Where the text does not say, ch ${chain[1]} at the start of a row of ${stitch} is read in its ${ordinal(taken + 1)} likeliest way.`,
      );
    }
  }
  return said;
}
