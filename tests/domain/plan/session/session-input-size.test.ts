import { countSteps } from "../../../kit/count-steps.js";
import { describe, expect, it } from "vitest";
import { noHousehold } from "../../../../src/domain/model/household.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import { sessionInput } from "../../../../src/domain/plan/session/session-input.js";
import { rules } from "../../../graphql/open-test-app.js";
import { largeBundle } from "../../../kit/large-bundle.js";

const scaledOf = (components: number) => {
  const scaled = scalePlan(largeBundle({ components, lines: 5, meals: 20 }), 8, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems.slice(0, 3)));
  return scaled.value;
};

describe("the work of a session", () => {
  it("of twice the components takes twice the steps to lay out", () => {
    const [few, many] = [scaledOf(300), scaledOf(600)];
    const lay = (scaled: typeof few) => () => sessionInput(scaled, noHousehold, rules.safety.classes);
    // What a plan knows of itself is worked out with the first.
    for (const scaled of [few, many]) countSteps(lay(scaled));
    expect(countSteps(lay(many)) / countSteps(lay(few))).toBeLessThan(2.3);
  });
});
