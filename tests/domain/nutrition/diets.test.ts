import { describe, expect, it } from "vitest";
import { dietStatement, dietStatements, type DietFood } from "../../../src/domain/nutrition/diets.js";
import { publishedRules } from "../../imports/rules/published-rules.js";
import { fits, has, onlyWith, saying } from "./allergen-foods.js";

const { allergens: rules } = publishedRules;
const diet = (code: string) => {
  const found = rules.diets.find((each) => each.code === code);
  if (found === undefined) throw new Error(code);
  return found;
};
const state = (code: string, foods: readonly DietFood[], region: string | null = null) =>
  dietStatement(foods, diet(code), region, rules.claims, rules.diets);

describe("a diet", () => {
  it("is met when every food is known to meet it", () => {
    const foods = [onlyWith("carrot"), onlyWith("oil")];
    expect(state("no-milk", foods)).toMatchObject({ fits: true, breaks: [], unknown: [] });
  });

  it("is broken by one food, and names it", () => {
    expect(state("no-milk", [onlyWith("carrot"), onlyWith("butter", "milk")])).toMatchObject({
      fits: false,
      breaks: ["butter"],
    });
  });

  it("is not known while one food is not known, and names it", () => {
    expect(state("no-milk", [onlyWith("carrot"), saying("stock")])).toMatchObject({ fits: null, unknown: ["stock"] });
    expect(state("no-milk", [])).toMatchObject({ fits: null });
  });

  it("of absence is open when a label warns of traces", () => {
    expect(state("no-milk", [saying("dark-chocolate", has("milk", "MAY_CONTAIN"))]).fits).toBeNull();
    const stated = { ...saying("oats", has("gluten", "MAY_CONTAIN")), diets: [fits("gluten-free", true)] };
    expect(state("gluten-free", [stated]).fits).toBeNull();
  });

  it("that is kept is no news of a wider one: vegan food has no meat, and what has meat is not vegan", () => {
    const says = (name: string, ...diets: ReturnType<typeof fits>[]) => ({ ...onlyWith(name), diets });
    expect(state("vegetarian", [says("quinoa", fits("vegan", true))])).toMatchObject({ fits: true, unknown: [] });
    expect(state("vegan", [says("lard", fits("vegetarian", false))])).toMatchObject({ fits: false, breaks: ["lard"] });
    // Not the other way round, and what is said itself goes first.
    expect(state("vegan", [says("butter", fits("vegetarian", true))]).fits).toBeNull();
    expect(state("vegetarian", [says("butter", fits("vegan", false))]).fits).toBeNull();
    expect(state("vegetarian", [says("stock", fits("vegan", true), fits("vegetarian", null))]).fits).toBeNull();
    expect(state("vegan", [says("stock", fits("vegan", true), fits("vegetarian", false))]).fits).toBe(false);
    for (const region of [null, "US", "GB", "DE", "AU"])
      for (const said of [true, false, null])
        expect(state("vegetarian", [says("x", fits("vegan", said))], region).fits).toBe(said === true ? true : null);
  });

  it("vegan is settled only by the food's own statement: honey has no allergen", () => {
    expect(state("vegan", [onlyWith("honey")]).fits).toBeNull();
    expect(state("vegan", [{ ...onlyWith("honey"), diets: [fits("vegan", false)] }])).toMatchObject({
      fits: false,
      breaks: ["honey"],
    });
    expect(state("vegan", [{ ...onlyWith("carrot"), diets: [fits("vegan", true)] }]).fits).toBe(true);
    expect(state("vegan", [onlyWith("feta", "milk")]).fits).toBe(false);
    expect(state("vegetarian", [{ ...onlyWith("feta", "milk"), diets: [fits("vegetarian", true)] }]).fits).toBe(true);
  });

  it("takes the stricter of a statement and the allergens", () => {
    const wrong = { ...onlyWith("bread", "wheat"), diets: [fits("gluten-free", true)] };
    expect(state("gluten-free", [wrong]).fits).toBe(false);
    const torn = { ...onlyWith("x"), diets: [fits("vegan", true), fits("vegan", null)] };
    expect(state("vegan", [torn]).fits).toBeNull();
    const no = { ...onlyWith("x"), diets: [fits("no-egg", false)] };
    expect(state("no-egg", [no]).fits).toBe(false);
    const open = { ...onlyWith("x"), diets: [fits("no-egg", null)] };
    expect(state("no-egg", [open]).fits).toBeNull();
  });
});

describe("a gluten-free diet", () => {
  it("is not met, nor known to be met, by soy sauce of which nobody says how it is made (O-31)", () => {
    const sauce = saying("soy-sauce", has("soy"));
    expect(state("gluten-free", [onlyWith("rice"), sauce])).toMatchObject({ fits: null, unknown: ["soy-sauce"] });
    const brewed = saying("soy-sauce", has("soy"), has("wheat"));
    expect(state("gluten-free", [onlyWith("rice"), brewed])).toMatchObject({ fits: false, breaks: ["soy-sauce"] });
  });

  it("is broken by barley, which is on no US allergen list", () => {
    expect(state("gluten-free", [onlyWith("barley", "barley")], "US").fits).toBe(false);
  });

  it("counts oats by region and by what the pack says", () => {
    const oats = onlyWith("oats", "oats");
    const sold = { ...oats, diets: [fits("gluten-free", true)] };
    // 21 CFR 101.91(a)(3); Regulation (EU) No 1169/2011, Annex II point 1; Standard 1.2.7 (from memory)
    expect([state("gluten-free", [oats], "US").fits, state("gluten-free", [sold], "US").fits]).toEqual([null, true]);
    expect([state("gluten-free", [oats], "DE").fits, state("gluten-free", [sold], "DE").fits]).toEqual([false, true]);
    expect([state("gluten-free", [oats], "NZ").fits, state("gluten-free", [sold], "NZ").fits]).toEqual([false, false]);
    expect([state("gluten-free", [oats]).fits, state("gluten-free", [sold]).fits]).toEqual([null, true]);
  });

  it("goes by the line of the region, which may be milder than the general one", () => {
    const milder = {
      ...diet("gluten-free"),
      breaks: [
        { code: "oats", when: "ALWAYS" as const, region: null },
        { code: "oats", when: "UNLESS_STATED" as const, region: "FR" },
      ],
    };
    const sold = { ...onlyWith("oats", "oats"), diets: [fits("gluten-free", true)] };
    expect([null, "FR", "DE"].map((where) => dietStatement([sold], milder, where, [], [milder]).fits)).toEqual([
      false,
      true,
      false,
    ]);
  });

  it("states ingredients and shows what the law ties the claim to", () => {
    const found = state("gluten-free", [onlyWith("rice")], "US");
    expect(found.name).toBe("no ingredient that contains gluten");
    expect(found.claims.map(({ threshold }) => threshold)).toEqual(["below 20 ppm (mg/kg) gluten"]);
    expect(state("gluten-free", [onlyWith("rice")]).claims).toEqual([]);
  });
});

describe("a diet without tree nuts", () => {
  it("is not known to be met by coconut, which was a tree nut in the US until 2025", () => {
    const milk = onlyWith("coconut-milk", "coconut");
    expect(state("no-tree-nuts", [milk])).toMatchObject({ fits: null, unknown: ["coconut-milk"] });
    expect(state("no-tree-nuts", [{ ...milk, diets: [fits("no-tree-nuts", true)] }]).fits).toBe(true);
    expect(state("no-tree-nuts", [onlyWith("chestnuts", "chestnut")]).fits).toBe(false);
  });
});

describe("all diets", () => {
  it("are stated at once, in the order of the rules", () => {
    const all = dietStatements([onlyWith("carrot")], rules, "US");
    expect(all.map((each) => each.diet)).toEqual(rules.diets.map(({ code }) => code));
    expect(all.filter((each) => each.fits === null).map((each) => each.diet)).toEqual(["vegan", "vegetarian"]);
    expect(
      dietStatements([onlyWith("walnuts", "walnut")], rules, "US").filter((each) => each.fits === false),
    ).toHaveLength(1);
  });

  it("promise nothing in their names", () => {
    for (const { name } of rules.diets) expect(name).toMatch(/^no /);
  });
});
