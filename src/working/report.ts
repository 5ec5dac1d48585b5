import type { Finding } from "../base/index.ts";
import type { Choices } from "./choices.ts";
import { chosenReadings, sayConventions } from "./conventions.ts";
import { reportLine } from "./line-report.ts";
import { reportSamples } from "./sample-report.ts";
import { compareShares } from "./shares.ts";
import { endingFindings, settleAllSides, sideFindings } from "./side-report.ts";
import { compareStartingChain } from "./starting-chains.ts";
import { reportTroubles, reportTrust } from "./trouble-report.ts";
import type { WorkedLine, WorkedPattern } from "./worked.ts";
import type { WorkedSizes } from "./worked-sizes.ts";

/** Puts the sizes side by side: one line an instruction, one finding for the same trouble of several sizes. */
export function reportWork(work: WorkedSizes, choices: Choices): Omit<WorkedPattern, "made"> {
  const { tree, placed } = work;
  const sides = settleAllSides(work);
  const findings: Finding[] = [];
  const pieces: { name: string; lines: WorkedLine[] }[] = [];
  placed.forEach((place, at) => {
    findings.push(
      ...reportTroubles(work, at),
      ...reportTrust(work, at),
      ...sideFindings(work, sides, at),
      ...endingFindings(work, sides, at),
      ...compareShares(tree, place),
      ...compareStartingChain(place),
    );
    const line = reportLine(work, sides, at);
    const last = pieces[pieces.length - 1];
    if (last && placed[at - 1]?.pieceAt === place.pieceAt) last.lines.push(line);
    else pieces.push({ name: place.piece, lines: [line] });
  });
  findings.push(...chosenReadings(work, choices), ...reportSamples(work));
  return { sizes: tree.sizes, pieces, findings, conventions: sayConventions(choices, tree.terms) };
}
