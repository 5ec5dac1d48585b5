import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { proveDesign } from "../src/design/index.ts";

const SAMPLES = new URL("../samples/", import.meta.url).pathname;

it.each(readdirSync(SAMPLES).filter((name) => /\.(?:txt|md)$/.test(name)))(
  "%s proves without an error or a warning",
  (name) => {
    const found = proveDesign(readFileSync(join(SAMPLES, name), "utf8")).findings;
    expect(found.filter((finding) => finding.severity !== "note").map((finding) => finding.what)).toEqual([]);
  },
);
