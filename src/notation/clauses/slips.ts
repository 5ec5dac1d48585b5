/*
 * Slips of typing and of scanning. A word of the trade with one letter wrong, missing, doubled or swapped is read as that word;
 * the designer's text is not touched, and spans stay where they are.
 */

/** Short words and far misses, as met on scanned and hand-typed pages. */
const KNOWN: Readonly<Record<string, string>> = {
  de: "dc",
  cn: "ch",
  tum: "turn",
  tern: "turn",
  hookk: "hook",
  intoe: "into",
  iin: "in",
  int: "into",
  than: "then",
  behindthe: "behind",
  chscount: "count",
  scinto: "sc",
  ach: "each",
  hds: "hdc",
  wiht: "with",
  privous: "previous",
  pervious: "previous",
  preivous: "previous",
  previos: "previous",
  acros: "across",
  accross: "across",
  arround: "around",
  aroud: "around",
  nect: "next",
  mext: "next",
  nxet: "next",
  eachst: "each",
  thier: "their",
  begining: "beginning",
  reamining: "remaining",
  stich: "stitch",
  sttich: "stitch",
  stiches: "stitches",
  sicth: "stitch",
  skp: "skip",
  ship: "skip",
  lopp: "loop",
  lopps: "loops",
  repear: "repeat",
  reperat: "repeat",
  repat: "repeat",
  rouns: "round",
  roud: "round",
  rownd: "round",
  hoops: "loops",
  hoop: "loop",
  evry: "every",
  evey: "every",
  throught: "through",
  thru: "through",
  trough: "through",
  slipt: "slip",
  inthe: "in",
  remain: "remaining",
  ladt: "last",
  tur: "turn",
  splace: "space",
  spce: "space",
  cahin: "chain",
  chian: "chain",
  joing: "join",
  jion: "join",
  dcc: "dc",
  scc: "sc",
  sx: "sc",
  hcd: "hdc",
};

const TRADE = new Set(
  "previous stitch stitches chains repeat repeats around across crochet double single treble corner corners center centre remaining following beginning increase increases decrease decreases continue pattern marker spaces cluster between turning foundation through working worked round rounds second fasten together slipstitch finish unworked armhole neckline sleeve shoulder leaving ending starting switch switching stretch change changed counted spaced shaping lengths fastened finished stitching evenly changing counts joining attach measures length".split(
    " ",
  ),
);

const memo = new Map<string, string>();

/** The word of the trade that was meant, or the word itself. */
export function meantWord(norm: string): string {
  const known = KNOWN[norm];
  if (known !== undefined) return known;
  if (norm.length < 6 || TRADE.has(norm)) return norm;
  const before = memo.get(norm);
  if (before !== undefined) return before;
  let meant = norm;
  for (const word of TRADE) {
    if (
      word[0] === norm[0] &&
      word.length >= 6 &&
      Math.abs(word.length - norm.length) <= 1 &&
      isOneSlip(norm, word)
    ) {
      meant = word;
      break;
    }
  }
  if (memo.size < 5000) memo.set(norm, meant);
  return meant;
}

/** One letter wrong, missing or too many, or two neighbours swapped. An added final s is a plural, not a slip. */
function isOneSlip(have: string, want: string): boolean {
  if (
    have === `${want}s` ||
    want === `${have}s` ||
    have === `${want}d` ||
    want === `${have}d` ||
    have === `${want}r`
  )
    return false;
  // Another ending is another form of the word: "marked" is not "marker".
  if (have.length === want.length && have.slice(0, -1) === want.slice(0, -1)) return false;
  let start = 0;
  while (start < have.length && start < want.length && have[start] === want[start]) start += 1;
  let endHave = have.length;
  let endWant = want.length;
  while (endHave > start && endWant > start && have[endHave - 1] === want[endWant - 1]) {
    endHave -= 1;
    endWant -= 1;
  }
  const restHave = have.slice(start, endHave);
  const restWant = want.slice(start, endWant);
  if (restHave.length <= 1 && restWant.length <= 1) return true;
  return (
    restHave.length === 2 &&
    restWant.length === 2 &&
    restHave[0] === restWant[1] &&
    restHave[1] === restWant[0]
  );
}
