import loadHighs from "highs";
import { describe, expect, it } from "vitest";
import { highsSolver } from "../sizing/index.ts";
import { beginDesign } from "./begin.ts";
import type { Choices } from "./choices.ts";
import { FABRICS, fabricNamed } from "./fabrics.ts";

const choices = (over: Partial<Choices> = {}): Choices => {
  const fabric = over.fabric ?? (fabricNamed("bumps") as Choices["fabric"]);
  return {
    construction: "pullover",
    title: "Draft",
    body: "women, corrected",
    sizes: ["S", "XL", "4X"],
    fabric,
    gauge: { stitches: 14, rows: Math.round((2 * 14) / fabric.aspect) / 2 },
    hookMm: 5.5,
    ribHookMm: 5,
    yarn: { class: 4, metres: 95, grams: 50 },
    ease: { bust: 14, upperArm: 11 },
    armhole: "notch",
    hem: "post rib",
    bodyLength: "135 % of back length",
    neckDrop: 8,
    ribDepth: 5,
    sleeves: true,
    pockets: false,
    forChildren: false,
    ...over,
  };
};

/** What a draft may still be told: that a coarse repeat misses the plan. */
const COARSE = new Set(["design/misses-plan"]);

async function begun(over: Partial<Choices>) {
  const design = await beginDesign(choices(over), highsSolver(await loadHighs()));
  if (design.is === "not graded") throw new Error(design.why.findings.map(({ what }) => what).join(" "));
  if (design.is === "not wearable") throw new Error(design.why.join(" "));
  return design;
}

describe("a pullover from the hem up", () => {
  it.each(FABRICS.map((fabric, at) => [fabric.name, fabric, at] as const))(
    "is written and proved in %s",
    async (_, fabric, at) => {
      const { proof } = await begun({
        fabric,
        sizes: ["S", "4X"],
        armhole: at % 2 === 0 ? "notch" : "straight",
        hem: at % 4 < 2 ? "post rib" : "ridges",
      });
      const told = proof.findings.filter(({ severity, code }) => severity !== "note" && !COARSE.has(code));
      expect(told.map(({ what, why }) => `${what} ${why}`)).toEqual([]);
      expect(proof.coverage.read).toBe(proof.coverage.instructionLines);
      expect(proof.coverage.onTrust).toBe(0);
    },
  );

  it("has the body in the fabric's multiple, and the sleeve top round the armhole", async () => {
    const { proof } = await begun({});
    const values = (name: string) => proof.table?.counts.find((count) => count.name === name)?.values ?? [];
    for (const sts of values("body sts")) expect((sts as number) % 2).toBe(1);
    for (const rows of values("armhole rows")) expect((rows as number) % 2).toBe(0);
    values("body sts").forEach((sts, size) => {
      expect(sts).toBe((values("chest sts")[size] as number) + 2 * (values("notch sts")[size] as number));
    });
  });

  it("is one and the same every time", async () => {
    expect((await begun({})).text).toBe((await begun({})).text);
  });
});

describe("a raglan from the neck", () => {
  it.each(["single crochet", "half double crochet", "double crochet"])(
    "is written and proved in %s",
    async (name) => {
      const fabric = fabricNamed(name) as Choices["fabric"];
      const { proof } = await begun({ construction: "raglan", fabric, sizes: ["XS", "L", "5X"] });
      const told = proof.findings.filter(({ severity, code }) => severity !== "note" && !COARSE.has(code));
      expect(told.map(({ what, why }) => `${what} ${why}`)).toEqual([]);
      expect(proof.coverage.read).toBe(proof.coverage.instructionLines);
      expect(proof.coverage.onTrust).toBe(0);
    },
  );

  // Chains under the arms are counted twice, once on the body and once on the sleeve. Source: trade handbook, section 2.4 (raglan).
  it("counts the chains under the arms on the body and on both sleeves", async () => {
    const fabric = fabricNamed("half double crochet") as Choices["fabric"];
    const { proof } = await begun({ construction: "raglan", fabric, sizes: ["S", "4X"] });
    const values = (name: string) => proof.counts?.find((count) => count.name === name)?.values as number[];
    values("back sts").forEach((back, size) => {
      const yoke = 2 * back + 2 * (values("sleeve yoke sts")[size] as number);
      const under = values("underarm sts")[size] as number;
      const worn = (values("body sts")[size] as number) + 2 * (values("upper sleeve sts")[size] as number);
      expect(worn).toBe(yoke + 4 * under + 4);
    });
  });
});
