import type { FabricPattern } from "./fabric.ts";

/*
 * Stitch patterns of our own choosing to begin with, from the basic stitches. All keep their number of stitches in every row,
 * begin in the first stitch, and their turning chain never counts, so that edges stay straight. Aspects: heights of stitches
 * from the computation notes (sc 1, hdc 1.4, dc 1.9 over a stitch about as wide as a sc is high); a swatch replaces them.
 */
export const FABRICS: readonly FabricPattern[] = [
  {
    name: "single crochet",
    stitch: "sc",
    looks: "Plain and dense.",
    multiple: { of: 1, plus: 0 },
    rows: [{ chains: 1, stitches: { plain: "sc" } }],
    aspect: 0.95,
  },
  {
    name: "half double crochet",
    stitch: "hdc",
    looks: "Plain, soft and quick.",
    multiple: { of: 1, plus: 0 },
    rows: [{ chains: 1, stitches: { plain: "hdc" } }],
    aspect: 1.3,
  },
  {
    name: "double crochet",
    stitch: "dc",
    looks: "Plain and light, with good drape.",
    multiple: { of: 1, plus: 0 },
    rows: [{ chains: 2, stitches: { plain: "dc" } }],
    aspect: 1.8,
  },
  {
    name: "ridges",
    stitch: "sc in back loops",
    looks: "Every row leaves a ridge; stretches upwards.",
    multiple: { of: 1, plus: 0 },
    rows: [{ chains: 1, stitches: { plain: "sc", loops: "BLO" } }],
    aspect: 1.05,
  },
  {
    name: "soft ridges",
    stitch: "hdc in back loops",
    looks: "Broad soft ridges with much give.",
    multiple: { of: 1, plus: 0 },
    rows: [{ chains: 1, stitches: { plain: "hdc", loops: "BLO" } }],
    aspect: 1.4,
  },
  {
    name: "tall and short",
    stitch: "one row of dc, one row of sc",
    looks: "Open and closed bands in turn.",
    multiple: { of: 1, plus: 0 },
    rows: [
      { chains: 2, stitches: { plain: "dc" } },
      { chains: 1, stitches: { plain: "sc" } },
    ],
    aspect: 1.35,
  },
  {
    name: "bumps",
    stitch: "one row of sc and dc, one row of sc",
    looks: "Small bumps stand out on the right side.",
    multiple: { of: 2, plus: 1 },
    rows: [
      { chains: 1, stitches: { before: "sc in first st", unit: "dc in next st, sc in next st" } },
      { chains: 1, stitches: { plain: "sc" } },
    ],
    aspect: 1,
  },
  {
    name: "pebbles",
    stitch: "sc and dc in turn, sc over dc and dc over sc",
    looks: "An even grain, the same on both sides.",
    multiple: { of: 2, plus: 0 },
    rows: [{ chains: 1, stitches: { unit: "sc in next st, dc in next st" } }],
    aspect: 1.2,
  },
  {
    name: "crosses",
    stitch: "one row of crossed dc, one row of sc",
    looks: "Slanting crosses between thin lines.",
    multiple: { of: 2, plus: 2 },
    rows: [
      {
        chains: 2,
        stitches: {
          before: "dc in first st",
          unit: "skip next st, dc in next st, dc in skipped st",
          after: { words: "dc in last st", takes: 1 },
        },
      },
      { chains: 1, stitches: { plain: "sc" } },
    ],
    aspect: 1.35,
  },
  {
    name: "columns",
    stitch: "dc with post stitches between",
    looks: "Narrow raised columns run up the right side.",
    multiple: { of: 2, plus: 1 },
    rows: [
      { chains: 2, stitches: { before: "dc in first st", unit: "FPdc around next st, dc in next st" } },
      { chains: 2, stitches: { before: "dc in first st", unit: "BPdc around next st, dc in next st" } },
    ],
    aspect: 1.6,
  },
  {
    name: "puffs",
    stitch: "one row of hdc and puffs, one row of hdc",
    looks: "Round puffs on a plain ground.",
    multiple: { of: 4, plus: 3 },
    edge: "hdc",
    rows: [
      {
        chains: 1,
        stitches: {
          before: "hdc in each of first 3 sts",
          unit: "puff in next st, hdc in each of next 3 sts",
        },
      },
      { chains: 1, stitches: { plain: "hdc" } },
    ],
    aspect: 1.3,
  },
  {
    name: "basket",
    stitch: "blocks of post stitches",
    looks: "Woven blocks, thick and warm.",
    multiple: { of: 6, plus: 3 },
    edge: "dc",
    rows: [basket("FPdc", "BPdc"), basket("BPdc", "FPdc"), basket("BPdc", "FPdc"), basket("FPdc", "BPdc")],
    aspect: 1.35,
  },
];

function basket(one: string, other: string): FabricPattern["rows"][number] {
  return {
    chains: 2,
    stitches: {
      unit: `${one} around each of next 3 sts, ${other} around each of next 3 sts`,
      after: { words: `${one} around each of last 3 sts`, takes: 3 },
    },
  };
}

/** The fabric of a name; undefined where there is none. */
export const fabricNamed = (name: string): FabricPattern | undefined =>
  FABRICS.find((fabric) => fabric.name === name.trim().toLowerCase());
