import type { Finding } from "../base/index.ts";
import type { PatternTree } from "../notation/index.ts";
import { readingsOf } from "./chains.ts";
import { Choices, type Form } from "./choices.ts";
import { turningChainUndecided } from "./findings/index.ts";
import { sayKind } from "./line-report.ts";

const CHAIN = /^turning-chain:(\d+):(.+)$/;

/** The chain and stitch of a form about turning chains; null for other forms, and for chains that hardly ever count. */
function chainOf(form: Form): { readonly chains: number; readonly stitch: string } | null {
  const found = CHAIN.exec(form.key);
  if (!found || found[2] === "-") return null;
  const chains = Number(found[1]);
  return chains > 1 ? { chains, stitch: found[2] as string } : null;
}

/**
 * Turning chains of which the text does not say whether they count, and whose printed counts do not tell either: as many rows
 * come true one way as the other.
 *
 * @param wrongUnder  how much is wrong under other readings
 */
export function undecidedChains(
  choices: Choices,
  wrong: number,
  wrongUnder: (choices: Choices) => number,
): readonly Form[] {
  const forms = [...choices.met.values()].filter((form) => chainOf(form) !== null);
  return forms.slice(0, MOST_TRIED).filter((form) => {
    const other = otherWay(form, choices);
    return other !== null && wrongUnder(new Choices(new Map(choices.taken).set(form.key, other))) === wrong;
  });
}

/** More forms than a pattern has; each costs a pass over it. */
const MOST_TRIED = 3;

/** The likeliest reading that counts where the one taken does not, or the other way round. */
function otherWay(form: Form, choices: Choices): number | null {
  const chain = chainOf(form);
  if (!chain) return null;
  const readings = readingsOf(chain.chains, chain.stitch);
  const taken = readings[choices.taken.get(form.key) ?? 0] ?? [];
  const other = readings.findIndex((parts) => parts.length > 0 !== taken.length > 0);
  return other === -1 ? null : other;
}

/** Says that a chain is undecided, once, where it is met first. */
export function sayUndecided(tree: PatternTree, form: Form, choices: Choices): Finding {
  const { chains, stitch } = chainOf(form) ?? { chains: 0, stitch: "" };
  const counts = (readingsOf(chains, stitch)[choices.taken.get(form.key) ?? 0] ?? []).length > 0;
  const where = { span: form.span, piece: null, row: null, sizes: [] };
  return turningChainUndecided.at(where, {
    chain: `ch ${chains}`,
    stitch: `a ${sayKind(stitch, tree.terms)}`,
    taken: counts ? "counts" : "does not count",
  });
}
