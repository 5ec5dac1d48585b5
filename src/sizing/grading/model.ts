import { bezout, modulo } from "../multiples.ts";
import { commonDenominator } from "./fractions.ts";
import {
  boundAt,
  type GradingProblem,
  type GradingRule,
  MICRO,
  reachOf,
  USUAL_SMOOTHNESS,
} from "./problem.ts";

// Quantities tied to each other two by two all hang on one whole number k a size: count = factor · k + offset. Their
// multiples are merged into the same form, so that every whole k keeps every such rule and no other count does. What is
// left of a problem are chains of k from size to size, and links where several chains come to a sum.

/** A quantity on a chain: count = factor · k + offset. */
export interface Member {
  /** Index into the problem's quantities. */
  readonly quantity: number;
  /** Never 0. */
  factor: number;
  offset: number;
}

/** Quantities that hang on one whole number a size. The first member is the first in the problem, its factor above 0. */
export interface Chain {
  readonly members: Member[];
  /** Least and greatest k, per size; low above high where nothing is left. */
  readonly low: number[];
  readonly high: number[];
  /** k may not fall, k may not rise; both when it must stay. */
  up: boolean;
  down: boolean;
  /** Cost of a change of step by one, in millionths. */
  steady: number;
}

/** least ≤ Σ times · k ≤ most over several chains, in every size. */
export interface Link {
  /** Index into the rules the model was built from. */
  readonly rule: number;
  readonly terms: readonly { readonly chain: number; readonly times: number }[];
  readonly least: number;
  readonly most: number;
}

/** A problem brought into the form that is solved. */
export interface Model {
  readonly problem: GradingProblem;
  readonly chains: readonly Chain[];
  readonly links: readonly Link[];
  /** For each quantity, its chain and its member there. */
  readonly places: readonly { readonly chain: number; readonly member: Member }[];
}

/** Rules that already contradict each other as remainders or exact ties, before any size is looked at. */
export interface Clash {
  readonly kind: "clash";
}

/** Room for binary fractions in sums of cm, on either side of a link. */
export const HAIR = 1e-7;

/**
 * Brings a problem with some of its rules into chains and links.
 *
 * @param rules  the rules to keep; the problem's own unless some are left out
 */
export function buildModel(
  problem: GradingProblem,
  rules: readonly GradingRule[] = problem.rules,
): Model | Clash {
  const index = new Map(problem.quantities.map(({ id }, i) => [id, i]));
  const at = (id: string): number => index.get(id)!;
  const lattice = new Lattice(problem.quantities.length);
  const left: number[] = [];
  for (const [i, rule] of rules.entries()) {
    if (rule.kind === "multiple") {
      if (!lattice.restrict(at(rule.of), rule.multiple, rule.remainder)) return CLASH;
    } else if (rule.kind === "equal") {
      if (!lattice.tie(at(rule.of), 1, at(rule.as), 1, rule.plus ?? 0)) return CLASH;
    } else if (rule.kind === "sum") {
      const tie = exactTie(rule);
      if (tie === "never") return CLASH;
      if (tie === null) left.push(i);
      else if (tie.b === undefined) lattice.fix(at(tie.a), tie.makes / tie.p);
      else if (!lattice.tie(at(tie.a), tie.p, at(tie.b), tie.q, tie.makes)) return CLASH;
    } else if (rule.kind === "ratio") left.push(i);
  }

  const { chains, places } = lattice.chains(problem.sizes.length);
  const narrow = (quantity: number, size: number, least: number, most: number) => {
    const { chain, member } = places[quantity]!;
    narrowTo(chains[chain]!, size, member.factor, least - member.offset, most - member.offset);
  };
  const reach = reachOf(problem);
  for (let quantity = 0; quantity < places.length; quantity++) {
    for (let size = 0; size < problem.sizes.length; size++) narrow(quantity, size, 0, reach);
    const { chain, member } = places[quantity]!;
    const smoothness = problem.quantities[quantity]!.smoothness ?? USUAL_SMOOTHNESS;
    chains[chain]!.steady += Math.round(MICRO * smoothness * Math.abs(member.factor));
  }
  for (const { quantity, count } of lattice.fixed) {
    for (let size = 0; size < problem.sizes.length; size++) narrow(quantity, size, count, count);
  }
  for (const rule of rules) {
    if (rule.kind === "hold") narrow(at(rule.of), rule.size, rule.count, rule.count);
    else if (rule.kind === "at least" || rule.kind === "at most") {
      for (let size = 0; size < problem.sizes.length; size++) {
        const count = boundAt(rule, size);
        if (count === null) continue;
        if (rule.kind === "at least") narrow(at(rule.of), size, count, Number.POSITIVE_INFINITY);
        else narrow(at(rule.of), size, Number.NEGATIVE_INFINITY, count);
      }
    } else if (rule.kind === "order") {
      const { chain, member } = places[at(rule.of)]!;
      if (member.factor > 0 === (rule.direction === "up")) chains[chain]!.up = true;
      else chains[chain]!.down = true;
    }
  }

  const links: Link[] = [];
  for (const i of left) {
    for (const sum of boundedSums(problem, rules[i] as GradingRule)) {
      const times = new Map<number, number>();
      let { least, most } = sum;
      for (const term of sum.terms) {
        const { chain, member } = places[at(term.of)]!;
        times.set(chain, (times.get(chain) ?? 0) + term.times * member.factor);
        least -= term.times * member.offset;
        most -= term.times * member.offset;
      }
      const terms = [...times]
        .map(([chain, n]) => ({ chain, times: Math.abs(n) < 1e-12 ? 0 : n }))
        .filter((term) => term.times !== 0);
      if (terms.length === 0) {
        if (least > HAIR || most < -HAIR) return CLASH;
      } else if (terms.length === 1) {
        const { chain, times: factor } = terms[0]!;
        for (let size = 0; size < problem.sizes.length; size++)
          narrowTo(chains[chain]!, size, factor, least, most);
      } else links.push({ rule: i, terms, least, most });
    }
  }
  for (const chain of chains) settleOrder(chain);
  return { problem, chains, links, places };
}

/** Makes least and greatest k agree with the order from size to size; exact, so low ≤ high everywhere means k exist. */
export function settleOrder(chain: Chain): void {
  const { low, high, up, down } = chain;
  const last = low.length - 1;
  const raise = (a: number, b: number) => {
    low[b] = Math.max(low[b]!, low[a]!);
  };
  const lower = (a: number, b: number) => {
    high[b] = Math.min(high[b]!, high[a]!);
  };
  for (let s = 1; s <= last; s++) {
    if (up) raise(s - 1, s);
    if (down) lower(s - 1, s);
  }
  for (let s = last; s > 0; s--) {
    if (up) lower(s, s - 1);
    if (down) raise(s, s - 1);
  }
}

/** Whether some k is left in every size. */
export function isOpen({ low, high }: Chain): boolean {
  return low.every((k, size) => k <= high[size]!);
}

const CLASH: Clash = { kind: "clash" };

/** least ≤ factor · k ≤ most, in one size. */
function narrowTo(chain: Chain, size: number, factor: number, least: number, most: number): void {
  const [a, b] = factor > 0 ? [least / factor, most / factor] : [most / factor, least / factor];
  chain.low[size] = Math.max(chain.low[size]!, Math.ceil(a - HAIR));
  chain.high[size] = Math.min(chain.high[size]!, Math.floor(b + HAIR));
}

/** p · a = q · b + makes in whole numbers, from a sum of one or two terms that must come out exactly. */
function exactTie(rule: Extract<GradingRule, { kind: "sum" }>):
  | {
      readonly a: string;
      readonly p: number;
      readonly b?: string;
      readonly q: number;
      readonly makes: number;
    }
  | "never"
  | null {
  if (rule.measured === "cm" || (rule.within ?? 0) > 0) return null;
  const scale = commonDenominator(rule.terms.map(({ times }) => times));
  if (scale === null) return null;
  const factors = rule.terms.map(({ times }) => Math.round(times * scale));
  const makes = rule.makes * scale;
  const divisor = factors.reduce((all, n) => bezout(all, n).divisor, 0);
  // A sum of whole multiples of the divisor never comes to anything else.
  if (Math.abs(makes / divisor - Math.round(makes / divisor)) > 1e-9) return "never";
  if (rule.terms.length > 2) return null;
  const [a, b] = rule.terms;
  return b === undefined
    ? { a: a!.of, p: factors[0]!, q: 0, makes: Math.round(makes) }
    : { a: a!.of, p: factors[0]!, b: b.of, q: -factors[1]!, makes: Math.round(makes) };
}

/** A sum or ratio as terms in counts that stay between two numbers. */
function boundedSums(
  { quantities }: GradingProblem,
  rule: GradingRule,
): readonly {
  readonly terms: readonly { readonly of: string; readonly times: number }[];
  least: number;
  most: number;
}[] {
  const unit = (id: string) => quantities.find((one) => one.id === id)!.unit;
  if (rule.kind === "sum") {
    const terms = rule.terms.map(({ of, times }) => ({
      of,
      times: rule.measured === "cm" ? times * unit(of) : times,
    }));
    const within = rule.within ?? 0;
    return [{ terms, least: rule.makes - within, most: rule.makes + within }];
  }
  if (rule.kind !== "ratio") return [];
  const a = rule.measured === "cm" ? unit(rule.of) : 1;
  const b = rule.measured === "cm" ? unit(rule.to) : 1;
  const against = (ratio: number) => [
    { of: rule.of, times: a },
    { of: rule.to, times: -ratio * b },
  ];
  return [
    { terms: against(rule.least), least: 0, most: Number.POSITIVE_INFINITY },
    ...(Number.isFinite(rule.most)
      ? [{ terms: against(rule.most), least: Number.NEGATIVE_INFINITY, most: 0 }]
      : []),
  ];
}

/** Union–find in which every quantity is factor · k + offset of its group's k. */
class Lattice {
  private readonly groups: Member[][];
  private readonly groupOf: Member[][];
  private readonly member: Member[];
  /** Counts that a tie of a group with itself leaves no choice of, in every size. */
  readonly fixed: { readonly quantity: number; readonly count: number }[] = [];

  constructor(quantities: number) {
    this.member = Array.from({ length: quantities }, (_, quantity) => ({ quantity, factor: 1, offset: 0 }));
    this.groups = this.member.map((one) => [one]);
    this.groupOf = [...this.groups];
  }

  /** count ≡ remainder (mod multiple). @returns false when no count of the group fits */
  restrict(quantity: number, multiple: number, remainder: number): boolean {
    const { factor, offset } = this.member[quantity]!;
    const { divisor, x } = bezout(factor, multiple);
    const apart = remainder - offset;
    if (apart % divisor !== 0) return false;
    const step = multiple / divisor;
    substitute(this.groupOf[quantity]!, step, modulo((apart / divisor) * x, step));
    return true;
  }

  /** The count is this number in all sizes; whether it can be is seen when the sizes are narrowed. */
  fix(quantity: number, count: number): void {
    this.fixed.push({ quantity, count });
  }

  /** p · a = q · b + makes. @returns false when no whole numbers do that */
  tie(a: number, p: number, b: number, q: number, makes: number): boolean {
    const [one, two] = [this.member[a]!, this.member[b]!];
    const rest = makes + q * two.offset - p * one.offset;
    const [left, right] = [p * one.factor, q * two.factor];
    if (this.groupOf[a] === this.groupOf[b]) {
      if (left === right) return rest === 0;
      const k = rest / (left - right);
      if (!Number.isInteger(k)) return false;
      this.fix(a, one.factor * k + one.offset);
      return true;
    }
    const { divisor, x } = bezout(left, -right);
    if (rest % divisor !== 0) return false;
    const step = right / divisor;
    // k of group a goes in steps of right/divisor, k of group b in steps of left/divisor, from one common solution.
    const k0 = modulo((rest / divisor) * x, Math.abs(step));
    const l0 = (left * k0 - rest) / right;
    const [from, into] = [this.groupOf[b]!, this.groupOf[a]!];
    substitute(into, step, k0);
    substitute(from, left / divisor, l0);
    for (const moved of from) {
      into.push(moved);
      this.groupOf[moved.quantity] = into;
    }
    this.groups.splice(this.groups.indexOf(from), 1);
    return true;
  }

  chains(sizes: number): { chains: Chain[]; places: { chain: number; member: Member }[] } {
    const places: { chain: number; member: Member }[] = [];
    const chains = this.groups.map((members, chain): Chain => {
      members.sort((a, b) => a.quantity - b.quantity);
      const first = members[0]!;
      if (first.factor < 0) substitute(members, -1, 0);
      // Small k are easier on the solver and on whoever reads a model.
      substitute(members, 1, -Math.floor(first.offset / first.factor));
      for (const member of members) places[member.quantity] = { chain, member };
      return {
        members,
        low: new Array<number>(sizes).fill(Number.NEGATIVE_INFINITY),
        high: new Array<number>(sizes).fill(Number.POSITIVE_INFINITY),
        up: false,
        down: false,
        steady: 0,
      };
    });
    return { chains, places };
  }
}

/** k = step · t + start, for every member. */
function substitute(members: Member[], step: number, start: number): void {
  for (const member of members) {
    member.offset += member.factor * start;
    member.factor *= step;
  }
}
