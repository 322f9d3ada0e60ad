import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FoodDiet } from "../../src/domain/model/food.js";
import { allergenCodes } from "../../src/domain/nutrition/allergen-codes.js";
import { asIngredient } from "../../src/domain/nutrition/ingredient.js";
import { dietJudge, dietStatements } from "../../src/domain/nutrition/diets.js";
import { publishedRules } from "../imports/rules/published-rules.js";
import { fits, onlyWith, saying } from "../domain/nutrition/allergen-foods.js";

// Law 4 of the design: an unknown never hides a known, and makes no answer safer. Documents of old may hold such codes.
const { allergens: rules } = publishedRules;
const codes = rules.diets.map(({ code }) => code);

/** Words that are no code, near codes and far from them, and those of the language itself. */
const unknownCode = fc
  .oneof(
    fc.constantFrom("vegn", "Vegan", "vegan ", "glutenfrei", "toString", "__proto__", ""),
    fc.constantFrom(...codes).map((code) => code.slice(0, -1)),
    fc.stringMatching(/^[a-z]{1,12}$/),
  )
  .filter((code) => !codes.includes(code));

const statement = fc.constantFrom<FoodDiet["fits"]>(true, false, null);

/** What is stated of the diets there are, and the allergens it contains; of all others it says nothing, or that they are absent. */
const food = fc
  .tuple(
    fc.array(fc.tuple(fc.constantFrom(...codes), statement), { maxLength: 4 }),
    fc.subarray([...allergenCodes], { maxLength: 3 }),
    fc.boolean(),
  )
  .map(([stated, contained, saysOthers]) => {
    const { allergens } = onlyWith("relish", ...contained);
    const said = saysOthers ? allergens : allergens.filter(({ presence }) => presence === "CONTAINS");
    return { ...saying("relish", ...said), diets: stated.map(([diet, value]) => fits(diet, value)) };
  });

const order = [false, null, true];
const answers = (of: ReturnType<typeof saying>) => dietStatements([of], rules, null);

describe("a diet code that no list has", () => {
  it("makes a food fit nothing that it did not fit without it, and hides nothing that breaks a diet", () => {
    fc.assert(
      fc.property(food, unknownCode, statement, fc.boolean(), (known, code, said, first) => {
        const more = fits(code, said);
        const doubted = { ...known, diets: first ? [more, ...known.diets] : [...known.diets, more] };
        const before = answers(known);
        answers(doubted).forEach((answer, at) => {
          expect(order.indexOf(answer.fits)).toBeLessThanOrEqual(order.indexOf(before[at]?.fits ?? null));
          if (before[at]?.fits === false) expect(answer.fits).toBe(false);
        });
      }),
    );
  });

  it("is never met itself, whatever the food states of it", () => {
    fc.assert(
      fc.property(food, unknownCode, statement, (known, code, said) => {
        const judged = dietJudge(rules.diets, null)({ ...known, diets: [...known.diets, fits(code, said)] }, code);
        expect(judged).toBeNull();
      }),
    );
  });

  it("leaves every diet open where it may have said that this one is not kept", () => {
    fc.assert(
      fc.property(food, unknownCode, fc.constantFrom(false, null), (known, code, said) => {
        const doubted = { ...known, diets: [...known.diets, fits(code, said)] };
        for (const { diet, fits: fitting } of answers(doubted)) expect([diet, fitting]).not.toEqual([diet, true]);
      }),
    );
  });

  it("lets nothing be absent that was not absent without it", () => {
    fc.assert(
      fc.property(food, unknownCode, statement, fc.constantFrom(...allergenCodes), (known, code, said, allergen) => {
        const before = asIngredient(known, allergen, rules.diets).presence;
        const after = asIngredient({ ...known, diets: [...known.diets, fits(code, said)] }, allergen, rules.diets);
        if (after.presence === "DOES_NOT_CONTAIN") expect(before).toBe("DOES_NOT_CONTAIN");
      }),
    );
  });
});

describe("a usual spelling of a diet in a document of old", () => {
  it("counts as the code", () => {
    for (const value of [true, false, null]) {
      const [written, code] = ["glutenfree", "gluten-free"].map((diet) =>
        answers({ ...onlyWith("relish"), diets: [fits(diet, value)] }),
      );
      expect(written).toEqual(code);
    }
  });
});
