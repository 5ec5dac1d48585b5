import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { root } from "../scripts/repository.mjs";
import { ROOMS } from "../scripts/rooms.mjs";

it("draws every room of src/ on the map, and no other, ground floor first", () => {
  const map = readFileSync(`${root}ARCHITECTURE.md`, "utf8");
  const drawn = [...map.matchAll(/^### `(.+)`$/gm)].map((match) => match[1]);
  const folders = readdirSync(`${root}src`).filter((name) => readdirSync(`${root}src/${name}`).length > 0);
  expect(drawn).toEqual(ROOMS.filter((room) => folders.includes(room)));
  expect(folders.length).toBe(drawn.length);
});
