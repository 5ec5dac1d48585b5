import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { root } from "../scripts/repository.mjs";
import { proveDesign } from "../src/design/index.ts";

const folder = `${root}docs/findings/design/`;
const pages = readdirSync(folder).filter((name) => name.endsWith(".md"));

it("finds the pages", () => expect(pages.length).toBeGreaterThan(15));

describe.each(pages)("the page %s", (name) => {
  const code = `design/${name.slice(0, -".md".length)}`;
  const page = readFileSync(folder + name, "utf8");
  const fences = [...page.matchAll(/^```pattern (\w+)(?: also ([^\n]+))?\n([\s\S]*?)^```$/gm)];
  const [wrong, right] = fences.map(([, , also, text]) => ({
    also: also?.split(" ") ?? [],
    text: text ?? "",
  }));
  const codes = (text: string) =>
    [...new Set(proveDesign(text).findings.map((finding) => finding.code))].sort();

  it("shows a design that has this finding, and those it names, and no other", () =>
    expect(codes(wrong?.text ?? "")).toEqual([code, ...(wrong?.also ?? [])].sort()));
  it("shows a design that has none", () => expect(codes(right?.text ?? "")).toEqual([]));
});
