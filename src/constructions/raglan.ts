import type { Choices } from "./choices.ts";
import type { DraftParts } from "./draft.ts";
import { mainGauge, nearestEven, postRibGauge } from "./estimates.ts";
import { isPlain } from "./fabric.ts";
import { fitWords } from "./fit-words.ts";
import { type Settled, type Step, stepsWorked, sumOf, ZERO_NOTE } from "./settled.ts";

/*
 * A raglan worked from the neck down in joined rounds: body and sleeves increase at their own pace over the same rounds, the
 * yoke is divided in three with chains under the arms, body and sleeves are worked down. Rules: trade handbook, section 2.4
 * (raglan: split of the neck, underarm about 8 % of the body, two schedules over the same rounds, chains count twice).
 */

/** Whether a fabric can be worked in joined rounds without turning as it stands: one plain stitch. */
export function worksInRounds({ fabric }: Pick<Choices, "fabric">): boolean {
  const [row] = fabric.rows;
  return fabric.rows.length === 1 && row !== undefined && isPlain(row.stitches) && !row.stitches.loops;
}

export function draftRaglan(choices: Choices, settled: Settled): DraftParts {
  const [row] = choices.fabric.rows;
  const stitch = row && isPlain(row.stitches) ? row.stitches.plain : "sc";
  const words = new Rounds(stitch, row?.chains ?? 1);
  const ribRounds = Math.max(3, Math.round(choices.ribDepth / postRibGauge(choices).rowCm));
  return {
    plan: planOf(choices),
    counts: countsOf(choices, settled),
    ties: [],
    fabricsUsed: { postRib: true, ridges: false },
    introduction: [
      `A raglan pullover, begun at the neck and worked downwards in joined rounds without turning. ${choices.fabric.looks}`,
      fitWords(choices),
      "Four corner spaces mark the raglan lines. At the underarm the yoke is divided in three: the body is finished first, then each sleeve is worked down from the stitches that were skipped. There is nothing to sew.",
    ],
    notions: "4 locking stitch markers, yarn needle.",
    notes: [
      `Each rnd starts with ch ${words.chains}, which never counts as a st, and is joined with a sl st in the first ${stitch} (or FPdc) of the rnd. Work the first st in the same place as the join.`,
      "Rnds are joined at the center of the back.",
      `Counts give the ${stitch}. There are always 4 corner ch-2 sps as well until the yoke is divided.`,
      ...(settled.zeros ? [ZERO_NOTE] : []),
    ],
    pieces: [
      ...yoke(choices, words, settled),
      ...body(choices, words, ribRounds),
      ...sleeves(choices, words, ribRounds, settled),
      ...neckband(choices, words),
    ],
  };
}

class Rounds {
  constructor(
    readonly stitch: string,
    readonly chains: number,
  ) {}

  get each(): string {
    return `${this.stitch} in each st`;
  }

  get start(): string {
    return `Ch ${this.chains}`;
  }
}

function planOf(choices: Choices): DraftParts["plan"] {
  return [
    ["neck edge", choices.forChildren ? "180 % of cross back" : "150 % of cross back"],
    ["yoke depth", "armhole depth plus 3 cm"],
    ["upper sleeve", "finished upper arm"],
    ["underarm", "8 % of finished bust"],
    ["rib depth", `${choices.ribDepth} cm`],
    ["underarm to hem", `${choices.bodyLength} minus yoke depth`],
    ["sleeve length", "arm length"],
    ["cuff", "a third of upper arm plus 12.5 cm"],
    ["straight above cuff", "5 cm"],
  ];
}

/** The yoke's steps: what one time adds on the whole round, and how many rounds it is. */
const YOKE: readonly Step[] = [
  { name: "both increases", stitches: "8 times", rows: "" },
  { name: "body increases", stitches: "12 times", rows: "twice" },
  { name: "even rounds", stitches: "8 times", rows: "twice" },
  { name: "plain rounds", stitches: "", rows: "" },
];

/** What one time of a step adds to half of the back, and to a sleeve. */
const YOKE_PARTS: Readonly<Record<string, { readonly back: string; readonly sleeve: string }>> = {
  "both increases": { back: "", sleeve: "twice" },
  "body increases": { back: "twice", sleeve: "twice" },
  "even rounds": { back: "", sleeve: "twice" },
};

const SLEEVE: readonly Step[] = [
  { name: "slow decreases", stitches: "twice", rows: "4 times" },
  { name: "fast decreases", stitches: "twice", rows: "twice" },
  { name: "quick decreases", stitches: "twice", rows: "" },
];

function countsOf(choices: Choices, settled: Settled): DraftParts["counts"] {
  const stitches = "in: main, of: stitches";
  const repeats = "of: repeats, order: any";
  const { stitchCm, rowCm } = mainGauge(choices);
  // Too few rounds for the stitches would ruffle, too many stitches at once pull; half a hand at the start of the yoke is enough.
  const straight = nearestEven(4 / rowCm);
  const steps = stepsWorked(YOKE, settled);
  const shaping = steps.filter(({ name }) => name in YOKE_PARTS);
  const parts = (of: "back" | "sleeve"): string =>
    sumOf(
      shaping.map((step) => ({ ...step, stitches: YOKE_PARTS[step.name]?.[of] ?? "" })),
      "stitches",
    );
  const decreases = stepsWorked(SLEEVE, settled);
  return [
    // As many times as each is in the neck edge, which has to go over the head.
    ["half back neck sts", `along: 18 % of neck edge, ${stitches}, weight: 4`],
    ["back neck sts", "same as: twice half back neck sts"],
    [
      "sleeve neck sts",
      `along: 14 % of neck edge, ${stitches}, parity: even, at least: ${nearestEven(3 / stitchCm)}, weight: 2`,
    ],
    ["neck sts", "same as: twice back neck sts plus twice sleeve neck sts"],
    ...steps.map(
      ({ name }) =>
        [
          name,
          name === "plain rounds" ? `${repeats}, at most: ${Math.max(1, Math.round(4 / rowCm))}` : repeats,
        ] as const,
    ),
    ...shaping.map(
      ({ name }, at) =>
        [
          `yoke sts after ${name}`,
          `same as: neck sts${sumOf(shaping.slice(0, at + 1), "stitches")}`,
        ] as const,
    ),
    [
      "yoke rounds",
      `along: yoke depth, in: main, of: rows, order: any, same as: ${`${sumOf(steps, "rows")} plus 1`.replace(/^ plus /, "")}`,
    ],
    ["half back sts", `same as: half back neck sts${parts("back")}`],
    ["back sts", "same as: twice half back sts"],
    ["sleeve yoke sts", `same as: sleeve neck sts${parts("sleeve")}`],
    ["half underarm sts", `along: half of underarm, ${stitches}, at least: 1`],
    ["underarm sts", "same as: twice half underarm sts"],
    ["body sts", `along: finished bust, ${stitches}, same as: twice back sts plus twice underarm sts`],
    ["body sts before chains", "same as: twice back sts"],
    ["body rounds", "along: underarm to hem minus rib depth, in: main, of: rows, order: any"],
    [
      "upper sleeve sts",
      `along: upper sleeve, ${stitches}, same as: sleeve yoke sts plus underarm sts plus 2`,
    ],
    ...decreases.map(({ name }) => [name, repeats] as const),
    ...decreases.map(
      ({ name }, at) =>
        [
          `sleeve sts after ${name}`,
          `same as: upper sleeve sts${sumOf(decreases.slice(0, at + 1), "stitches", "minus")}`,
        ] as const,
    ),
    [
      "cuff sts",
      `along: cuff, ${stitches}, same as: upper sleeve sts${sumOf(decreases, "stitches", "minus")}`,
    ],
    [
      "straight rounds",
      `along: straight above cuff, in: main, of: rows, order: any, at least: ${straight}, weight: 0.2`,
    ],
    [
      "sleeve rounds",
      `along: sleeve length minus rib depth, in: main, of: rows, order: any, same as: straight rounds${sumOf(decreases, "rows")} plus 1`,
    ],
  ];
}

function yoke(choices: Choices, { stitch, start, each }: Rounds, settled: Settled): readonly string[] {
  const steps = stepsWorked(YOKE, settled).map(({ name }) => name);
  const works = (...names: readonly string[]): boolean => names.some((name) => steps.includes(name));
  const told: Readonly<Record<string, string>> = {
    "both increases": "Work the Full increase rnd {both increases} times.",
    "body increases": "Work (Body increase rnd, Full increase rnd) {body increases} times.",
    "even rounds": "Work (Even yoke rnd, Full increase rnd) {even rounds} times.",
    "plain rounds": "Work the Even yoke rnd {plain rounds} times.",
  };
  const shaping = steps.filter((name) => name in YOKE_PARTS);
  const comesTo = (name: string): string => {
    if (!shaping.includes(name)) return "";
    const parts =
      name === shaping.at(-1) ? ": back {back sts}, sleeves {sleeve yoke sts} each, front {back sts}" : "";
    return ` {yoke sts after ${name}} ${stitch}${parts}.`;
  };
  const chain = (count: string): string => `${stitch} in each of next {${count}} ch`;
  const corner = "corner ch-2 sp";
  return [
    "# Yoke",
    `With ${choices.hookMm} mm hook, ch {neck sts}. Without twisting, join with a sl st in first ch to form a ring.`,
    `Rnd 1 (RS): ${start}, ${stitch} in each of first {half back neck sts} ch, ch 2, ${chain("sleeve neck sts")}, ch 2, ${chain("back neck sts")}, ch 2, ${chain("sleeve neck sts")}, ch 2, ${stitch} in each of last {half back neck sts} ch; join. {neck sts} ${stitch} and 4 ch-2 sps.`,
    "",
    "The rnds below are named, not numbered.",
    `Full increase rnd: ${start}, *${each} to ${corner}, (${stitch}, ch 2, ${stitch}) in ${corner}; rep from * 3 more times, ${each} to end; join. 8 sts increased.`,
    ...(works("body increases")
      ? [
          `Body increase rnd: ${start}, ${each} to ${corner}, ${stitch} in ${corner}, ch 2, ${each} to next ${corner}, ch 2, ${stitch} in same ${corner}, ${each} to next ${corner}, ${stitch} in ${corner}, ch 2, ${each} to next ${corner}, ch 2, ${stitch} in same ${corner}, ${each} to end; join. 4 sts increased.`,
        ]
      : []),
    ...(works("even rounds", "plain rounds")
      ? [
          `Even yoke rnd: ${start}, *${each} to ${corner}, ch 2, skip ${corner}; rep from * 3 more times, ${each} to end; join. No sts increased.`,
        ]
      : []),
    "",
    "Work the yoke in this order:",
    ...steps.map((name, at) => `Step ${at + 1}. ${told[name]}${comesTo(name)}`),
    "With Rnd 1 you have worked {yoke rounds} rnds.",
    "",
    "## Dividing the yoke",
    `Division rnd: ${start}, ${stitch} in each of first {half back sts} sts, ch {underarm sts}, skip next ${corner}, next {sleeve yoke sts} sleeve sts and next ${corner}, ${stitch} in each of next {back sts} sts, ch {underarm sts}, skip next ${corner}, next {sleeve yoke sts} sleeve sts and next ${corner}, ${stitch} in each of last {half back sts} sts; join. {body sts before chains} ${stitch} and {underarm sts + underarm sts} ch.`,
    "",
  ];
}

const rib = "*FPdc around next st, BPdc around next st; rep from * around; join";

function body(choices: Choices, { stitch, start, each }: Rounds, ribRounds: number): readonly string[] {
  return [
    "# Body",
    `Rnd 1: ${start}, ${stitch} in each ${stitch} and in each ch around; join. {body sts} ${stitch}.`,
    `Rnds 2-{body rounds}: ${start}, ${each} around; join. {body sts} ${stitch}.`,
    `Change to ${choices.ribHookMm} mm hook.`,
    `Next ${ribRounds} rnds: Ch 1, ${rib}. {body sts} sts. Fasten off.`,
    "",
  ];
}

function sleeves(
  choices: Choices,
  { stitch, start, each }: Rounds,
  ribRounds: number,
  settled: Settled,
): readonly string[] {
  const steps = stepsWorked(SLEEVE, settled).map(({ name }) => name);
  const told: Readonly<Record<string, string>> = {
    "slow decreases": "(Plain rnd 3 times, then Decrease rnd once)",
    "fast decreases": "(Plain rnd once, then Decrease rnd once)",
    "quick decreases": "the Decrease rnd",
  };
  return [
    "# Sleeves (work both alike)",
    `With RS facing and ${choices.hookMm} mm hook, join yarn with a sl st at the middle of the underarm ch.`,
    `Rnd 1: ${start}, ${stitch} in each of next {half underarm sts} ch, ${stitch} in corner ch-2 sp, ${stitch} in each of {sleeve yoke sts} sleeve sts, ${stitch} in next corner ch-2 sp, ${stitch} in each of rem {half underarm sts} ch; join. {upper sleeve sts} sts.`,
    `Plain rnd: ${start}, ${each} around; join.`,
    ...(steps.length > 0
      ? [
          `Decrease rnd: ${start}, ${stitch}2tog, ${each} to last 2 sts, ${stitch}2tog; join. 2 sts decreased.`,
        ]
      : []),
    ...steps.map((name) => `Next rnds: Work ${told[name]} {${name}} times. {sleeve sts after ${name}} sts.`),
    `Next {straight rounds} rnds: Work the Plain rnd. {cuff sts} sts. The sleeve has {sleeve rounds} rnds.`,
    `Change to ${choices.ribHookMm} mm hook.`,
    `Next ${ribRounds} rnds: Ch 1, ${rib}. {cuff sts} sts. Fasten off.`,
    "",
  ];
}

function neckband(choices: Choices, { start, stitch }: Rounds): readonly string[] {
  return [
    "# Neckband",
    `With RS facing and ${choices.ribHookMm} mm hook, join yarn with a sl st in the free loop of the foundation ch at the center back.`,
    `Rnd 1: ${start}, {neck sts} ${stitch} around the neck edge; join. {neck sts} ${stitch}.`,
    `Rnd 2: Ch 1, ${rib}. {neck sts} sts. Fasten off.`,
    "",
    "# Finishing",
    "Weave in the ends. If a small gap shows beside an underarm chain, close it with the tail of the sleeve yarn. Wash as the yarn label says, lay flat to the measurements and leave to dry. Check before you weave in the last end that the neck stretches over the head.",
    "",
  ];
}
