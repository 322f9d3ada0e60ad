import { beforeAll, describe, expect, it } from "vitest";
import type { PlanAnswer } from "../../../src/domain/plan/plan-answer.js";
import type { Problem } from "../../../src/domain/problem.js";
import { sessionProblemText } from "../../../src/exports/sentences/session-problem-text.js";
import { answerOf, demo, sundayHousehold } from "../demo-answer.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";

describe("Why there is no session, for readers", () => {
  const answers: PlanAnswer[] = [];

  beforeAll(async () => {
    for (const bundle of demo.bundles) answers.push(await answerOf(bundle, 4, sundayHousehold));
  });

  it("names things and steps in the words of the plan: no slug, no id", () => {
    for (const { scaled } of answers) {
      const steps = [
        ...scaled.components.flatMap(({ component }) => component.steps.map(({ id }) => `${component.slug}/${id}/2`)),
        ...scaled.meals.flatMap(({ meal }) => meal.steps.map(({ id }) => `${meal.slug}/${id}`)),
      ];
      for (const code of ["WAITS_CANNOT_BE_KEPT", "STEPS_IN_A_CIRCLE"] as const) {
        const problem: Problem = { code, path: ["components", "x", "steps", "y"], steps: [...steps, ...steps] };
        const said = sessionProblemText(problem, scaled, wordsFor("en"));
        for (const step of steps) expect(said).not.toContain(step.replace(/\/2$/, ""));
        expect(said).not.toContain(" > ");
        for (const { component } of scaled.components.filter((each) => each.component.steps.length > 0))
          expect(said.split(`${component.title} (“`).length - 1, component.title).toBe(component.steps.length);
      }
    }
  });
});
