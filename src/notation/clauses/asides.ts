import type { Clause } from "../tree.ts";
import type { Reading } from "./reading.ts";

/** Whole phrases that change nothing. Each is stepped over as it stands. */
const PHRASES: readonly string[] = [
  "loosely|carefully|firmly|gently|neatly|snugly|tightly|again|only|optional|also|now|well|always|please|simply|usually|exactly|approximately|alternately|finally|first|lastly",
  "do not|n't cut|break|fasten|end|finish|tighten|count|stretch|carry|skip|miss off|yarn|thread|too|the|any|off|tightly|over? yarn|off|sts|st|tight|stitches|any?",
  "do|don't|dont|not fasten|finish|break|cut|end off|yarn|thread|the yarn?",
  "without cutting|breaking|fastening yarn|off|thread",
  "you|we|they are|will|should|'re now? be? working|worked|work in the? rounds|rnds|rows|round",
  "now working|work|worked in the? rounds|rnds|round|rows",
  "work|working|worked|continue in the? rounds|rnds|round|rows",
  "see|refer|follow|as per|as|like to|in|at|shown|per? the? chart|photo|photos|picture|pictures|diagram|video|note|notes|special|schematic|page|figure|above|below|stitch|instructions|fig|link|tutorial|guide|abbreviations stitches|notes|chart|below|above|guide|stitch?",
  "as shown|pictured|seen|above|below|follows|desired|needed|established|usual|before|directed|described|instructed|required|necessary|stated|instructions in? the? photo|picture|chart|above|below?",
  "using|use|with a|the? tapestry|yarn|darning|sewing|blunt needle",
  "right|wrong side|sides of? the? work? facing|out|up|row|rows|rnd|round|together?",
  "rs|ws facing|row|out|side|rnd|together|up?",
  "this is|will|counts|forms|completes|becomes|makes|creates|ends|will|should",
  "mark|marks this|that|the|as|rs|right? row|side|rs|right? as? right|rs? side?",
  "end of row|rnd|round|pattern|part|section|repeat|shaping|increases|yoke",
  "leaving|leave|with a? long|enough|yarn|6|8|10|12|small|short? inch|in|cm|\"|end|tail|yarn|long? tail|end?",
  "if|when necessary|needed|desired|required|you|worn|working",
  "at|on|from the? same|this|each|that|wrong|right|beg|beginning|end|other|both time|point|end|side|ends|sides|of row|rnd",
  "in this|the|same|usual|following|all|each row|way|manner|rows|rnds|rounds|rnd|round|sizes|size",
  "for all|both sizes|size|ages",
  "for this|the|each|every row|rnd|round|size|rest|hem|cuff|side",
  "beg|beginning|starting|start on|with|at the? same? next|ws|rs|row|rnd|wrong|right side|row|rnd|round?",
  "first|second|third|next|last row|rnd|round|side|sleeve|half|repeat|motif|shoulder|part completed|complete|done|made",
  "all sizes|ages",
  "add number? for? base|foundation|turning? chain|ch", "and so on|forth", "etc", "etcetera", "i.e|e.g|eg|ie|nb|note|tip|hint",
  "have fun|enjoy", "yarn over|yoh",
  "remove|insert|drop hook|loop from|last? loop|hook?",
  "check|measure|checking your|the|gauge? gauge|tension|measurements|length",
  "to form|make|create|shape|complete|begin|finish|start the|a|an|next|last|final? last|next|final? loop|sp|ch-sp|lp|corner|armhole|armholes|underarm|underarms|point|point|shell|opening|thumb|buttonhole|neck|body|sleeve|row|cuff|brim|hat|crown|hem|rnd|round|toe|heel|strap|yoke|first|second",
  "in|as before|established",
  "pull|pulling tight|tightly|ring|closed|snug|to|tail|the|up tight|tightly|close|closed|ring|center|centre|tail|to? close|tighten|closed?",
  "tighten|close|closing ring|the|loop|circle|up ring|circle|hole|loop?",
  "being|taking careful|care not|to work|twist|tighten|keep not|too|to|the|chain|tight|stretch|twist|ch? chain|tightly|ch|the? chain|ch?",
  "making|being|make|be sure|careful|certain not|to|that|you not|do|have|work|twist|the|keep? twist|chain|the? chain|ch|sts|work?",
  "end|ending|ends|finishing at|on the? other|left|right|neck|armhole|sleeve|front|side|same|outer|inner edge|side|end|seam|front|sleeve|armhole edge|side|end?",
  "do|does not", "hereafter", "here and throughout|after", "throughout", "to correspond", "ending|end to correspond|match",
];

/** Words that join steps and say nothing themselves. */
const FILLERS = new Set([
  "then", "and", "now", "next", "also", "work", "make", "working", "making", "do", "continue", "cont", "continuing", "begin", "start", "starting", "beginning", "you", "will", "should", "just", "by", "so", "that", "there", "thus", "still", "again", "crochet", "to", "with", "in", "more", "only", "but", "the", "a", "at", "all", "of", "for", "as", "once", "from", "place", "here", "simply", "end", "ending", "finish", "it", "them", "row", "rnd", "round", "worked", "proceed", "pattern", "patt", "instructions", "instead", "first", "repeat", "st", "sts",
]);

/** Fillers that only count as nothing beside other words; left alone at a step's end they would hide something. */
const WEAK = new Set(["to", "with", "in", "the", "a", "at", "all", "of", "for", "as", "by", "from", "end", "ending", "row", "rnd", "round", "place", "it", "them", "first", "repeat", "finish", "pattern", "patt", "instructions", "st", "sts", "more", "so", "that", "there", "beginning", "starting"]);

/** Words read and meaning nothing for the work: one phrase of the table, to the end of its step where the step has no more. */
export function readAside(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    for (const phrase of PHRASES) {
      if (cursor.accept(phrase)) return { kind: "aside", span: cursor.spanFrom(start) };
    }
    return null;
  });
}

/** Steps over one word that joins steps: "then", "and", "work". Weak ones only where more follows in the same step. */
export function skipFiller(reading: Reading): boolean {
  const { cursor } = reading;
  const key = cursor.key();
  if (!cursor.isWord() || !FILLERS.has(key)) return false;
  if (WEAK.has(key) && cursor.isBoundary(1)) return false;
  cursor.at += 1;
  return true;
}
