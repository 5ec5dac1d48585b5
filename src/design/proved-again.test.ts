import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it, vi } from "vitest";
import { editRight, makeGarment } from "../../tools/bench/garment.ts";
import { proveDesign } from "./index.ts";
import type { Proof } from "./proof.ts";

const samples = new URL("../../samples/", import.meta.url);
const texts = readdirSync(samples)
  .filter((name) => /\.(?:txt|md)$/u.test(name))
  .map((name) => ({ name, text: readFileSync(new URL(name, samples), "utf8") }));

/** The same numbers in every run. */
function randomFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
    return (state >> 8) % below;
  };
}

/** One line of a text changed as a designer changes it. */
function edited(text: string, random: (below: number) => number): string {
  const lines = text.split("\n");
  const rows = [...lines.keys()].filter((at) => /^(?:row|rnd|ch|with)\b/iu.test(lines[at] as string));
  const at = rows[random(rows.length)] ?? 0;
  const line = lines[at] as string;
  const ways = [
    () => line.replace(/\d+(?=\D*$)/u, (number) => String(Number(number) + 1 + random(12))),
    () => line.replace(/\d+/gu, (number) => (random(4) === 0 ? String(Number(number) + 1) : number)),
    () => line.replace(/\b(?:sc|dc|hdc|tr)\b/u, () => ["sc", "dc", "hdc", "tr"][random(4)] as string),
    () => `${line}\n${line}`,
    () => line.slice(0, random(line.length)),
    () => `\nA few words more.\n\n${line}`,
  ];
  lines[at] = (ways[random(ways.length)] as () => string)();
  return lines.join("\n");
}

/** A proof by rooms that have proved nothing before. */
async function provedAfresh(text: string) {
  vi.resetModules();
  const design = await import("./index.ts");
  return rowsOf(design.proveDesign(text));
}

/** What a proof says of the rows. */
const rowsOf = ({ tree, worked, findings, answered, coverage }: Proof) => ({
  tree,
  worked,
  findings,
  answered,
  coverage,
});

describe("a design proved after others like it", { timeout: 120_000 }, () => {
  for (const [seed, { name, text }] of texts.entries())
    it(`comes out as by one who never saw the others: ${name}`, async () => {
      const random = randomFrom(seed + 1);
      proveDesign(text);
      let now = text;
      for (let edit = 0; edit < 2; edit++) {
        now = edited(edit % 2 === 0 ? text : now, random);
        proveDesign(now);
      }
      expect(rowsOf(proveDesign(now))).toEqual(await provedAfresh(now));
    });

  it("comes out as by one who never saw the others: a garment of nine sizes", async () => {
    const garment = makeGarment(3);
    proveDesign(garment.text);
    proveDesign(editRight(garment, 1));
    const text = `\n${editRight(garment, 2)}`;
    expect(rowsOf(proveDesign(text))).toEqual(await provedAfresh(text));
  });
});
