/** Things that lean on each other, put so that each comes after what it leans on; and the circles among them. */
export interface Ordered {
  readonly order: readonly string[];
  /** Each circle once, beginning with the one that is named first. */
  readonly circles: readonly (readonly string[])[];
}

/**
 * Goes through names depth first, without recursion: a designer's table may be as long as it likes.
 *
 * @param leansOn  what each leans on directly; names that are no key are passed over
 */
export function putInOrder(leansOn: ReadonlyMap<string, readonly string[]>): Ordered {
  const order: string[] = [];
  const circles: string[][] = [];
  const done = new Set<string>();
  const open = new Set<string>();
  for (const start of leansOn.keys()) {
    if (done.has(start)) continue;
    const trail = [{ name: start, next: 0 }];
    open.add(start);
    while (trail.length > 0) {
      const here = trail[trail.length - 1]!;
      const below = leansOn.get(here.name)?.[here.next++];
      if (below === undefined) {
        if (here.next > (leansOn.get(here.name)?.length ?? 0)) {
          trail.pop();
          open.delete(here.name);
          done.add(here.name);
          order.push(here.name);
        }
        continue;
      }
      if (!leansOn.has(below) || done.has(below)) continue;
      if (open.has(below)) {
        circles.push(trail.slice(trail.findIndex(({ name }) => name === below)).map(({ name }) => name));
        continue;
      }
      open.add(below);
      trail.push({ name: below, next: 0 });
    }
  }
  return { order, circles };
}
