/**
 * A table of what was worked out before, by the whole of what it was worked out from, so that keeping it changes no result. It
 * holds at most twice `most` entries: what was not asked for while as many others came is forgotten.
 */
export class Kept<Key, Value> {
  private young = new Map<Key, Value>();
  private old = new Map<Key, Value>();

  constructor(private readonly most: number) {}

  get(key: Key): Value | undefined {
    const young = this.young.get(key);
    if (young !== undefined) return young;
    const old = this.old.get(key);
    if (old !== undefined) this.set(key, old);
    return old;
  }

  set(key: Key, value: Value): void {
    this.young.set(key, value);
    if (this.young.size < this.most) return;
    this.old = this.young;
    this.young = new Map();
  }

  get size(): number {
    return this.young.size + this.old.size;
  }
}
