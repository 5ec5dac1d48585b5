import type {
  Amount,
  Claim,
  Clause,
  CountsAs,
  Limit,
  PlaceWord,
  RowsMeant,
  Stop,
  Target,
  Until,
} from "./tree.ts";

/*
 * Prints a tree so that a person can check it at a glance: one clause, one bracket. For tests and for looking at what the reader
 * made of a row; nothing reads it back.
 */

/** The clauses of one row, each in brackets, in order. */
export function describeClauses(clauses: readonly Clause[]): string {
  return clauses.map(describeClause).join(" ");
}

/** The counts printed for a row. */
export function describeClaims(claims: readonly Claim[]): string {
  return claims.map(describeClaim).join(" ");
}

function describeClaim(claim: Claim): string {
  const parts = claim.parts.map(
    (part) => `${amount(part.amount)} ${part.kind}${part.chains === undefined ? "" : `-${part.chains}`}`,
  );
  return bracket([
    "claim",
    parts.join(" + "),
    claim.change,
    claim.ofRow && `of-row ${amount(claim.ofRow)}`,
    claim.index !== undefined && `#${claim.index}`,
    claim.includesChain && "incl-ch",
    claim.countsChains !== undefined && `chs ${claim.countsChains}`,
    claim.excludes && `excl ${claim.excludes}`,
    claim.eachSide && "each-side",
  ]);
}

type Word = string | false | undefined | null;

function bracket(words: readonly Word[]): string {
  return `(${words.filter(Boolean).join(" ")})`;
}

function amount(value: Amount | undefined): string {
  if (!value) return "";
  if (value.values.length === 0) return "?";
  return value.values.map((one) => (one === null ? "-" : String(Math.round(one * 100) / 100))).join("/");
}

export function describeClause(clause: Clause): string {
  switch (clause.kind) {
    case "chain":
      return bracket([
        "ch",
        clause.multiple ? `x${clause.multiple.of}+${clause.multiple.plus}` : amount(clause.count),
        counts(clause.countsAs),
      ]);
    case "work":
      return bracket([
        clause.stitch,
        clause.count && `x${amount(clause.count)}`,
        clause.loops && `${clause.loops}-loop`,
        target(clause.target),
        clause.colour && `in ${clause.colour}`,
        clause.named && `"${clause.named}"`,
        clause.skippedCountsAs && `skipped ${counts(clause.skippedCountsAs)}`,
      ]);
    case "skip":
      return bracket(["skip", clause.to && "to", target(clause.target), counts(clause.countsAs)]);
    case "group":
      return bracket([
        "group",
        target(clause.target),
        clause.named && `"${clause.named}"`,
        ":",
        describeClauses(clause.body),
      ]);
    case "repeat":
      return bracket([
        `${clause.style}-repeat`,
        stop(clause.stop),
        clause.endBefore !== undefined && `end-before ${clause.endBefore}`,
        ":",
        describeClauses(clause.body),
      ]);
    case "choice":
      return bracket([
        "choice",
        clause.form,
        ...clause.options.map((option) => `{${describeClauses(option)}}`),
      ]);
    case "join":
      return bracket(["join", clause.stitch, clause.target && target(clause.target), clause.ring && "ring"]);
    case "join-yarn":
      return bracket([
        "join-yarn",
        clause.colour,
        clause.side,
        clause.stitch && `with ${clause.stitch}`,
        clause.target && target(clause.target),
        clause.where && `at "${clause.where}"`,
      ]);
    case "colour":
      return bracket(["colour", clause.colour]);
    case "facing":
      return bracket(["facing", clause.side]);
    case "marker":
      return bracket([`${clause.action}-marker`, clause.name, clause.target && target(clause.target)]);
    case "leave":
      return bracket(["leave", amount(clause.count)]);
    case "loops":
      return bracket(["loops", clause.loops, clause.throughout && "throughout"]);
    case "along":
      return bracket(["along", clause.edge, clause.ofRow && `of-row ${amount(clause.ofRow)}`]);
    case "repeat-rows":
      return bracket([
        "rows",
        rows(clause.rows),
        clause.times && `x${amount(clause.times)}`,
        clause.every && `every ${amount(clause.every)}`,
        until(clause.until),
      ]);
    case "even":
      return bracket([
        "even",
        clause.inPattern && "in-pattern",
        clause.rows && `${amount(clause.rows)} rows`,
        clause.stitch,
        until(clause.until),
      ]);
    case "in-pattern":
      return bracket(["in-pattern", target(clause.target)]);
    case "schedule":
      return bracket([
        "schedule",
        clause.change,
        amount(clause.by),
        clause.where,
        clause.first && `first ${amount(clause.first)}`,
        ...clause.beats.map(
          (beat) => `every ${amount(beat.every)}${beat.times ? ` x${amount(beat.times)}` : ""}`,
        ),
        until(clause.until),
        clause.together && "together",
      ]);
    case "evenly":
      return bracket([
        "evenly",
        clause.change,
        amount(clause.count),
        clause.stitch,
        clause.total && `to ${amount(clause.total)}`,
        clause.along && describeClause(clause.along),
      ]);
    case "size-only":
      return bracket(["sizes", clause.sizes.join(","), ":", describeClauses(clause.body)]);
    case "size-end":
      return bracket(["sizes-end", clause.sizes.join(",")]);
    case "as-piece":
      return bracket(["as", `"${clause.piece}"`, clause.reversing && "reversing", until(clause.until)]);
    case "seam":
      return bracket(["seam", clause.seam, clause.open && `open ${amount(clause.open)}cm`]);
    case "hook":
      return bracket(["hook", clause.mm && `${amount(clause.mm)}mm`]);
    case "hold":
      return bracket(["hold", amount(clause.count)]);
    case "understood":
      return bracket(["understood", amount(clause.count), target(clause.target)]);
    case "remark":
      return bracket(["REMARK", JSON.stringify(clause.words)]);
    default:
      return bracket([clause.kind]);
  }
}

function counts(countsAs: CountsAs | undefined): Word {
  if (!countsAs) return undefined;
  return `${countsAs.parts.length > 0 ? `=${countsAs.parts.join("+")}` : "=nothing"}${countsAs.throughout ? "!" : ""}`;
}

function place(what: PlaceWord): string {
  switch (what.is) {
    case "any":
      return "st";
    case "stitch":
      return what.code;
    case "chain":
      return "ch";
    case "space":
      if (what.name !== undefined) return `${what.name.replace(/ /gu, "-")}-sp`;
      return `${what.corner ? "corner-" : ""}${what.chains === undefined ? "" : `ch${what.chains}-`}sp`;
    case "turning-chain":
      return what.chains === undefined ? "tch" : `tch${what.chains}`;
    case "marked":
      return what.name === undefined ? "marked" : `marked-${what.name}`;
    case "skipped":
      return what.code === undefined ? "skipped" : `skipped-${what.code}`;
    default:
      return what.is;
  }
}

function target(value: Target): string {
  if (value.ref === "here") return value.loops ? `here/${value.loops}` : "";
  const words: Word[] = [
    "@",
    value.ref,
    value.each && "each",
    value.nth && `#${amount(value.nth)}`,
    value.count && amount(value.count),
    [value.what, ...(value.and ?? [])].map(place).join("&"),
    value.from && `from-${value.from}`,
    value.of && `of[${target(value.of)}]`,
    value.rowsBelow !== undefined && `${value.rowsBelow}-below`,
    value.ofRow && `of-row ${amount(value.ofRow)}`,
    value.loops && `/${value.loops}`,
    value.until && limit(value.until),
  ];
  return words.filter(Boolean).join(" ");
}

function limit(value: Limit): string {
  switch (value.at) {
    case "end":
      return "..";
    case "last":
      return `..last ${amount(value.count)}${value.what.is === "any" ? "" : ` ${place(value.what)}`}`;
    case "place":
      return `..to[${target(value.place)}${value.before ? ` before ${amount(value.before)}` : ""}]`;
    case "count":
      return `..${value.remain ? "remain" : "have"} ${amount(value.count)}`;
  }
}

function stop(value: Stop): string {
  if (value.by === "times")
    return `${amount(value.times)}${value.counting === "total" ? "" : value.counting === "extra" ? "-more" : `-${value.counting}`}`;
  return value.by === "limit" ? limit(value.limit) : "unsaid";
}

function rows(value: RowsMeant): string {
  if (value.are === "last") return `last ${amount(value.count)}`;
  if (value.are === "pattern") return "pattern";
  if (value.name !== undefined) return JSON.stringify(value.name);
  const list = value.list
    .map((range) =>
      range.from === range.to ? amount(range.from) : `${amount(range.from)}-${amount(range.to)}`,
    )
    .join(",");
  return value.piece === undefined ? list : `${list} of ${value.piece}`;
}

function until(value: Until | undefined): Word {
  if (!value) return undefined;
  const words: Word[] = [
    value.more ? "for" : "until",
    value.measure && `${amount(value.measure)}cm`,
    value.from && `from-${value.from}`,
    value.rows && `${amount(value.rows)} rows`,
    value.stitches && `${amount(value.stitches)} sts`,
    value.endingSide && `end-${value.endingSide}`,
    value.endingRow && `end-row ${amount(value.endingRow)}`,
  ];
  return words.filter(Boolean).join(" ");
}
