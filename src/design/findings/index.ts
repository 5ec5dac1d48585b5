export { answerMatchesNothing, type Facts as AnswerMatchesNothingFacts } from "./answer-matches-nothing.ts";
export { answerReopened, type Facts as AnswerReopenedFacts } from "./answer-reopened.ts";
