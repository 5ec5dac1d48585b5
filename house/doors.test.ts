import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, it } from "vitest";
import { checkDoors } from "../scripts/doors.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const made: string[] = [];
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true });
});

/** Builds a small house from file name to content and returns what the check says about it. */
function doors(files: Record<string, string>): string[] {
  const house = mkdtempSync(path.join(tmpdir(), "doors-"));
  made.push(house);
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(house, name)), { recursive: true });
    writeFileSync(path.join(house, name), content);
  }
  return checkDoors(house).shut.map(({ file, line, why }) => `${file}:${line} ${why}`);
}

const below = {
  "src/base/span.ts": "export const a = 1;",
  "src/base/index.ts": 'export { a } from "./span.ts";',
};

describe("the house as it stands", () => {
  it("has no door open that should be shut", () => expect(checkDoors(root).shut).toEqual([]));
  it("was really looked at", () => {
    const { modules, imports } = checkDoors(root);
    expect(modules).toBeGreaterThan(5);
    expect(imports).toBeGreaterThan(5);
  });
});

describe("a door that is open", () => {
  it("leads down, through the front door", () =>
    expect(
      doors({ ...below, "src/working/edge.ts": 'import { a } from "../base/index.ts"; export { a };' }),
    ).toEqual([]));
  it("leads anywhere inside the room itself", () =>
    expect(doors({ ...below, "src/base/size.ts": 'export { a } from "./span.ts";' })).toEqual([]));
  it("leads a test to its files, and the shelf to the disk", () =>
    expect(
      doors({
        "src/base/span.test.ts":
          'import { readFileSync } from "node:fs"; export const at = [readFileSync, Date.now()];',
        "src/shelf/keep.ts": 'export { readFileSync } from "node:fs"; export const now = Date.now();',
      }),
    ).toEqual([]));
  it("hands out a file of types whole", () =>
    expect(doors({ ...below, "src/base/index.ts": 'export type * from "./span.ts";' })).toEqual([]));
  it("lets a file use its own name for a thing", () =>
    expect(
      doors({
        "src/base/a.ts":
          "export function read(document: string, o: { process: number }): number { return document.length + o.process; }",
      }),
    ).toEqual([]));
});

describe("a door that is shut", () => {
  const shut = (files: Record<string, string>) => {
    const said = doors(files);
    expect(said).toHaveLength(1);
    return said[0];
  };
  const up = { "src/working/index.ts": "", "src/notation/index.ts": "" };

  it.each([
    'import { w } from "../working/index.ts";',
    'import type { w } from "../working/index.ts";',
    'export { w } from "../working/index.ts";',
    'export const w = import("../working/index.ts");',
    'export type W = import("../working/index.ts").W;',
    'import "../working/index.ts";',
  ])("leads up: %s", (line) =>
    expect(shut({ ...up, "src/notation/tree.ts": `\n${line}` })).toMatch(
      /^src\/notation\/tree\.ts:2 "notation" may not import "working", which stands above it/,
    ),
  );
  it("leads through the wall", () =>
    expect(
      shut({ ...below, "src/working/edge.ts": 'import { a } from "../base/span.ts"; export { a };' }),
    ).toMatch(/through the wall/));
  it("leads nowhere", () =>
    expect(shut({ "src/base/a.ts": 'export * from "./b";' })).toMatch(/leads nowhere/));
  it("leads out of the house", () =>
    expect(
      shut({ "package.json": "{}", "src/base/a.ts": 'import m from "../../package.json"; export { m };' }),
    ).toMatch(/leads out of src/));
  it("cannot be checked", () =>
    expect(shut({ "src/shelf/a.ts": "export const m = (n: string) => import(n);" })).toMatch(
      /worked out while running/,
    ));
  it.each(["node:fs", "fs", "fs/promises", "http"])("leads the engine to %s", (name) =>
    expect(shut({ "src/filming/a.ts": `export * from "${name}";` })).toMatch(/no file, no clock, no network/),
  );
  it.each([
    "Date.now()",
    "new Date()",
    'fetch("x")',
    "process.env",
    "performance.now()",
    "[...document.children]",
  ])("leads the engine outside: %s", (expression) =>
    expect(shut({ "src/design/a.ts": `export const x = ${expression};` })).toMatch(/is shut for "design"/),
  );
  it("computes on the way in", () =>
    expect(shut({ "src/base/index.ts": "export const a = 1;" })).toMatch(/A front door only names/));
  it("hides names behind a star", () =>
    expect(shut({ ...below, "src/base/index.ts": 'export * from "./span.ts";' })).toMatch(
      /A front door only names/,
    ));
  it("belongs to an unlisted room", () =>
    expect(shut({ "src/attic/a.ts": "export const a = 1;" })).toMatch(/not in the list of rooms/));
  it("belongs to no room", () =>
    expect(shut({ "src/a.ts": "export const a = 1;" })).toMatch(/stands in no room/));
  it("stands in a file that cannot be read", () =>
    expect(shut({ "src/base/a.ts": "export const = ;" })).toMatch(/cannot be read as TypeScript/));
  it("was never seen", () => expect(shut({})).toMatch(/No module was seen at all/));
});
