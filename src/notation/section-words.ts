/*
 * Words that head a section of a pattern, and words that name a piece or a part of one.
 */

/** What stands under a heading of the head of the pattern. */
export type Section =
  | "abbreviations"
  | "definitions"
  | "gauge"
  | "materials"
  | "sizes"
  | "note"
  | "finishing"
  | "pattern";

const HEADERS: readonly (readonly [Section, RegExp])[] = [
  [
    "abbreviations",
    /^(?:(?:list of |stitch )?abbreviations?(?: used| list| key)?(?:,? and (?:terms|symbols|stitches))?|key to abbreviations|abbrev\.?|terms used|glossary)\b/i,
  ],
  [
    "definitions",
    /^(?:special (?:stitch|abbreviation|instruction|technique|term)(?:es|s)?(?: used)?|stitch(?:es)? (?:guide|key|explanations?|instructions|glossary)|special (?:st|sts)|stitch(?:es)? used|to (?:increase|decrease|dec|inc)(?=\s?[.:]))(?![a-z])/i,
  ],
  [
    "gauge",
    /^(?:gauge(?: ?\/ ?tension| swatch)?|tension|tension ?\/ ?gauge|stitch(?:es)? (?:gauge|control)|stitches control|check your gauge)\b/i,
  ],
  [
    "materials",
    /^(?:materials?(?: needed| required| list| used)?|supplies(?: needed)?|you(?:'| wi)ll need|what you(?:'| wi)ll need|what you need|you need|yarns?(?: used| needed| requirements?)?|hooks?(?: size)?|crochet hooks?|notions|tools|needles?|also(?: needed)?|equipment|other supplies|additional (?:materials|supplies)|thread|wool|colou?rs?|buttons)(?=\s?(?:[:.=-]|$))/i,
  ],
  [
    "sizes",
    /^(?:(?:finished |available |garment |approximate |final )?(?:sizes?|sizing)(?: (?:available|included|guide|chart|info(?:rmation)?))?|(?:finished |garment |body |approx(?:imate)? |actual )?(?:measurements?|dimensions)(?: of (?:the )?[a-z]+)?|finished (?:size|bust|chest|length|width|circumference)|actual bust|to fit(?: (?:bust|chest|ages?|head|waist|hips?|sizes?))?|bust(?: size)?|chest|length|width|ages?)(?=\s?(?:[:.=-]|$|\())/i,
  ],
  [
    "note",
    /^(?:(?:general |pattern |important |helpful |designer'?s? |author'?s? |please |construction |special )?notes?(?: on (?:the )?(?:pattern|construction|stitches|fit|sizing))?|tips?(?: (?:and|&) tricks)?|hints?|construction(?: notes)?|before you (?:begin|start)|n\.?b\.?|p\.?s\.?|important|please note|help|skill level|difficulty|level|about (?:the|this) (?:pattern|design)|reading the pattern|disclaimer|copyright|customi[sz]ation)(?=\s?(?:[:.!-]|$|\d))/i,
  ],
  [
    "finishing",
    /^(?:finishing(?: (?:touches|up|details))?|to (?:make up|finish|complete)|making[ -]up|make up|assembly|assembling|blocking|to assemble|joining|construction and finishing|putting (?:it )?together)(?=\s?(?:[:.-]|$|\())/i,
  ],
  [
    "pattern",
    /^(?:(?:the |crochet |written )?(?:pattern|instructions?|directions?)(?: instructions?)?|let'?s (?:begin|start|crochet)|method|how to make(?: it)?|begin(?:ning)? the pattern|start here)(?=\s?(?:[:.-]|$))/i,
  ],
];

/** The section that a line heads, with the length of the heading words; null where it heads none. */
export function sectionHeader(words: string): { readonly section: Section; readonly length: number } | null {
  for (const [section, pattern] of HEADERS) {
    const found = pattern.exec(words);
    if (found) return { section, length: found[0].length };
  }
  return null;
}

/** Whether the line begins with the words of a section heading and what follows them fits a heading. */
export function isSectionHeader(words: string): boolean {
  const found = sectionHeader(words);
  if (!found) return false;
  const rest = words.slice(found.length).trim();
  return rest === "" || /^(?:[:.=(]|-\s?|\((?:[A-Z]|american|british|us|uk))/i.test(rest);
}

const PIECE =
  /\b(?:back|fronts?|sleeves?|yoke|collar|cuffs?|body|bodice|hood|pockets?|belt|strap|straps|ties?|edging|border|neck ?band|neckline|button ?band|band|bands|ribbing|rib|waist ?band|skirt|crown|brim|ear ?flaps?|foot|heel|toe|leg|legs|sole|upper|ankle|thumb|palm|hand|fingers?|head|ears?|arms?|wings?|tail|nose|beak|eyes?|muzzle|base|sides?|bottom|top|handles?|flap|square|motif|strip|strips|panel|panels|gusset|bow|flower|leaf|petals?|center|centre|granny|hat|bonnet|booties?|bootee|slipper|mitten|mitts?|glove|scarf|shawl|cowl|blanket|vest|cardigan|jacket|pullover|sweater|poncho|shrug|bolero|dress|halter|cup|cups|cover|lining|button|buttons|cord|drawstring|fringe|tassel|trim|facing|lapels?|placket|front band|bag|pouch|basket|lid|section|part|half|shoulder|wrist|stitch pattern|pattern stitch|main pattern|swatch|cap|toepiece|instep|tongue|mouth|hair|mane|feet|paws?|horn|shell|spine|round|oval|armhole|rim|hem|peplum|insert|medallion|body part)\b/i;
const PART =
  /^(?:shape|shaping|divide|dividing|split|armholes?|neck(?:line)? shaping|neck|shoulders?|(?:right|left|first|second|front|back)(?: (?:front|back))? (?:shoulder|neck|armhole|side|half)|(?:front|back) neck(?:line)?|armhole shaping|shoulder shaping|sleeve cap|cap|cap shaping|v-?neck|raglan|upper (?:body|back|front)|lower (?:body|back|front)|rib|ribbing|waist|hem|body|increase section|decrease section|increases?|decreases?|begin|beginning|work|working|underarm|underarms|upper|lower|right|left|continue|join)\b/i;

/** A word that names a piece stands among the words. */
export function namesPiece(words: string): boolean {
  return PIECE.test(words);
}

/** The words name a part of a piece ("Shape neck", "Right shoulder") rather than a piece. */
export function namesPart(words: string): boolean {
  return PART.test(words.trim().replace(/^to\s/i, ""));
}

/** Bands and edgings that are pieces of their own even when they stand under "Finishing". */
export function namesEdging(words: string): boolean {
  return /\b(?:edging|border|neck ?band|button ?band|front bands?|collar|cuffs?|ribbing|trim|hem band|pockets?|belt|ties?|straps?|buttons?|hood|armhole bands?|bands?|fringe|drawstring|cord|waist ?band)\b/i.test(
    words,
  );
}
