// Bundles the command into dist/loopwright.mjs, with the pages it can show. Dependencies stay outside the bundle: npm installs them.
import { mkdir, rename } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { readFindingPages } from "./manual.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));

/** Writes beside the target first and renames, so that two builds at once never leave half a file. */
export async function buildCommand() {
  const target = `${root}dist/loopwright.mjs`;
  const draft = `${root}dist/.loopwright.${process.pid}.mjs`;
  await mkdir(`${root}dist`, { recursive: true });
  await build({
    absWorkingDir: root,
    entryPoints: ["src/command/main.ts"],
    outfile: draft,
    bundle: true,
    format: "esm",
    platform: "node",
    target: "node20",
    packages: "external",
    define: { FINDING_PAGES: JSON.stringify(readFindingPages()) },
    logLevel: "warning",
  });
  await rename(draft, target);
  return target;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildCommand();
