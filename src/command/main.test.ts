import { expect, it } from "vitest";
import manifest from "../../package.json" with { type: "json" };
import { main } from "./main.ts";

async function run(...args: string[]) {
  let out = "";
  let err = "";
  const code = await main(args, { out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}

it("says its version", async () =>
  expect(await run("--version")).toEqual({ code: 0, out: `${manifest.version}\n`, err: "" }));

it("answers --help on the output, and no words at all on the error output", async () => {
  expect((await run("--help")).code).toBe(0);
  expect(await run()).toMatchObject({ code: 2, out: "" });
});
