import { describe, expect, it } from "vitest";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import { mailHtml } from "../../../../src/exports/document/mail-html.js";
import { planMarkdown } from "../../../../src/exports/document/markdown.js";
import { htmlLines } from "../../../kit/html-page.js";
import { addresses, answerOf, demoBundle } from "../../demo-answer.js";

/** The demo's plan, of whose foods only some have any figures. */
const knowing = (known: (slug: string) => boolean): PlanBundle => {
  const bundle = demoBundle("roots-and-barley");
  return {
    ...bundle,
    foods: bundle.foods.map((food) => (known(food.slug) ? food : { ...food, nutrients: null })),
  };
};

async function ways(bundle: PlanBundle): Promise<readonly string[]> {
  const answer = await answerOf(bundle, 4);
  return [planMarkdown(answer, addresses, null), htmlLines(mailHtml(answer, addresses, null)).join("\n")];
}

describe("the nutrition of a plan to read", () => {
  it("says of a figure nothing of which is known that it is not known, never at least 0", async () => {
    for (const document of await ways(knowing((slug) => slug === "salt" || slug === "pearl-barley"))) {
      expect(document).not.toMatch(/(at least|about) 0(?![.,]?\d)/);
      expect(document).toContain("not known");
    }
  });

  it("says once for what share of the food the figures are known, and what is missing", async () => {
    for (const document of await ways(knowing((slug) => slug === "pearl-barley"))) {
      expect(document.match(/Known for \d+ % of the food/g)).toHaveLength(1);
      expect(document).toMatch(/Known for \d+ % of the food[^:]*: .*carrot.* missing\./);
      expect(document).not.toContain("Share of the food");
    }
  });

  it("says which nutrients are known for another share", async () => {
    for (const document of await ways(demoBundle("roots-and-barley")))
      expect(document).toMatch(/Known for 100 % of the food \(sugars \d+ %\)\./);
  });
});
