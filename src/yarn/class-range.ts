/** Yards that an adult's pullover takes, from and to, by class of yarn. Trade handbook, 4.5: a yarn maker's table. */
const PULLOVER_YARDS: Readonly<Record<number, readonly [from: number, to: number]>> = {
  1: [1500, 3200],
  2: [1200, 2500],
  3: [1000, 2000],
  4: [800, 1500],
  5: [600, 1200],
  6: [400, 800],
};

export const METRES_A_YARD = 0.9144;

/** Metres that an adult's garment takes in a class, widened by 40 in 100 on both sides; null where no table has the class. */
export function pulloverMetres(yarnClass: number): { readonly from: number; readonly to: number } | null {
  const yards = PULLOVER_YARDS[yarnClass];
  return yards ? { from: yards[0] * METRES_A_YARD * 0.6, to: yards[1] * METRES_A_YARD * 1.4 } : null;
}

/** From the smallest to the largest of nine sizes yarn grows by this factor (trade handbook, 4.5, from printed patterns). */
export const GROWTH = { from: 1.5, to: 2.6 } as const;

/** The first size that takes less than the one before it; null where none does. */
export function firstFall(metres: readonly (number | null)[]): number | null {
  for (let size = 1; size < metres.length; size++) {
    const [before, now] = [metres[size - 1] ?? null, metres[size] ?? null];
    if (before !== null && now !== null && now < before * (1 - 1e-9)) return size;
  }
  return null;
}
