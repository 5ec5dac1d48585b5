/** A count for each of nine sizes, said in a template as "61 (69, 77, 83) (91, 97, 105, 111, 119)". */
export class Counts {
  constructor(private readonly values: readonly number[]) {}

  at(size: number): number {
    return this.values[size] as number;
  }

  map(change: (count: number, size: number) => number): Counts {
    return new Counts(this.values.map(change));
  }

  plus(more: number): Counts {
    return this.map((count) => count + more);
  }

  minus(other: Counts): Counts {
    return this.map((count, size) => count - other.at(size));
  }

  /** The same number in every size is said once. */
  toString(): string {
    const [first, ...rest] = this.values;
    if (rest.every((value) => value === first)) return String(first);
    return `${first} (${rest.slice(0, 3).join(", ")}) (${rest.slice(3).join(", ")})`;
  }
}
