// For tests only: what is wrong with a draft.
import { type Proof, ruleCosts } from "../design/index.ts";

/** Findings of warnings that a draft may have: the plan is missed because a rule costs it. */
const MAY_MISS = "design/misses-plan";

/** Every fault of a draft that was begun, as sentences; none where it is as it should be. */
export function draftFaults({ proof, best }: { readonly proof: Proof; readonly best: boolean }): string[] {
  const { coverage, findings } = proof;
  return [
    ...findings
      .filter(({ severity, code }) => severity !== "note" && code !== MAY_MISS)
      .map(({ code, what, why }) => `${code}: ${what} ${why}`),
    ...(coverage.read === coverage.instructionLines ? [] : ["some lines were not read"]),
    ...(coverage.onTrust === 0 ? [] : ["some counts were taken on trust"]),
    ...tiesOff(proof),
    ...notMirrored(proof),
    ...sectionsOdd(proof),
    ...missed(proof, best),
  ];
}

const tiesOff = ({ ties = [] }: Proof): string[] =>
  ties.flatMap(({ text, difference, within }) =>
    difference.every((off) => off !== null && Math.abs(off) <= within + 1e-9)
      ? []
      : [`tie "${text}" is off by ${difference.join(" ")}`],
  );

/**
 * What the left half is made of is what the right half is made of, in every size: the same rows with the same stitches. A front of
 * panels is begun at its other edge, so there only the number of rows with each number of stitches has to be the same.
 */
function notMirrored({ worked, sizes }: Proof): string[] {
  return sizes.flatMap((size, at) => {
    const halves = new Map<string, string[]>();
    for (const { name, made } of worked.made)
      for (const { section, rows, stitches } of made[at]?.rows ?? []) {
        const panel = /^(left|right) front$/i.exec(name)?.[1];
        const side = panel ?? /^(left|right) /i.exec(section)?.[1];
        if (!side || /foundation/i.test(section)) continue;
        const key = `${side.toLowerCase()} of ${panel ? "panels" : name}`;
        const rowsMade = Array.from({ length: rows ?? 0 }, () => String(stitches));
        halves.set(key, [...(halves.get(key) ?? []), ...rowsMade]);
      }
    return [...halves].flatMap(([name, left]) => {
      if (!name.startsWith("left ")) return [];
      const right = halves.get(name.replace(/^left/, "right")) ?? [];
      const same = name === "left of panels" ? left.length === right.length : left.join() === right.join();
      return same && left.length > 0
        ? []
        : [`${name} in ${size}: ${left.join()}, the right one ${right.join()}`];
    });
  });
}

/** Sections that have to end with a WS row, so that the next one begins with a RS row. */
function sectionsOdd({ counts = [] }: Proof): string[] {
  const even = /^(body rows|armhole rows|front armhole rows|back rows|front neck rows|shoulder rows)$/;
  return counts.flatMap(({ name, values, of }) => {
    if (of !== "rows" || !even.test(name)) return [];
    const want = name === "front neck rows" ? 1 : 0;
    return (values ?? []).every((value) => value !== null && value % 2 === want)
      ? []
      : [`${name} has rows of the wrong parity`];
  });
}

/** Measures that miss the plan by more than half a step of their count, although no rule stands in the way. */
function missed(proof: Proof, best: boolean): string[] {
  const far = (proof.finished ?? []).flatMap(({ name, counts, made, missed: off }) => {
    const count = proof.counts?.find((one) => one.name === counts[0]);
    if (!count || counts.length !== 1) return [];
    const beyond = off.flatMap((cm, size) => {
      const [value, length] = [count.values?.[size], made[size]];
      if (cm === null || value == null || length == null || value === 0) return [];
      return Math.abs(cm) > (count.multiple * length) / value / 2 + 0.05 ? [proof.sizes[size] ?? ""] : [];
    });
    return beyond.length > 0 ? [`${name} misses the plan in ${beyond.join(", ")}`] : [];
  });
  // Where what a rule costs was not settled, the choice itself is proved: no other that keeps the rules comes closer.
  if (far.length === 0 || !proof.table || (best && !proof.choice?.grading)) return [];
  return ruleCosts(proof.table).length > 0 ? [] : far.map((words) => `${words}, and no rule costs it`);
}
