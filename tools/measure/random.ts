/** Numbers from 0 up to 1 that are the same on every machine for the same seed (mulberry32, written from memory). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A seed that depends on words alone, so that one sample's draw does not move when another sample changes. */
export function seedOf(words: string): number {
  let seed = 2166136261;
  for (let at = 0; at < words.length; at++) seed = Math.imul(seed ^ words.charCodeAt(at), 16777619);
  return seed >>> 0;
}

/** Some of the items, drawn without putting back, in their old order. */
export function drawSome<T>(items: readonly T[], most: number, seed: number): T[] {
  if (items.length <= most) return [...items];
  const random = randomFrom(seed);
  const order = items.map((_, at) => at);
  for (let at = 0; at < most; at++) {
    const other = at + Math.floor(random() * (order.length - at));
    [order[at], order[other]] = [order[other] as number, order[at] as number];
  }
  return order
    .slice(0, most)
    .sort((a, b) => a - b)
    .map((at) => items[at] as T);
}
