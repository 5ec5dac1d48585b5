import type { Counts } from "./counts.ts";

/** A row in words, without label and turn. */
export interface Row {
  readonly words: string;
  /** The printed counts. */
  readonly printed: string;
  /** Stitches after the row; a chain of a space is one, since the next row works each of them. */
  readonly counts: Counts;
  /** What the maker makes: stitches and chains, the turning chain included. */
  readonly made: Counts;
  /** Whether the row holds chains that the next one must name. */
  readonly openChains: boolean;
}

/** Part of a repeat: it takes and makes so many places. */
interface Part {
  readonly words: string;
  readonly takes: number;
  /** Stitches and chain spaces made, by name. */
  readonly makes: Readonly<Record<string, number>>;
}

interface Wanted {
  /** Stitches gained or lost by the row: an even number, half of it at each end; one only at its end. */
  readonly change: number;
  /** The row before left chains, which are worked one by one. */
  readonly closing: boolean;
  readonly lace: boolean;
}

type Random = () => number;

const between = (random: Random, low: number, high: number): number =>
  low + Math.floor(random() * (high - low + 1));
const next = (count: number): string => (count === 1 ? "next st" : `next ${count} sts`);

/** A repeat is no wider, so that it is worked more than once in the narrowest piece of the smallest size. */
const MOST_PLACES = 20;

/** A row that no other row is likely to equal. */
export function drawRow(random: Random, counts: Counts, wanted: Wanted): Row {
  if (wanted.closing && wanted.change === 0)
    return plain(counts, `${STITCHES[between(random, 0, 2)]} in each st and in each ch across`);
  if (wanted.closing) throw new RangeError("a row over chains does not shape");
  return repeatRow(random, counts, wanted);
}

function plain(counts: Counts, words: string): Row {
  return {
    words: `Ch 1, ${words}`,
    printed: `${counts} sts`,
    counts,
    made: counts.plus(1),
    openChains: false,
  };
}

const STITCHES = ["sc", "hdc", "dc"] as const;

/** "dc in next 2 sts, sc in next st", "ch 2, skip next 2 sts", "skip next 2 sts, 5 dc in next st, skip next 2 sts, sc in next st". */
function drawParts(random: Random, lace: boolean): Part[] {
  const parts: Part[] = [];
  const length = between(random, 2, 4);
  for (let at = 0; at < length; at++) {
    const count = between(random, 1, 4);
    const stitch = STITCHES[(between(random, 0, 1) + at) % 3] as string;
    parts.push({ words: `${stitch} in ${next(count)}`, takes: count, makes: { [stitch]: count } });
    const kind = lace ? between(random, 0, 3) : 0;
    if (kind === 1) {
      const chains = between(random, 1, 3);
      parts.push({
        words: `ch ${chains}, skip ${next(chains)}`,
        takes: chains,
        makes: { [`ch-${chains} sp`]: 1 },
      });
    }
    if (kind === 2) {
      const half = between(random, 1, 3);
      const fan = 2 * half + 1;
      parts.push({
        words: `skip ${next(half)}, ${fan} dc in next st, skip ${next(half)}`,
        takes: fan,
        makes: { dc: fan },
      });
    }
  }
  // A repeat ends with a stitch, so that a space never meets the turn or another space.
  parts.push({ words: "sc in next st", takes: 1, makes: { sc: 1 } });
  return parts;
}

/** Edge stitches, a repeat to near the end, edge stitches; the edges take up what the repeat leaves, in every size. */
function repeatRow(random: Random, counts: Counts, { change, lace }: Wanted): Row {
  let parts: Part[];
  let takes: number;
  do {
    parts = drawParts(random, lace && change === 0);
    takes = parts.reduce((sum, part) => sum + part.takes, 0);
  } while (takes > MOST_PLACES);
  const atStart = Math.trunc(change / 2);
  const atEnd = change - atStart;
  // Two stitches at each end are kept for shaping, and one between them and the repeat.
  const spare = counts.map((count) => 6 + ((count - 6) % takes));
  const first = spare.map((count) => Math.floor(count / 2));
  const last = spare.minus(first);
  const times = counts.map((count, size) => (count - spare.at(size)) / takes);
  const words = [
    startWords(first, atStart),
    `*${parts.map((part) => part.words).join(", ")}; rep from * to last ${last} sts`,
    endWords(last, atEnd),
  ].join(", ");
  const after = counts.plus(change);
  const kinds = new Map<string, Counts>([["sc", spare.plus(change)]]);
  for (const { makes } of parts)
    for (const [kind, made] of Object.entries(makes))
      kinds.set(
        kind,
        times.map((count, size) => count * made + (kinds.get(kind)?.at(size) ?? 0)),
      );
  const openChains = [...kinds.keys()].some((kind) => kind.startsWith("ch-"));
  return {
    words: `Ch 1, ${words}`,
    printed: openChains ? sayKinds(kinds) : `${after} sts`,
    counts: after,
    made: after.plus(1),
    openChains,
  };
}

/** The stitches before the repeat, with one more or fewer made of them. */
function startWords(count: Counts, change: number): string {
  if (change === 1) return `2 sc in first st, sc in each of next ${count.plus(-1)} sts`;
  if (change === -1) return `sc2tog over first 2 sts, sc in each of next ${count.plus(-2)} sts`;
  return `sc in each of first ${count} sts`;
}

function endWords(count: Counts, change: number): string {
  if (change === 1) return `sc in each of next ${count.plus(-1)} sts, 2 sc in last st`;
  if (change === -1) return `sc in each of next ${count.plus(-2)} sts, sc2tog over last 2 sts`;
  return `sc in each of last ${count} sts`;
}

function sayKinds(kinds: ReadonlyMap<string, Counts>): string {
  return [...kinds].map(([kind, count]) => `${count} ${kind}${kind.endsWith(" sp") ? "s" : ""}`).join(", ");
}
