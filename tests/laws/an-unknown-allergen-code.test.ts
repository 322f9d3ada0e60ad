import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aisles } from "../../src/domain/model/aisles.js";
import type { FoodAllergen } from "../../src/domain/model/food.js";
import { spellings } from "../../src/domain/model/spellings.js";
import { allergenCodes, isAllergenCode } from "../../src/domain/nutrition/allergen-codes.js";
import { allergenStatement } from "../../src/domain/nutrition/allergens.js";
import { dietStatements } from "../../src/domain/nutrition/diets.js";
import { publishedRules } from "../imports/rules/published-rules.js";
import { has, onlyWith, saying } from "../domain/nutrition/allergen-foods.js";

// Law 4 of the design: an unknown never hides a known, and makes no answer safer. Documents of old may hold such codes.
const { allergens: rules } = publishedRules;
const today = "2026-11-25";

const findings = (food: ReturnType<typeof saying>) => allergenStatement([food], rules, null, today).findings;
const order = ["CONTAINS", "MAY_CONTAIN", "UNKNOWN", "DOES_NOT_CONTAIN"];

/** Words that are no code, near codes and far from them. */
const unknownCode = fc
  .oneof(
    fc.constantFrom("penut", "mlik", "nuts", "shellfish", "dairy"),
    fc.constantFrom(...allergenCodes).map((code) => code.slice(0, -1)),
    fc.stringMatching(/^[a-z]{1,12}$/),
  )
  .filter((code) => !isAllergenCode(code) && !Object.hasOwn(spellings.allergen ?? {}, code));

const presence = fc.constantFrom<FoodAllergen["presence"]>("CONTAINS", "MAY_CONTAIN", "UNKNOWN");

describe("an allergen code that no list has", () => {
  it("leaves nothing absent, and hides nothing that is contained", () => {
    fc.assert(
      fc.property(fc.subarray([...allergenCodes], { maxLength: 4 }), unknownCode, presence, (contained, code, said) => {
        const known = onlyWith("relish", ...contained);
        const doubted = { ...known, allergens: [...known.allergens, has(code, said)] };
        const before = findings(known);
        findings(doubted).forEach((finding, at) => {
          expect(finding.presence).not.toBe("DOES_NOT_CONTAIN");
          expect(order.indexOf(finding.presence)).toBeLessThanOrEqual(order.indexOf(before[at]?.presence ?? ""));
          if (before[at]?.presence === "CONTAINS") expect(finding.presence).toBe("CONTAINS");
        });
      }),
    );
  });

  it("lets the food fit no diet that rests on what is not in it", () => {
    fc.assert(
      fc.property(unknownCode, presence, (code, said) => {
        const source = has(code, said).source;
        const food = {
          ...onlyWith("relish"),
          diets: rules.diets.map(({ code: diet }) => ({ diet, fits: true as const, source })),
        };
        const doubted = { ...food, allergens: [...food.allergens, has(code, said)] };
        for (const { diet, fits } of dietStatements([doubted], rules, null)) expect([diet, fits]).toEqual([diet, null]);
      }),
    );
  });

  it("is shown where it is contained", () => {
    const { alsoContains } = allergenStatement([saying("relish", has("penut"))], rules, null, today);
    expect(alsoContains).toEqual([{ code: "penut", foods: ["relish"] }]);
  });

  it("leaves nothing open where it is only said that it is absent", () => {
    const free = onlyWith("relish");
    const more = { ...free, allergens: [...free.allergens, has("penut", "DOES_NOT_CONTAIN")] };
    expect(findings(more)).toEqual(findings(free));
  });
});

describe("a usual spelling in a document of old", () => {
  it.each(Object.entries(spellings.allergen ?? {}))("counts as the code: %s", (written, code) => {
    expect(findings(saying("relish", has(written)))).toEqual(findings(saying("relish", has(code))));
  });
});

describe("the table of spellings", () => {
  it("leads to codes, and from none", () => {
    const lists: Readonly<Record<string, readonly string[]>> = { allergen: allergenCodes, aisle: aisles };
    for (const [list, codes] of Object.entries(lists))
      for (const [written, code] of Object.entries(spellings[list as "allergen" | "aisle"] ?? {})) {
        expect(codes).toContain(code);
        expect(codes).not.toContain(written);
      }
  });
});
