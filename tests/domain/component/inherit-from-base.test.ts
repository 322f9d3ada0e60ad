import { describe, expect, it } from "vitest";
import { inheritFromBase } from "../../../src/domain/component/inherit-from-base.js";
import type { AllergenPresence, Food } from "../../../src/domain/model/food.js";
import { density, food, invented, keeps, own, pack, published } from "../../kit/builders.js";

const says = (code: string, presence: AllergenPresence) => ({ code, presence, source: published("label") });
const fits = (diet: string, does: boolean) => ({ diet, fits: does, source: invented });

const base = food("yoghurt", {
  aisle: "dairy",
  shoppedBy: "VOLUME",
  densities: [density(1.03)],
  measures: [own("pot", { grams: 150 })],
  allergens: [says("milk", "CONTAINS"), says("egg", "MAY_CONTAIN"), says("soya", "DOES_NOT_CONTAIN")],
  diets: [fits("vegan", false), fits("vegetarian", true)],
  keeping: [keeps(7)],
  packs: [pack("500 g", "1.00", { id: "pot-500" })],
});

const laid = (facts: Partial<Food>, sameIngredients = false): Food =>
  inheritFromBase(
    {
      ...food("ours", { names: [], densities: [], measures: [], packs: [], keeping: [], ...facts }),
      leaves: ["aisle", "shoppedBy", "alwaysThere"],
      owner: "us",
      extends: { food: "yoghurt", sameIngredients },
    },
    base,
  );

describe("a publisher's own food over the one it builds on", () => {
  it("takes from it what it does not say", () => {
    const { names, aisle, shoppedBy, densities, measures, packs, keeping } = laid({});
    expect({ names, aisle, shoppedBy, densities, measures, packs, keeping }).toEqual({
      ...{ names: base.names, aisle: "dairy", shoppedBy: "VOLUME", densities: base.densities },
      ...{ measures: base.measures, packs: base.packs, keeping: base.keeping },
    });
  });

  it("goes before it fact by fact", () => {
    const ours = laid({
      measures: [own("pot", { grams: 200 })],
      packs: [pack("1 kg", "3.00", { id: "tub" })],
      keeping: [keeps(3)],
    });
    expect(ours.measures.map(({ grams }) => grams)).toEqual([200]);
    expect(ours.packs.map(({ id }) => id)).toEqual(["tub", "pot-500"]);
    expect(ours.extends?.packs).toEqual(["tub"]);
    expect(ours.keeping.map(({ days }) => days)).toEqual([3]);
  });

  it("always contains what that contains, whatever it says itself", () => {
    for (const same of [true, false]) {
      const { allergens, diets } = laid(
        { allergens: [says("milk", "DOES_NOT_CONTAIN")], diets: [fits("vegan", true)] },
        same,
      );
      expect(allergens.filter(({ code }) => code === "milk").map(({ presence }) => presence)).toEqual(["CONTAINS"]);
      expect(diets.filter(({ diet }) => diet === "vegan").map((each) => each.fits)).toEqual([false]);
    }
  });

  it("takes over that something is absent, or a diet kept, only where both are made of the same", () => {
    const codes = ({ allergens, diets }: Food) => [
      ...allergens.map(({ code }) => code),
      ...diets.map(({ diet }) => diet),
    ];
    expect(codes(laid({}))).toEqual(["milk", "egg", "vegan"]);
    expect(codes(laid({}, true))).toEqual(["milk", "egg", "soya", "vegan", "vegetarian"]);
  });

  it("keeps the base's figures for safety beside own ones for quality, and its shelf only where it says nothing itself", () => {
    const quality = laid({ keeping: [{ ...keeps(21), purpose: "QUALITY" }] });
    expect(quality.keeping.map(({ days }) => days)).toEqual([21, 7]);
    const tinned = { ...base, shelfStable: true };
    const over = (facts: Partial<Food>) =>
      inheritFromBase({ ...food("ours", facts), extends: { food: "yoghurt", sameIngredients: true } }, tinned)
        .shelfStable;
    expect(over({ keeping: [], keepsAs: null })).toBe(true);
    expect(over({ keeping: [keeps(3)] })).toBeUndefined();
  });

  it("names the allergens that it adds", () => {
    expect(laid({ allergens: [says("soya", "CONTAINS")] }).extends?.adds).toEqual(["soya"]);
    expect(laid({ allergens: [says("milk", "CONTAINS")] }).extends?.adds).toBeUndefined();
  });

  it("is one ingredient with nothing added only where nothing is added", () => {
    const carrot = { ...food("carrot"), singleIngredient: { is: [], source: invented } };
    const over = (facts: Partial<Food>, sameIngredients: boolean) =>
      inheritFromBase({ ...food("ours", facts), extends: { food: "carrot", sameIngredients } }, carrot)
        .singleIngredient;
    expect(over({}, true)).toEqual(carrot.singleIngredient);
    expect(over({}, false)).toBeUndefined();
    expect(over({ allergens: [says("celery", "CONTAINS")] }, true)).toBeUndefined();
  });
});
