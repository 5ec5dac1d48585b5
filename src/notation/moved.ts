import type { Span } from "../base/index.ts";
import type { Clause } from "./tree.ts";

/*
 * Parts of a tree at another place of a text. What is read of a row does not depend on where the row stands, but for the spans,
 * so that a row that only moved is not read again.
 */

/** A copy of a part of a tree with every span moved; spans that were one object stay one. */
export function moved<T>(part: T, by: number): T {
  const spans = new Map<object, Span>();
  const copy = (node: unknown): unknown => {
    if (typeof node !== "object" || node === null) return node;
    if (Array.isArray(node)) {
      const { length } = node;
      // Numbers of a size list stand anywhere.
      if (length > 0 && typeof node[0] !== "object") return node;
      const list = new Array<unknown>(length);
      for (let at = 0; at < length; at++) list[at] = copy(node[at]);
      return list;
    }
    const fields = node as Readonly<Record<string, unknown>>;
    if (typeof fields.from === "number" && typeof fields.to === "number") {
      let span = spans.get(node);
      if (!span) {
        span = { from: fields.from + by, to: fields.to + by };
        spans.set(node, span);
      }
      return span;
    }
    const made: Record<string, unknown> = {};
    for (const name in fields) {
      const value = fields[name];
      made[name] = typeof value === "object" ? copy(value) : value;
    }
    return made;
  };
  return copy(part) as T;
}

interface First {
  readonly clauses: readonly Clause[];
  readonly by: number;
}

const firsts = new WeakMap<readonly Clause[], First>();

/** Clauses of the same words as these, the same object for all their copies, and how far these stand from there. */
export function firstRead(clauses: readonly Clause[]): First {
  return firsts.get(clauses) ?? { clauses, by: 0 };
}

/** Notes that clauses are a copy of others, moved. */
export function noteMoved(copy: readonly Clause[], of: readonly Clause[], by: number): void {
  const first = firstRead(of);
  firsts.set(copy, { clauses: first.clauses, by: first.by + by });
}
