import { DICTIONARY } from "./dictionary.ts";
import { STEMS } from "./records/stems.ts";

/**
 * What a chart symbol is made of, in words and numbers; nobody's artwork. Heights are not here: a stem is as tall as
 * the stitch. Source: general conventions of crochet charts, in our own description; forms marked "memory" were not
 * seen in a printed key, so a chart must always print its own.
 */
export interface ChartSymbol {
  readonly code: string;
  /**
   * chain: open flat ellipse. dot: filled dot. cross: two strokes crossing. stem: upright, with a level bar on top
   * unless it is a single crochet's cross. ring: closed loop of chains on the edge. sign: a form of its own, told in words.
   */
  readonly shape: "chain" | "dot" | "cross" | "stem" | "ring" | "sign";
  /** Uprights or crosses side by side. */
  readonly stems: number;
  /** Short slashes on each upright: the yarn overs before the hook goes in, none for a half double by custom. */
  readonly slashes: number;
  /** Feet in one place or each in its own. */
  readonly feet: "one" | "apart";
  /** Heads drawn together to one point, or each its own. */
  readonly heads: "one" | "apart";
  /** How the foot ends: straight, curled to the front or back of a post, reaching into an earlier row. */
  readonly foot: "plain" | "front-hook" | "back-hook" | "reach" | "on-chain";
  /** What is added to the plain form. */
  readonly added?:
    | "dot-at-foot"
    | "loop-at-head"
    | "bowed"
    | "wave-over"
    | "loop-at-foot"
    | "hanging-loop"
    | "chain-between"
    | "crossing"
    | "link"
    | "coil"
    | "yarn-over";
  readonly words: string;
  readonly seen: "two" | "one" | "memory";
}

const plainly = { stems: 1, slashes: 0, feet: "one", heads: "apart", foot: "plain" } as const;

const SLASHES: Readonly<Record<string, number>> = { sc: 0, hdc: 0, dc: 1, tr: 2, dtr: 3, trtr: 4 };
const shapeOf = (stem: string): "cross" | "stem" => (stem === "sc" ? "cross" : "stem");

const BASE: readonly ChartSymbol[] = [
  {
    ...plainly,
    code: "ch",
    shape: "chain",
    words: "open flat ellipse, about half as high as wide",
    seen: "two",
  },
  {
    ...plainly,
    code: "sl-st",
    shape: "dot",
    words: "filled dot, about half as wide as a chain",
    seen: "two",
  },
  {
    ...plainly,
    code: "yo-sl-st",
    shape: "dot",
    added: "yarn-over",
    words: "filled dot with a short stroke over it",
    seen: "memory",
  },
  { ...plainly, code: "sc", shape: "cross", words: "two equal strokes crossing at the middle", seen: "two" },
  ...STEMS.slice(1).map(
    (stem): ChartSymbol => ({
      ...plainly,
      code: stem.code,
      shape: "stem",
      slashes: SLASHES[stem.code]!,
      words: `upright with a level bar on top and ${SLASHES[stem.code]! || "no"} short slash${SLASHES[stem.code] === 1 ? "" : "es"} across it`,
      seen: stem.code === "trtr" ? "memory" : stem.code === "dtr" ? "one" : "two",
    }),
  ),
];

const SIGNS: readonly ChartSymbol[] = [
  {
    ...plainly,
    code: "rsc",
    shape: "cross",
    added: "wave-over",
    words: "cross with a small wave over it",
    seen: "memory",
  },
  {
    ...plainly,
    code: "twisted-sc",
    shape: "cross",
    added: "loop-at-foot",
    words: "cross with a small closed loop at its foot",
    seen: "memory",
  },
  {
    ...plainly,
    code: "loop-stitch",
    shape: "cross",
    added: "hanging-loop",
    words: "cross with a long loop hanging below",
    seen: "memory",
  },
  {
    ...plainly,
    code: "bullion",
    shape: "stem",
    added: "coil",
    words: "thick upright wound with a coil",
    seen: "memory",
  },
  {
    ...plainly,
    code: "y-stitch",
    shape: "sign",
    stems: 2,
    slashes: 2,
    words: "tall upright with two slashes and a branch that leaves it half way up",
    seen: "memory",
  },
  {
    ...plainly,
    code: "inverted-y",
    shape: "sign",
    feet: "apart",
    heads: "one",
    stems: 2,
    slashes: 2,
    words: "two feet rising to one upright",
    seen: "memory",
  },
];

/** The symbol of a regular kind, read off the parts of its code: "fpdc2tog", "3dc-in-one", "5dc-bobble". */
function regularSymbol(code: string): ChartSymbol | undefined {
  const stem = "(sc|hdc|dc|trtr|dtr|tr)";
  const at = (pattern: string): RegExpExecArray | null =>
    new RegExp(`^${pattern.replace("@", stem)}$`, "u").exec(code);
  const form = (of: string): Pick<ChartSymbol, "shape" | "slashes"> => ({
    shape: shapeOf(of),
    slashes: SLASHES[of]!,
  });

  const worked = at("(fp|bp)?@(?:(\\d)tog)?");
  if (worked !== null) {
    const [, side, of, count] = worked;
    const hooked =
      side === undefined ? "" : `, each foot curled round to the ${side === "fp" ? "front" : "back"}`;
    return {
      ...plainly,
      ...form(of!),
      code,
      stems: Number(count ?? 1),
      feet: count === undefined ? "one" : "apart",
      heads: count === undefined ? "apart" : "one",
      foot: side === undefined ? "plain" : side === "fp" ? "front-hook" : "back-hook",
      words: `${count === undefined ? `${of} symbol` : `${count} ${of} symbols, feet apart, leaning in to one head`}${hooked}`,
      seen: "memory",
    };
  }
  const several = at("(\\d)@-in-one");
  if (several !== null) {
    const [, count, of] = several;
    return {
      ...plainly,
      ...form(of!),
      code,
      stems: Number(count),
      words: `${count} ${of} symbols with one foot and heads spread on an arc`,
      seen: "one",
    };
  }
  const lump = at("(\\d)@-(cluster|bobble|puff|popcorn)");
  if (lump !== null) {
    const [, count, of, name] = lump;
    const { added, tail } = {
      cluster: { added: undefined, tail: "one head: a narrow leaf" },
      bobble: { added: undefined, tail: "one head" },
      puff: { added: "bowed" as const, tail: "one head, bowed out like a spindle" },
      popcorn: { added: "loop-at-head" as const, tail: "heads gathered under a small open loop" },
    }[name as "cluster" | "bobble" | "puff" | "popcorn"];
    return {
      ...plainly,
      ...form(of!),
      code,
      stems: Number(count),
      heads: "one",
      ...(added === undefined ? {} : { added }),
      words: `${count} ${of} symbols with one foot and ${tail}`,
      seen: "memory",
    };
  }
  const single = at("(e|f|l|spike-)@");
  if (single !== null) {
    const [, way, of] = single;
    const forms = {
      e: { added: "dot-at-foot" as const, words: `${of} symbol with a dot at its foot` },
      f: { foot: "on-chain" as const, words: `${of} symbol standing on its own chain` },
      l: { added: "link" as const, words: `${of} symbol with a short bar to its neighbour` },
      "spike-": { foot: "reach" as const, words: `${of} symbol whose foot reaches into an earlier row` },
    }[way as "e" | "f" | "l" | "spike-"];
    return { ...plainly, ...form(of!), code, ...forms, seen: "memory" };
  }
  const pair = at("@-v") ?? at("crossed-@");
  if (pair !== null) {
    const of = pair[1]!;
    const crossing = code.startsWith("crossed");
    return {
      ...plainly,
      ...form(of),
      code,
      stems: 2,
      feet: crossing ? "apart" : "one",
      added: crossing ? "crossing" : "chain-between",
      words: crossing
        ? `two ${of} symbols crossing; the unbroken one lies in front`
        : `two ${of} symbols with one foot and a chain between their heads`,
      seen: "memory",
    };
  }
  const picot = /^picot-(\d)$/u.exec(code);
  if (picot !== null) {
    return {
      ...plainly,
      code,
      shape: "ring",
      stems: Number(picot[1]),
      words: `${picot[1]} chains curled in a ring that ends where it starts`,
      seen: "memory",
    };
  }
  return undefined;
}

const SYMBOLS: ReadonlyMap<string, ChartSymbol> = new Map(
  [...BASE, ...SIGNS, ...otherSymbols()].map((symbol) => [symbol.code, symbol]),
);

function otherSymbols(): ChartSymbol[] {
  const drawn = new Set([...BASE, ...SIGNS].map((symbol) => symbol.code));
  const wanted = new Set(DICTIONARY.map((stitch) => stitch.symbol).filter((code) => !drawn.has(code)));
  return [...wanted].flatMap((code) => regularSymbol(code) ?? []);
}

/**
 * The parts of a stitch's chart symbol.
 * @throws {RangeError} on a symbol code that no stitch has
 */
export function symbolOf(code: string): ChartSymbol {
  const symbol = SYMBOLS.get(code);
  if (symbol === undefined) throw new RangeError(`no chart symbol has the code "${code}"`);
  return symbol;
}
