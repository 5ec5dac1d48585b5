import type { Finding, PerSize, Severity } from "../base/index.ts";
import type { Proof } from "../design/index.ts";
import type { PatternTree } from "../notation/index.ts";
import type { WorkedLine } from "../working/index.ts";

/** One written line of a proof made by hand; what is left out is as for a row that came out. */
interface HandMadeLine extends Partial<Omit<WorkedLine, "span">> {
  readonly text: string;
  /** Findings on words of this line: "error rows/count-differs @ 8 sts". */
  readonly wrong?: readonly string[];
}

interface HandMade {
  readonly sizes: readonly string[];
  /** Lines by heading; "Back / Rib" is the section Rib of the piece Back. */
  readonly pieces: Readonly<Record<string, readonly HandMadeLine[]>>;
  readonly conventions?: readonly string[];
}

/**
 * A proof with its text, for tests of how proofs are set. Only the parts of the tree that reports look at are there: the
 * headings with the places of their instructions.
 */
export function handMadeProof({ sizes, pieces, conventions = [] }: HandMade): Proof {
  let text = "Little Cowl\n";
  const findings: Finding[] = [];
  const none = sizes.map(() => null);
  const made = Object.entries(pieces).map(([heading, lines]) => {
    const [top = "", section] = heading.split(" / ");
    const name = section ?? top;
    text += `${name}\n`;
    const worked = lines.map(({ text: words, wrong = [], ...given }): WorkedLine => {
      const from = text.length;
      text += `${words}\n`;
      const label = given.label ?? words.split(/[:(]/)[0]?.trim() ?? "";
      for (const one of wrong) findings.push(findingOf(one, text, from, name, label));
      const number = Number(/\d+/.exec(label)?.[0] ?? Number.NaN);
      const row: PerSize<number | null> = Number.isNaN(number) ? none : sizes.map(() => number);
      const line: WorkedLine = {
        label,
        kind: "row",
        span: { from, to: text.length - 1 },
        first: row,
        last: row,
        read: true,
        side: none,
        stitches: none,
        kinds: {},
        printed: null,
        printedKinds: null,
        proved: true,
        trust: false,
      };
      return { ...line, ...given };
    });
    return { name, level: section === undefined ? 1 : 2, top, lines: worked };
  });
  const tops = new Set<string>();
  const headings = made.flatMap(({ name, level, top, lines }) => {
    const own = { name, level, instructions: lines.map(({ span }) => ({ span })) };
    const isNew = !tops.has(top);
    tops.add(top);
    return level === 2 && isNew ? [{ name: top, level: 1, instructions: [] }, own] : [own];
  });
  const all = made.flatMap(({ lines }) => lines);
  return {
    text,
    title: "Little Cowl",
    terms: "US",
    sizes,
    tree: { termsFrom: "stated", pieces: headings } as unknown as PatternTree,
    worked: {
      sizes,
      pieces: made.map(({ name, lines }) => ({ name, lines })),
      made: [],
      findings,
      conventions,
    },
    findings,
    answered: [],
    vouched: [],
    unstamped: [],
    coverage: {
      instructionLines: all.length,
      read: all.filter((line) => line.read).length,
      proved: all.filter((line) => line.proved).length,
      onTrust: all.filter((line) => line.trust).length,
    },
  };
}

function findingOf(said: string, text: string, from: number, piece: string, row: string): Finding {
  const [head = "", words = ""] = said.split(" @ ");
  const [severity, code = ""] = head.split(" ");
  const at = text.indexOf(words, from);
  if (at === -1) throw new Error(`"${words}" is not in the line`);
  return {
    code,
    severity: severity as Severity,
    span: { from: at, to: at + words.length },
    piece,
    row,
    sizes: [],
    what: `Something is said about ${row}.`,
    why: "This is why.",
    todo: [{ say: "Do this." }],
  };
}
