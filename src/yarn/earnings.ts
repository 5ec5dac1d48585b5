/** What a design costs and brings in, from the designer's own figures. */
export interface Business {
  /** Price of one copy. */
  readonly price: number;
  /** What the shop keeps of it, as a share. */
  readonly fee: number;
  /** Sums paid: editing, photographs, test makes, yarn. */
  readonly cash: number;
  /** Hours of designing, writing and making the sample. */
  readonly hours: number;
  /** What an hour is worth; 0 where it is not reckoned. */
  readonly wage: number;
  /** Copies sold, or expected; null where nothing is said. */
  readonly sold: number | null;
}

export interface Earnings {
  /** What one copy brings. */
  readonly perCopy: number;
  /** Cash and hours together. */
  readonly cost: number;
  /** Copies that pay the cash, and that pay the hours too; null where a copy brings nothing. */
  readonly copiesForCash: number | null;
  readonly copiesForAll: number | null;
  /** What is left after the cash, what that comes to an hour, and what is left after the wage; null without copies sold. */
  readonly left: number | null;
  readonly perHour: number | null;
  readonly profit: number | null;
}

/** Break-even and earnings: copies = (cash + hours × wage) ÷ (price × (1 − fee)), rounded up (trade handbook, section 9). */
export function earningsOf({ price, fee, cash, hours, wage, sold }: Business): Earnings {
  const perCopy = price * (1 - fee);
  const cost = cash + hours * wage;
  const copies = (sum: number): number | null => (perCopy > 0 ? Math.ceil(sum / perCopy - 1e-9) : null);
  const left = sold === null ? null : sold * perCopy - cash;
  return {
    perCopy,
    cost,
    copiesForCash: copies(cash),
    copiesForAll: copies(cost),
    left,
    perHour: left === null || hours === 0 ? null : left / hours,
    profit: left === null ? null : left - hours * wage,
  };
}
