import fc from "fast-check";
import { expect, it } from "vitest";
import { Kept } from "./kept.ts";

it("gives back what was put in, or nothing, and stays small", () => {
  fc.assert(
    fc.property(fc.array(fc.nat(30)), fc.integer({ min: 1, max: 10 }), (keys, most) => {
      const kept = new Kept<number, string>(most);
      for (const key of keys) {
        expect([undefined, `value ${key}`]).toContain(kept.get(key));
        kept.set(key, `value ${key}`);
        expect(kept.size).toBeLessThanOrEqual(2 * most);
      }
    }),
  );
});

it("keeps what is asked for again and again", () => {
  const kept = new Kept<number, string>(4);
  kept.set(0, "asked");
  for (let key = 1; key < 100; key++) {
    kept.set(key, "once");
    expect(kept.get(0)).toBe("asked");
  }
  expect(kept.get(1)).toBeUndefined();
});
