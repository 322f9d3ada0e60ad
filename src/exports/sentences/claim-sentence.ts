import type { ClaimProblem } from "../../domain/problem.js";

/** What is wrong with a plan's claim, and what would mend it: the same beside a draft and when publishing is refused. */
export function claimSentence(problem: ClaimProblem, name: (slug: string) => string = (slug) => slug): string {
  const list = (slugs: readonly string[]): string => slugs.map((slug) => `"${name(slug)}"`).join(", ");
  switch (problem.code) {
    case "CLAIM_BROKEN":
      return `The plan claims "${problem.claim}", and ${list(problem.foods)} contradicts it. Remove the claim, or use another food.`;
    case "CLAIM_NOT_KNOWN":
      return (
        `The plan claims "${problem.claim}", and of ${list(problem.foods)} it is not known. Unknown is not "free from":` +
        ` state the allergens and diets of that food, or remove the claim.`
      );
    case "CLAIM_WITHOUT_RULE":
      return `The plan claims "${problem.claim}", and no rule says what that means. Use the code of a diet, or say it in the summary.`;
  }
}
