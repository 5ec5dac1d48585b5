import type { Span } from "../../src/base/index.ts";
import type { Clause, PatternTree } from "../../src/notation/index.ts";
import type { Mutation } from "./mutation.ts";
import { findFigures } from "./numerals.ts";
import { allClauses, type Placed } from "./pattern-text.ts";

type Change = Omit<Mutation, "instruction" | "words">;

/** Everything that is done to an instruction's words: stitches, skips, turns, loops, sides, hooks, the row itself. */
export function changeWords(tree: PatternTree, placed: Placed): Mutation[] {
  const { text } = tree;
  const { instruction, at } = placed;
  const changes = allClauses(instruction.clauses).flatMap(({ clause }) => [
    ...changeStitch(text, clause),
    ...changeShaping(text, clause),
    ...changeStop(clause),
    ...changeLoop(text, clause),
    ...changeHook(tree, clause),
    ...(clause.kind === "skip" ? [dropWords(text, clause.span, "skip dropped")] : []),
    ...(clause.kind === "turn" ? [dropWords(text, clause.span, "turn dropped")] : []),
  ]);
  return [
    ...changes,
    ...changeClaims(text, placed),
    ...changeSides(text, placed),
    ...deleteRow(text, placed),
  ].map((change) => ({
    ...change,
    instruction: at,
    words:
      change.kind === "row deleted"
        ? "deleted"
        : `${say(text.slice(change.span.from, change.span.to))} → ${say(change.text)}`,
  }));
}

const say = (words: string): string => words.replace(/\s+/g, " ").trim() || "nothing";

const BASIC = /\b(sc|hdc|dc|tr|htr|dtr)\b/i;
const TOGETHER = /\b(sc|hdc|dc|tr|htr)([23])tog\b/i;

/** "sc" → "sc2tog", "sc2tog" → "sc", "2 sc in next st" → "sc in next st". */
function changeStitch(text: string, clause: Clause): Change[] {
  if (clause.kind !== "work") return [];
  const { from, to } = clause.stitchSpan;
  const words = text.slice(from, to);
  const changes: Change[] = [];
  const together = TOGETHER.exec(words);
  const basic = BASIC.exec(words);
  const put = (found: RegExpExecArray, by: string): Change => ({
    kind: "stitch replaced",
    span: { from: from + found.index, to: from + found.index + found[0].length },
    text: by,
  });
  if (together) changes.push(put(together, together[1] as string));
  else if (basic && !/\d/.test(words)) {
    // In a ring or a space there are no two stitches to be worked together.
    if (!["ring", "space"].includes(clause.target.what.is)) changes.push(put(basic, `${basic[0]}2tog`));
    const { count } = clause;
    if (
      count &&
      count.span.to <= from &&
      /^\s*$/.test(text.slice(count.span.to, from)) &&
      isFew(count.values)
    )
      changes.push({ kind: "stitch replaced", span: { from: count.span.from, to: from }, text: "" });
  }
  return changes;
}

const isFew = (values: readonly (number | null)[]): boolean =>
  values.length === 1 && [2, 3, 5].includes(values[0] ?? 0);

const OTHER_WAY: Readonly<Record<string, string>> = {
  inc: "dec",
  dec: "inc",
  incs: "decs",
  decs: "incs",
  increase: "decrease",
  decrease: "increase",
  increasing: "decreasing",
  decreasing: "increasing",
  increased: "decreased",
  decreased: "increased",
  fewer: "more",
};

/** "inc" → "dec", "2 sc in next st" → "sc2tog", "sc2tog" → "2 sc in next st", "dec 1 st each end" → "inc 1 st each end". */
function changeShaping(text: string, clause: Clause): Change[] {
  const kind = "increase for decrease";
  if (clause.kind === "schedule" || clause.kind === "evenly") return otherWay(text, clause.span, kind);
  if (clause.kind !== "work") return [];
  if (clause.stitch === "inc" || clause.stitch === "dec") return otherWay(text, clause.stitchSpan, kind);
  const words = text.slice(clause.span.from, clause.span.to);
  const made = /^2 (sc|hdc|dc|tr|htr) in (?:the )?(next|first|last) (?:st|sc|hdc|dc|tr|htr)$/i.exec(words);
  if (made)
    return [
      {
        kind,
        span: clause.span,
        text: `${made[1]}2tog${made[2]?.toLowerCase() === "next" ? "" : ` over ${made[2]} 2 sts`}`,
      },
    ];
  const taken = /^(sc|hdc|dc|tr|htr)2tog(?: over (?:the )?(next|first|last) 2 \w+)?$/i.exec(words);
  return taken ? [{ kind, span: clause.span, text: `2 ${taken[1]} in ${taken[2] ?? "next"} st` }] : [];
}

function otherWay(text: string, { from, to }: Span, kind: Change["kind"]): Change[] {
  for (const match of text.slice(from, to).matchAll(/[a-z]+/gi)) {
    const other = OTHER_WAY[match[0].toLowerCase()];
    if (other === undefined) continue;
    const span = { from: from + match.index, to: from + match.index + match[0].length };
    return [
      { kind, span, text: /^[A-Z]/.test(match[0]) ? other.charAt(0).toUpperCase() + other.slice(1) : other },
    ];
  }
  return [];
}

/** "8 sts increased" → "8 sts decreased". */
function changeClaims(text: string, { instruction }: Placed): Change[] {
  return instruction.claims.flatMap((claim) =>
    claim.change ? otherWay(text, claim.span, "increase for decrease") : [],
  );
}

/** "rep from * across" → "rep from * to last 2 sts"; stops that hold a number are changed with the numbers. */
function changeStop(clause: Clause): Change[] {
  if (clause.kind !== "repeat" || clause.stop.by !== "limit" || clause.stop.limit.at !== "end") return [];
  return [{ kind: "repeat's stop", span: clause.stop.limit.span, text: "to last 2 sts" }];
}

const LOOPS: readonly (readonly [RegExp, string])[] = [
  [/\bBLO\b/, "FLO"],
  [/\bFLO\b/, "BLO"],
  [/\bblo\b/, "flo"],
  [/\bflo\b/, "blo"],
  [/\bback(?= loops?\b)/, "front"],
  [/\bfront(?= loops?\b)/, "back"],
];

function changeLoop(text: string, clause: Clause): Change[] {
  if (
    clause.kind !== "work" &&
    clause.kind !== "loops" &&
    clause.kind !== "along" &&
    clause.kind !== "join-yarn"
  )
    return [];
  for (const [pattern, other] of LOOPS) {
    const found = pattern.exec(text.slice(clause.span.from, clause.span.to));
    if (!found) continue;
    const from = clause.span.from + found.index;
    return [{ kind: "loop exchanged", span: { from, to: from + found[0].length }, text: other }];
  }
  return [];
}

const OTHER_SIDE: Readonly<Record<string, string>> = {
  RS: "WS",
  WS: "RS",
  "right side": "wrong side",
  "wrong side": "right side",
};

/** The side in a row's label and in "with RS facing". */
function changeSides(text: string, { instruction }: Placed): Change[] {
  const spans: Span[] = [];
  if (instruction.label?.side)
    spans.push({
      from: instruction.label.span.from,
      to: instruction.clauses[0]?.span.from ?? instruction.span.to,
    });
  for (const { clause } of allClauses(instruction.clauses))
    if (clause.kind === "facing") spans.push(clause.span);
  return spans.flatMap(({ from, to }) => {
    const found = /\b(?:RS|WS|right side|wrong side)\b/.exec(text.slice(from, to));
    if (!found) return [];
    const start = from + found.index;
    return [
      {
        kind: "side tag" as const,
        span: { from: start, to: start + found[0].length },
        text: OTHER_SIDE[found[0]] as string,
      },
    ];
  });
}

/** A hook one millimetre thicker, or more where the materials list that one too. */
function changeHook(tree: PatternTree, clause: Clause): Change[] {
  if (clause.kind !== "hook" || !clause.mm) return [];
  const [figure] = findFigures(tree.text, clause.mm.span);
  const written = Number(tree.text.slice(clause.mm.span.from, clause.mm.span.to));
  if (!figure && !written) return [];
  const listed = new Set(tree.materials.hooksMm.flatMap(({ mm }) => mm));
  let other = written + 1;
  while (listed.has(other)) other += 0.5;
  return Number.isFinite(other) ? [{ kind: "hook size", span: clause.mm.span, text: String(other) }] : [];
}

/** The words left out with the comma or full stop that parts them from what stands before or, at a beginning, after. */
function dropWords(text: string, span: Span, kind: Change["kind"]): Change {
  const before = /[,;.]\s*(?:and |then )?$/.exec(text.slice(0, span.from));
  if (before) return { kind, span: { from: before.index, to: span.to }, text: "" };
  const after = /^\s*[,;.]?\s*(?:and |then )?/.exec(text.slice(span.to));
  return { kind, span: { from: span.from, to: span.to + (after?.[0].length ?? 0) }, text: "" };
}

/** A labelled row or a foundation chain left out, with the rest of its line where that holds nothing else. */
function deleteRow(text: string, { instruction }: Placed): Change[] {
  const { span, label, clauses } = instruction;
  const chained =
    clauses.some((clause) => clause.kind === "chain") &&
    clauses.every((clause) => ["chain", "hook", "join", "aside", "colour"].includes(clause.kind));
  if (label === null && !chained) return [];
  const rest = /^[ .]*\n/.exec(text.slice(span.to));
  const starts = span.from === 0 || text[span.from - 1] === "\n";
  return [
    {
      kind: "row deleted",
      span: { from: span.from, to: span.to + (rest && starts ? rest[0].length : 0) },
      text: "",
    },
  ];
}
