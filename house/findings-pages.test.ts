import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { root } from "../scripts/repository.mjs";
import { declaredCodes } from "../src/base/index.ts";
import * as design from "../src/design/findings/index.ts";
import * as notation from "../src/notation/findings/index.ts";
import * as working from "../src/working/findings/index.ts";

const folder = `${root}docs/findings/`;
const index = readFileSync(`${folder}index.md`, "utf8").replace(/ +\|/g, " |");
const kinds = [working, notation, design].flatMap((room) => Object.values(room));
const pages = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .map((name) => name.replaceAll("\\", "/"))
  .filter((name) => name.endsWith(".md") && name !== "index.md")
  .map((name) => name.slice(0, -".md".length))
  .sort();

describe("the manual's pages on findings", () => {
  it("are one for each code, and no other", () => {
    expect(pages.length).toBeGreaterThan(40);
    expect(pages).toEqual(kinds.map((kind) => kind.code).sort());
  });

  it("leave out no code that is declared in those rooms", () =>
    expect(declaredCodes()).toEqual(kinds.map((kind) => kind.code).sort()));

  it("are all listed in the index, once each", () => {
    const listed = [...index.matchAll(/^\| \[(.+?)\]\((.+?)\.md\) \| (\w+) \|/gm)];
    expect(listed.map(([, code]) => code).sort()).toEqual(pages);
    for (const [, code, target] of listed) expect(target).toBe(code);
  });
});

describe.each(kinds.map((kind) => [kind.code, kind.severity] as const))("%s", (code, severity) => {
  const page = pages.includes(code) ? readFileSync(`${folder}${code}.md`, "utf8") : "";
  const fences = [...page.matchAll(/^```pattern (\w+)(?: also ([^\n]+))?\n([\s\S]*?)^```$/gm)];

  it("has its severity on the page and in the index", () => {
    expect(page).toContain(`\`${code}\` · ${severity}\n`);
    expect(index).toContain(`| [${code}](${code}.md) | ${severity} |`);
  });

  it("shows one pattern wrong and one right, and they differ", () => {
    expect(fences.map(([, which]) => which)).toEqual(["wrong", "right"]);
    const [wrong, right] = fences.map(([, , , text]) => text ?? "");
    expect(wrong).not.toBe(right);
    for (const text of [wrong, right]) expect(text).toMatch(/^(?:Row|Rnd) \d/m);
  });

  it("names as company only findings that there are", () => {
    for (const [, which, also] of fences) {
      for (const other of also?.split(" ") ?? []) expect(pages).toContain(other);
      if (which === "right") expect(also).toBeUndefined();
    }
  });
});
