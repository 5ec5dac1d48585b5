import { existsSync, statSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { keptFiles, keptText, root } from "../scripts/repository.mjs";

interface Link {
  readonly from: string;
  readonly to: string;
}

const pages = keptFiles().filter((name) => name.endsWith(".md") && !/^(fixtures|samples)\//.test(name));
const links = pages.flatMap((page) => linksOf(page, keptText(page) ?? ""));

/** Links of one page, without those that leave the house. Code is not read: a pattern's brackets are no links. */
function linksOf(from: string, text: string): Link[] {
  const prose = text.replace(/^(```|~~~)[\s\S]*?^\1/gm, "").replace(/`[^`\n]*`/g, "");
  return [...prose.matchAll(/\]\(\s*<?([^)>\s]+)[^)]*\)/g), ...prose.matchAll(/^\[[^\]]+\]:\s*(\S+)/gm)]
    .map((match) => ({ from, to: match[1] ?? "" }))
    .filter(({ to }) => !/^(https?|mailto):/.test(to));
}

/** Why a link is broken, or undefined. An anchor is a heading, lower case, spaces as hyphens. */
function fault({ from, to }: Link): string | undefined {
  const [file = "", anchor] = to.split("#");
  const target = file === "" ? from : path.posix.join(path.posix.dirname(from), decodeURIComponent(file));
  if (target.startsWith("..") || !existsSync(root + target)) return `${from}: ${to} is not there`;
  if (anchor === undefined || statSync(root + target).isDirectory()) return undefined;
  return headings(keptText(target) ?? "").includes(anchor)
    ? undefined
    : `${from}: ${target} has no heading #${anchor}`;
}

const headings = (text: string): string[] =>
  [...text.matchAll(/^#{1,6} +(.+?) *$/gm)].map((match) =>
    (match[1] ?? "")
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s_-]/gu, "")
      .replace(/\s/g, "-"),
  );

describe("links between pages", () => {
  it("lead somewhere", () => expect(links.map(fault).filter((said) => said !== undefined)).toEqual([]));
  it("were really followed", () => expect(links.length).toBeGreaterThan(4));
  it("reach every page under docs/ from the README or the map", () => {
    const reached = new Set(["README.md", "ARCHITECTURE.md"]);
    for (const page of reached) {
      for (const { to } of linksOf(page, pages.includes(page) ? (keptText(page) ?? "") : "")) {
        const target = path.posix.join(path.posix.dirname(page), to.split("#")[0] ?? "");
        if (existsSync(root + target) && statSync(root + target).isDirectory()) {
          for (const inside of pages)
            if (inside.startsWith(`${target.replace(/\/$/, "")}/`)) reached.add(inside);
        } else reached.add(target);
      }
    }
    expect(pages.filter((page) => page.startsWith("docs/") && !reached.has(page))).toEqual([]);
  });
  it("are found broken when they are", () => {
    expect(linksOf("docs/a.md", "[x](b.md), `[c](d)` and [far](https://example.org)")).toEqual([
      { from: "docs/a.md", to: "b.md" },
    ]);
    expect(fault({ from: "docs/a.md", to: "no-such-page.md" })).toBe(
      "docs/a.md: no-such-page.md is not there",
    );
    expect(fault({ from: "LICENSE", to: "#nowhere" })).toBe("LICENSE: LICENSE has no heading #nowhere");
  });
});
