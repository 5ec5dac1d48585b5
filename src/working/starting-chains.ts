import type { Finding, Span } from "../base/index.ts";
import type { ChainClause, Clause, Target } from "../notation/index.ts";
import { joinsOtherChain } from "./findings/index.ts";
import { type Placed, sayRow } from "./worked-sizes.ts";

/* The chain that a round begins with, and the chain in whose top its join is said to go. */

/** A longer chain stands for a stitch and chains beside it, and may be named by the part that is the stitch. Common practice, no source. */
const STITCH_ALONE = 3;

/** A round that is joined to the top of a chain of another length than the one it begins with. */
export function compareStartingChain(place: Placed): Finding[] {
  const { clauses, label } = place.instruction;
  const begins = chainsAtStart(clauses);
  const named = chainJoined(clauses);
  const [first] = begins;
  if (first === undefined || !named) return [];
  const { chains, span } = named;
  if (begins.includes(chains) || (chains < first && first > STITCH_ALONE)) return [];
  return [
    joinsOtherChain.at(
      { span, piece: place.piece || null, row: label?.words ?? null, sizes: [] },
      { row: sayRow(place), named: chains, begins: first },
    ),
  ];
}

/** Clauses that may stand before the chain of a round. */
const BEFORE: ReadonlySet<Clause["kind"]> = new Set([
  "aside",
  "colour",
  "facing",
  "hook",
  "join-yarn",
  "loops",
  "marker",
  "turn",
]);

/** The lengths by which the chain at the start may be called: its own, and with the chains made right behind it. Empty where no chain begins it. */
function chainsAtStart(clauses: readonly Clause[]): readonly number[] {
  const at = clauses.findIndex(
    (clause) => !BEFORE.has(clause.kind) && !(clause.kind === "work" && clause.stitch === "sl st"),
  );
  const first = clauses[at];
  const line = first?.kind === "group" ? first.body : clauses.slice(Math.max(0, at));
  const lengths: number[] = [];
  let all = 0;
  for (const clause of line) {
    if (clause.kind === "aside") continue;
    const chains = clause.kind === "chain" ? lengthOf(clause) : null;
    if (chains === null) break;
    all += chains;
    lengths.push(all);
  }
  return lengths;
}

function lengthOf({ count, multiple }: ChainClause): number | null {
  const [chains] = count.values;
  return multiple || count.values.length !== 1 ? null : (chains ?? null);
}

/** The length of the chain that the last join names, "sl st in top of ch 3", "in 3rd ch of ch-4". */
function chainJoined(clauses: readonly Clause[]): { readonly chains: number; readonly span: Span } | null {
  const join = clauses.findLast((clause) => clause.kind === "join");
  const target: Target | null | undefined = join?.kind === "join" ? join.target : null;
  if (!join || !target) return null;
  for (const what of [target.what, target.of?.what])
    if (what?.is === "turning-chain" && what.chains !== undefined)
      return { chains: what.chains, span: join.span };
  return null;
}
