import type { Choices } from "./choices.ts";
import type { DraftParts } from "./draft.ts";
import { mainGauge, nearestEven, postRibGauge } from "./estimates.ts";
import { isPlain } from "./fabric.ts";

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

export function draftRaglan(choices: Choices): DraftParts {
  const [row] = choices.fabric.rows;
  const stitch = row && isPlain(row.stitches) ? row.stitches.plain : "sc";
  const words = new Rounds(stitch, row?.chains ?? 1);
  const ribRounds = Math.max(3, Math.round(choices.ribDepth / postRibGauge(choices).rowCm));
  return {
    plan: planOf(choices),
    counts: countsOf(choices),
    ties: [],
    fabricsUsed: { postRib: true, ridges: false },
    introduction: [
      `A raglan pullover, begun at the neck and worked downwards in joined rounds without turning. ${choices.fabric.looks}`,
      "Four corner spaces mark the raglan lines. At the underarm the yoke is divided in three: the body is finished first, then each sleeve is worked down from the stitches that were skipped. There is nothing to sew.",
    ],
    notions: "4 locking stitch markers, yarn needle.",
    notes: [
      `Each rnd starts with ch ${words.chains}, which never counts as a st, and is joined with a sl st in the first ${stitch} (or FPdc) of the rnd. Work the first st in the same place as the join.`,
      "Rnds are joined at the center of the back.",
      `Counts give the ${stitch}. There are always 4 corner ch-2 sps as well until the yoke is divided.`,
      "Where a size has 0, leave that step out and go on with the next.",
    ],
    pieces: [
      ...yoke(choices, words),
      ...body(choices, words, ribRounds),
      ...sleeves(choices, words, ribRounds),
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
    ["underarm to hem", "135 % of back length minus yoke depth"],
    ["sleeve length", "arm length"],
    ["cuff", "a third of upper arm plus 12.5 cm"],
  ];
}

function countsOf(choices: Choices): DraftParts["counts"] {
  const stitches = "in: main, of: stitches";
  const repeats = "of: repeats, order: any";
  const { stitchCm, rowCm } = mainGauge(choices);
  // Too few rounds for the stitches would ruffle, too many stitches at once pull; half a hand at the start of the yoke is enough.
  const straight = nearestEven(4 / rowCm);
  return [
    ["half back neck sts", `along: 18 % of neck edge, ${stitches}`],
    ["back neck sts", "same as: twice half back neck sts"],
    [
      "sleeve neck sts",
      `along: 14 % of neck edge, ${stitches}, parity: even, at least: ${nearestEven(3 / stitchCm)}`,
    ],
    ["neck sts", "same as: twice back neck sts plus twice sleeve neck sts"],
    ["both increases", repeats],
    ["body increases", repeats],
    ["even rounds", repeats],
    ["yoke sts 1", "same as: neck sts plus 8 times both increases"],
    ["yoke sts 2", "same as: yoke sts 1 plus 12 times body increases"],
    ["yoke sts 3", "same as: yoke sts 2 plus 8 times even rounds"],
    [
      "yoke rounds",
      "along: yoke depth, in: main, of: rows, order: any, same as: both increases plus twice body increases plus twice even rounds plus 1",
    ],
    [
      "half back sts",
      "same as: half back neck sts plus both increases plus twice body increases plus even rounds",
    ],
    ["back sts", "same as: twice half back sts"],
    [
      "sleeve yoke sts",
      "same as: sleeve neck sts plus twice both increases plus twice body increases plus twice even rounds",
    ],
    ["half underarm sts", `along: half of underarm, ${stitches}, at least: 1`],
    ["underarm sts", "same as: twice half underarm sts"],
    ["body sts", `along: finished bust, ${stitches}, same as: twice back sts plus twice underarm sts`],
    ["body sts before chains", "same as: twice back sts"],
    ["body rounds", "along: underarm to hem minus rib depth, in: main, of: rows, order: any"],
    [
      "upper sleeve sts",
      `along: upper sleeve, ${stitches}, same as: sleeve yoke sts plus underarm sts plus 2`,
    ],
    ["slow decreases", repeats],
    ["fast decreases", repeats],
    ["quick decreases", repeats],
    ["sleeve sts 1", "same as: upper sleeve sts minus 2 times slow decreases"],
    ["sleeve sts 2", "same as: sleeve sts 1 minus 2 times fast decreases"],
    ["cuff sts", `along: cuff, ${stitches}, same as: sleeve sts 2 minus 2 times quick decreases`],
    ["straight rounds", `of: rows, order: any, at least: ${straight}`],
    [
      "sleeve rounds",
      "along: sleeve length minus rib depth, in: main, of: rows, order: any, same as: 4 times slow decreases plus twice fast decreases plus quick decreases plus straight rounds plus 1",
    ],
  ];
}

function yoke(choices: Choices, { stitch, start, each }: Rounds): readonly string[] {
  const chain = (count: string): string => `${stitch} in each of next {${count}} ch`;
  const corner = "corner ch-2 sp";
  return [
    "# Yoke",
    `With ${choices.hookMm} mm hook, ch {neck sts}. Without twisting, join with a sl st in first ch to form a ring.`,
    `Rnd 1 (RS): ${start}, ${stitch} in each of first {half back neck sts} ch, ch 2, ${chain("sleeve neck sts")}, ch 2, ${chain("back neck sts")}, ch 2, ${chain("sleeve neck sts")}, ch 2, ${stitch} in each of last {half back neck sts} ch; join. {neck sts} ${stitch} and 4 ch-2 sps.`,
    "",
    "The rnds below are named, not numbered.",
    `Full increase rnd: ${start}, *${each} to ${corner}, (${stitch}, ch 2, ${stitch}) in ${corner}; rep from * 3 more times, ${each} to end; join. 8 sts increased.`,
    `Body increase rnd: ${start}, ${each} to ${corner}, ${stitch} in ${corner}, ch 2, ${each} to next ${corner}, ch 2, ${stitch} in same ${corner}, ${each} to next ${corner}, ${stitch} in ${corner}, ch 2, ${each} to next ${corner}, ch 2, ${stitch} in same ${corner}, ${each} to end; join. 4 sts increased.`,
    `Even yoke rnd: ${start}, *${each} to ${corner}, ch 2, skip ${corner}; rep from * 3 more times, ${each} to end; join. No sts increased.`,
    "",
    "Work the yoke in this order:",
    `Step 1. Work the Full increase rnd {both increases} times. {yoke sts 1} ${stitch}.`,
    `Step 2. Work (Body increase rnd, Full increase rnd) {body increases} times. {yoke sts 2} ${stitch}.`,
    `Step 3. Work (Even yoke rnd, Full increase rnd) {even rounds} times. {yoke sts 3} ${stitch}: back {back sts}, sleeves {sleeve yoke sts} each, front {back sts}.`,
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

function sleeves(choices: Choices, { stitch, start, each }: Rounds, ribRounds: number): readonly string[] {
  return [
    "# Sleeves (work both alike)",
    `With RS facing and ${choices.hookMm} mm hook, join yarn with a sl st at the middle of the underarm ch.`,
    `Rnd 1: ${start}, ${stitch} in each of next {half underarm sts} ch, ${stitch} in corner ch-2 sp, ${stitch} in each of {sleeve yoke sts} sleeve sts, ${stitch} in next corner ch-2 sp, ${stitch} in each of rem {half underarm sts} ch; join. {upper sleeve sts} ${stitch}.`,
    `Plain rnd: ${start}, ${each} around; join.`,
    `Decrease rnd: ${start}, ${stitch}2tog, ${each} to last 2 sts, ${stitch}2tog; join. 2 sts decreased.`,
    `Next rnds: Work (Plain rnd 3 times, then Decrease rnd once) {slow decreases} times. {sleeve sts 1} ${stitch}.`,
    `Next rnds: Work (Plain rnd once, then Decrease rnd once) {fast decreases} times. {sleeve sts 2} ${stitch}.`,
    `Next rnds: Work the Decrease rnd {quick decreases} times. {cuff sts} ${stitch}.`,
    `Next {straight rounds} rnds: Work the Plain rnd. {cuff sts} ${stitch}. The sleeve has {sleeve rounds} rnds.`,
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
