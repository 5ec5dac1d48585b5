import { describe, expect, it } from "vitest";
import { beginDesign } from "./begin.ts";
import type { Choices } from "./choices.ts";
import { FABRICS, fabricNamed } from "./fabrics.ts";

const choices = (over: Partial<Choices> = {}): Choices => {
  const fabric = over.fabric ?? (fabricNamed("bumps") as Choices["fabric"]);
  return {
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
    neckDrop: 8,
    ribDepth: 5,
    forChildren: false,
    ...over,
  };
};

/** What a draft may still be told: that a coarse repeat misses the plan. */
const COARSE = new Set(["design/misses-plan"]);

async function begun(over: Partial<Choices>) {
  const design = await beginDesign(choices(over));
  if (design.is !== "begun") throw new Error(design.why.findings.map(({ what }) => what).join(" "));
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
    60_000,
  );

  it("has the body in the fabric's multiple, and the sleeve top round the armhole", async () => {
    const { proof } = await begun({});
    const values = (name: string) => proof.table?.counts.find((count) => count.name === name)?.values ?? [];
    for (const sts of values("body sts")) expect((sts as number) % 2).toBe(1);
    for (const rows of values("armhole rows")) expect((rows as number) % 2).toBe(0);
    values("body sts").forEach((sts, size) => {
      expect(sts).toBe((values("chest sts")[size] as number) + 2 * (values("notch sts")[size] as number));
    });
  }, 60_000);

  it("is one and the same every time", async () => {
    expect((await begun({})).text).toBe((await begun({})).text);
  }, 60_000);
});
