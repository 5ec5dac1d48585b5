export { cannotShapeEvenly, type Facts as CannotShapeEvenlyFacts } from "./cannot-shape-evenly.ts";
export { chainFromHook, type Facts as ChainFromHookFacts } from "./chain-from-hook.ts";
export { changeDiffers, type Facts as ChangeDiffersFacts } from "./change-differs.ts";
export { countDiffers, type Facts as CountDiffersFacts } from "./count-differs.ts";
export { endsOnOtherSide, type Facts as EndsOnOtherSideFacts } from "./ends-on-other-side.ts";
export { endsOutsideMeasure, type Facts as EndsOutsideMeasureFacts } from "./ends-outside-measure.ts";
export { evenlyWithoutNumber, type Facts as EvenlyWithoutNumberFacts } from "./evenly-without-number.ts";
export { type Facts as JoinMissingFacts, joinMissing } from "./join-missing.ts";
export { type Facts as JoinsOtherChainFacts, joinsOtherChain } from "./joins-other-chain.ts";
export { type Facts as MissesItsCountFacts, missesItsCount } from "./misses-its-count.ts";
export { type Facts as MoreRowsThanThereAreFacts, moreRowsThanThereAre } from "./more-rows-than-there-are.ts";
export { type Facts as NotEnoughStitchesFacts, notEnoughStitches } from "./not-enough-stitches.ts";
export { type Facts as NotFastenedOffFacts, notFastenedOff } from "./not-fastened-off.ts";
export { type Facts as NothingToWorkIntoFacts, nothingToWorkInto } from "./nothing-to-work-into.ts";
export { type Facts as NumberRepeatsFacts, numberRepeats } from "./number-repeats.ts";
export { type Facts as NumberSkipsFacts, numberSkips } from "./number-skips.ts";
export { type Facts as PiecesDoNotMirrorFacts, piecesDoNotMirror } from "./pieces-do-not-mirror.ts";
export { type Facts as ReadingChosenFacts, readingChosen } from "./reading-chosen.ts";
export { type Facts as RejoinWithoutPlaceFacts, rejoinWithoutPlace } from "./rejoin-without-place.ts";
export { type Facts as RepeatLeavesStitchesFacts, repeatLeavesStitches } from "./repeat-leaves-stitches.ts";
export {
  type Facts as RepeatedRowDoesNotFitFacts,
  repeatedRowDoesNotFit,
} from "./repeated-row-does-not-fit.ts";
export { type Facts as RowNotFoundFacts, rowNotFound } from "./row-not-found.ts";
export { type Facts as RowsToldDifferFacts, rowsToldDiffer } from "./rows-told-differ.ts";
export { type Facts as SampleWidthFacts, sampleWidth } from "./sample-width.ts";
export { type Facts as SeamsDoNotMatchFacts, seamsDoNotMatch } from "./seams-do-not-match.ts";
export { type Facts as SharesDoNotSumFacts, sharesDoNotSum } from "./shares-do-not-sum.ts";
export { type Facts as SideContradictsTurnsFacts, sideContradictsTurns } from "./side-contradicts-turns.ts";
export { type Facts as StitchesLeftOverFacts, stitchesLeftOver } from "./stitches-left-over.ts";
export { type Facts as TakenOnTrustFacts, takenOnTrust } from "./taken-on-trust.ts";
export { type Facts as TurnDoubledFacts, turnDoubled } from "./turn-doubled.ts";
export { type Facts as TurnMissingFacts, turnMissing } from "./turn-missing.ts";
export { type Facts as TurningChainTwoWaysFacts, turningChainTwoWays } from "./turning-chain-two-ways.ts";
export {
  type Facts as TurningChainUndecidedFacts,
  turningChainUndecided,
} from "./turning-chain-undecided.ts";
export { type Facts as UnknownPieceFacts, unknownPiece } from "./unknown-piece.ts";
export { type Facts as WorkedOnNothingFacts, workedOnNothing } from "./worked-on-nothing.ts";
