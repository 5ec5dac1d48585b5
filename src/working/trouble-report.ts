import type { Finding } from "../base/index.ts";
import { takenOnTrust } from "./findings/index.ts";
import { totalOf } from "./line-report.ts";
import type { LineOutcome } from "./maker.ts";
import type { Trouble } from "./trouble.ts";
import { sayTrouble } from "./trouble-words.ts";
import { type Placed, sayRow, type WorkedSizes } from "./worked-sizes.ts";

/** The findings of one line: the same trouble of several sizes is one finding. */
export function reportTroubles(work: WorkedSizes, at: number): Finding[] {
  const { outcomes } = work;
  const grouped = new Map<string, { trouble: Trouble; sizes: number[]; troubles: Trouble[] }>();
  outcomes.forEach((lines, size) => {
    const seen = new Set<string>();
    const { troubles } = lines[at] as LineOutcome;
    const differs = troubles.some((trouble) => trouble.is === "count-differs");
    for (const trouble of troubles) {
      // A count that differs says it all; that stitches are left over is why.
      if (differs && trouble.is === "left-over") continue;
      const key = keyOfTrouble(trouble);
      if (seen.has(key)) continue;
      seen.add(key);
      const group = grouped.get(key) ?? { trouble, sizes: [], troubles: [] };
      group.sizes.push(size);
      group.troubles.push(trouble);
      grouped.set(key, group);
    }
  });
  return [...grouped.values()].map((group) => sayTrouble(work, at, group.troubles, group.sizes));
}

function keyOfTrouble(trouble: Trouble): string {
  if (trouble.is === "repeated-row") return `repeated:${trouble.inner.is}`;
  const more =
    trouble.is === "count-differs" ? (trouble.of ?? "") : trouble.is === "nothing-there" ? trouble.place : "";
  return `${trouble.is}:${trouble.span.from}:${trouble.span.to}:${more}`;
}

/** Lines whose count was taken from what is printed, since they could not be worked. */
export function reportTrust(work: WorkedSizes, at: number): Finding[] {
  const { tree, placed, outcomes } = work;
  const here = placed[at] as Placed;
  const sizes = outcomes.flatMap((lines, size) => ((lines[at] as LineOutcome).trust ? [size] : []));
  const first = outcomes[sizes[0] ?? 0]?.[at];
  // A line that is vouched for says so itself, and one that is at fault has its finding; so has the row that others stand on.
  if (
    sizes.length === 0 ||
    here.instruction.claims.length === 0 ||
    !first ||
    first.troubles.length > 0 ||
    here.instruction.answers.some((answer) => answer.is === "vouched")
  )
    return [];
  const row = sayRow(here);
  const where = {
    span: here.instruction.label?.span ?? here.instruction.span,
    piece: here.piece || null,
    row: here.instruction.label?.words ?? null,
    sizes: tree.sizes.length === 1 ? [] : sizes,
  };
  const count = sizes.map((size) => ({
    size: tree.sizes[size] ?? "",
    n: totalOf(outcomes[size]?.[at] as LineOutcome, work.chainsCount),
  }));
  return [takenOnTrust.at(where, { row, count, because: first.unknown ?? "the row could not be worked" })];
}
