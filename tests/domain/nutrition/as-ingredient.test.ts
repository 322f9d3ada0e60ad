import { describe, expect, it } from "vitest";
import { allergenCodes } from "../../../src/domain/nutrition/allergen-codes.js";
import { allergenStatement } from "../../../src/domain/nutrition/allergens.js";
import type { AllergenFood } from "../../../src/domain/nutrition/allergen-claims.js";
import { dietStatements, type DietFood } from "../../../src/domain/nutrition/diets.js";
import { invented, published } from "../../kit/builders.js";
import { publishedRules } from "../../imports/rules/published-rules.js";
import { fits, has, saying } from "./allergen-foods.js";

const { allergens: rules } = publishedRules;
const find = (foods: readonly AllergenFood[], code: string, region = "GB") => {
  const found = allergenStatement(foods, rules, region, "2026-11-25").findings.find((each) => each.code === code);
  if (found === undefined) throw new Error(code);
  return found;
};
const carrot = { ...saying("carrot"), singleIngredient: { is: [], source: published("A handbook") } };
const egg = { ...saying("egg", has("egg")), singleIngredient: { is: ["egg"], source: invented } };
const keeping = (diet: string, slug = "sausage") => ({ ...saying(slug), diets: [fits(diet, true)] });

describe("as an ingredient", () => {
  it("a single ingredient has no other, by nature, and its source says so", () => {
    expect(find([carrot], "milk").asIngredient).toMatchObject({
      ...{ presence: "DOES_NOT_CONTAIN", basis: "BY_NATURE", unknown: [] },
      source: { title: "A handbook" },
    });
    expect(find([egg], "egg").asIngredient).toMatchObject({ presence: "CONTAINS", basis: "STATED" });
    expect(find([egg], "gluten").asIngredient).toMatchObject({ presence: "DOES_NOT_CONTAIN", basis: "BY_NATURE" });
  });

  it("a food that lists nothing is not known to be without anything", () => {
    for (const { asIngredient } of allergenStatement([saying("carrot")], rules, null, "2026-11-25").findings)
      expect(asIngredient).toMatchObject({ presence: "UNKNOWN", basis: null, source: null, unknown: ["carrot"] });
  });

  it("an egg is not without egg because somebody forgot to list it", () => {
    expect(find([{ ...egg, allergens: [] }], "egg").asIngredient.presence).toBe("UNKNOWN");
  });

  it("vegan food has no milk, egg, fish, crustaceans or molluscs, and may have anything else", () => {
    const derived = ["milk", "egg", "fish", "crustacean", "mollusc"];
    for (const code of derived)
      expect(find([keeping("vegan")], code).asIngredient).toMatchObject({
        presence: "DOES_NOT_CONTAIN",
        basis: "DERIVED",
      });
    for (const code of ["soy", "gluten", "peanut", "tree-nut", "celery"])
      expect(find([keeping("vegan")], code).asIngredient.presence).toBe("UNKNOWN");
    expect(find([keeping("vegetarian")], "milk").asIngredient.presence).toBe("UNKNOWN");
    expect(find([keeping("vegetarian")], "fish").asIngredient.presence).toBe("DOES_NOT_CONTAIN");
  });

  it("gluten-free food may be of wheat, rye, barley or oats, and the answer says so", () => {
    for (const code of ["wheat", "rye", "barley", "oats"])
      expect(find([keeping("gluten-free", "starch")], code, "AU").asIngredient).toMatchObject({
        ...{ presence: "UNKNOWN", unknown: ["starch"], glutenFreeOnly: ["starch"] },
      });
    expect(find([keeping("gluten-free", "starch")], "milk", "AU").asIngredient.glutenFreeOnly).toEqual([]);
    const rice = { ...keeping("gluten-free", "rice"), singleIngredient: { is: [], source: invented } };
    expect(find([rice], "wheat", "AU").asIngredient).toMatchObject({ basis: "BY_NATURE", glutenFreeOnly: [] });
  });

  it("a stated allergen stands against a diet and against nature", () => {
    const wrong = { ...carrot, allergens: [has("milk")], diets: [fits("vegan", true)] };
    expect(find([wrong], "milk")).toMatchObject({ presence: "CONTAINS", asIngredient: { basis: "STATED" } });
    const doubted = { ...carrot, allergens: [has("milk", "UNKNOWN")], diets: [fits("vegan", true)] };
    expect(find([doubted], "milk").asIngredient.presence).toBe("UNKNOWN");
  });

  it("barley is barley in Australia, and a cereal with gluten in the Union, and neither twice", () => {
    const barley = { ...saying("barley", has("barley")), singleIngredient: { is: ["barley"], source: invented } };
    expect(find([barley], "barley", "AU").presence).toBe("CONTAINS");
    expect(find([barley], "wheat", "AU").asIngredient.presence).toBe("DOES_NOT_CONTAIN");
    expect(find([barley], "gluten", "DE").presence).toBe("CONTAINS");
    const both = { ...barley, allergens: [has("gluten"), has("barley")] };
    expect(allergenStatement([both], rules, "AU", "2026-11-25").alsoContains).toEqual([]);
  });

  it("every code of the list today is settled by nature; one that joins later has to be thought of first", () => {
    // 42 codes when foods were first said to be a single ingredient. A new one belongs into `joinedLater`.
    expect(allergenCodes).toHaveLength(42);
  });
});

describe("traces", () => {
  it("are a second answer, not known until somebody states them", () => {
    expect(find([carrot], "milk")).toMatchObject({ presence: "UNKNOWN", traces: "UNKNOWN", unknown: ["carrot"] });
    const warned = { ...carrot, allergens: [has("milk", "MAY_CONTAIN")] };
    expect(find([warned], "milk")).toMatchObject({
      ...{ presence: "MAY_CONTAIN", traces: "MAY_CONTAIN", mayContain: ["carrot"] },
      asIngredient: { presence: "DOES_NOT_CONTAIN", basis: "BY_NATURE" },
    });
    const vouched = { ...carrot, allergens: [has("milk", "DOES_NOT_CONTAIN")] };
    expect(find([vouched], "milk")).toMatchObject({ presence: "DOES_NOT_CONTAIN", traces: "DOES_NOT_CONTAIN" });
  });

  it("may be said apart from the ingredient", () => {
    const label = { ...has("milk", "DOES_NOT_CONTAIN"), traces: "UNKNOWN" as const };
    expect(find([saying("biscuit", label)], "milk")).toMatchObject({
      ...{ presence: "UNKNOWN", traces: "UNKNOWN" },
      asIngredient: { presence: "DOES_NOT_CONTAIN", basis: "STATED" },
    });
    const warned = { ...has("milk", "DOES_NOT_CONTAIN"), traces: "MAY_CONTAIN" as const };
    expect(find([saying("biscuit", warned)], "milk").presence).toBe("MAY_CONTAIN");
  });
});

describe("labels to read", () => {
  it("are grouped by food, and leave out what the dish contains anyway", () => {
    const { labelsToRead } = allergenStatement([egg, saying("mustard", has("mustard"))], rules, "GB", "2026-11-25");
    expect(labelsToRead.map(({ food }) => food)).toEqual(["mustard"]);
    expect(labelsToRead[0]?.allergens).toContain("celery");
    expect(labelsToRead[0]?.allergens).not.toContain("egg");
    expect(labelsToRead[0]?.allergens).not.toContain("mustard");
  });
});

describe("a diet", () => {
  const of = (foods: readonly DietFood[], code: string) =>
    dietStatements(foods, rules, null).find(({ diet }) => diet === code);

  it("of no ingredient from animals is never beside an open one of no fish", () => {
    const foods = [keeping("vegan", "a"), keeping("vegan", "b")];
    for (const code of ["vegan", "no-fish", "no-milk", "no-egg", "no-shellfish"])
      expect(of(foods, code), code).toMatchObject({ fits: true, unknown: [], traces: "UNKNOWN" });
    expect(of(foods, "no-soy")).toMatchObject({ fits: null, unknown: ["a", "b"] });
  });

  it("is met by nature, and not where a label warns of traces", () => {
    expect(of([carrot], "no-milk")).toMatchObject({ fits: true, traces: "UNKNOWN" });
    expect(of([carrot], "gluten-free")?.fits).toBe(true);
    expect(of([{ ...carrot, allergens: [has("wheat", "MAY_CONTAIN")] }], "gluten-free")).toMatchObject({
      ...{ fits: null, traces: "MAY_CONTAIN" },
    });
  });
});
