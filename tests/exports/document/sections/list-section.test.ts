import { beforeAll, describe, expect, it } from "vitest";
import type { PlanAnswer } from "../../../../src/domain/plan/plan-answer.js";
import { blankForm } from "../../../../src/exports/page/form/plan-form.js";
import { listPage } from "../../../../src/exports/page/list-page.js";
import { planCard } from "../../../../src/exports/page/card.js";
import { plainText } from "../../../../src/exports/document/plain-text.js";
import { shoppingMarkdown } from "../../../../src/exports/document/shopping-markdown.js";
import { attributeOf, elementsOf, htmlLines } from "../../../kit/html-page.js";
import { answerOf, demoBundle, sundayHousehold } from "../../demo-answer.js";

const links = { origin: "https://plans.example", style: "/p-assets/page.css", ticks: null, cook: null };

describe("a list where something is in the house already", () => {
  let answer: PlanAnswer;

  beforeAll(async () => {
    answer = await answerOf(demoBundle("roots-and-barley"), 4, {
      ...sundayHousehold,
      onHand: [
        { food: "carrot", amount: "5", unit: "kg" },
        { food: "lemon", amount: "1", unit: "piece" },
      ],
    });
  });

  const input = () => ({ list: answer.list, plans: [answer.scaled.bundle], reader: answer.reader, servings: 4 });

  it("has it last, apart and ticked, in Markdown, on the page, on the card and in the terminal", () => {
    const markdown = shoppingMarkdown(input());
    const [toBuy = "", there = ""] = markdown.split("## In the house already");
    expect(there).toMatch(/^\n\n- \[x\] \*\*carrot\*\* \d.*on hand/);
    expect(toBuy).not.toContain("**carrot**");
    expect(toBuy).toMatch(/- \[ \] \*\*lemon\*\* .*1 lemon on hand/);
    const { bundle } = answer.scaled;
    const listed = { bundle, publisher: answer.publication.publisher, servings: 4, form: blankForm };
    const page = listPage({
      plans: [listed],
      list: answer.list,
      reader: answer.reader,
      household: answer.household,
      labels: new Set(),
      links,
      others: "",
    });
    const boxes = elementsOf(page).filter((element) => attributeOf(element, "type") === "checkbox");
    const ticked = boxes.filter((box) => attributeOf(box, "checked") !== null);
    expect(ticked.map((box) => attributeOf(box, "value"))).toEqual(["carrot"]);
    expect(htmlLines(page).join("\n")).toContain("nothing to buy");
    expect(planCard(answer, "/plan").aisles.at(-1)?.title).toBe("At home already");
    expect(plainText(answer)).toMatch(/In the house already\n {4}carrot: /);
  });

  it("buys whole pieces, and says what is optional", () => {
    const markdown = shoppingMarkdown(input());
    expect(markdown).toMatch(/\*\*thyme\*\* .*, optional/);
    expect(markdown).not.toMatch(/\*\*parsley\*\* .*optional/);
    for (const { buy, toBuy } of answer.list.lines) {
      const bought = buy.reduce((sum, { count }) => sum + count, 0);
      if (toBuy !== null && toBuy.high > 0) expect(bought).toBeGreaterThan(0);
    }
  });
});
