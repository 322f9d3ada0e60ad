import { beforeAll, describe, expect, it } from "vitest";
import { toBase } from "../../../src/domain/quantity/convert.js";
import { readTextLine } from "../../../src/imports/documents/lines/read-text-line.js";
import { knownFoods, type KnownFoods } from "./known-foods.js";

let names: KnownFoods["names"];
let foods: KnownFoods["foods"];
beforeAll(async () => {
  ({ names, foods } = await knownFoods());
}, 60_000);

const read = (text: string, locale: string): readonly string[] => {
  const { lines } = readTextLine(text, { locale, measures: "METRIC", region: null, names, looks: 0 });
  return (lines ?? []).map(({ food, part, amount }) => `${String(amount)} ${String(food)}.${part ?? ""}`);
};

/** What one piece gives of a part, in grams; and what a tablespoon of it weighs. */
function gives(slug: string, part: string): number | undefined {
  const perPiece = foods.get(slug)?.parts.find(({ name }) => name === part)?.perPiece;
  return perPiece === undefined ? undefined : Number(perPiece.low);
}

describe("parts of base foods", () => {
  it.each([
    ["juice and zest of 2 lemons", "en", ["2 piece lemon.juice", "2 piece lemon.zest"]],
    ["Saft und Schale von 2 Zitronen", "de", ["2 piece lemon.juice", "2 piece lemon.zest"]],
    ["le jus et le zeste de 2 citrons", "fr", ["2 piece lemon.juice", "2 piece lemon.zest"]],
    ["zumo y ralladura de 2 limones", "es", ["2 piece lemon.juice", "2 piece lemon.zest"]],
    ["sok i skórka z 2 cytryn", "pl", ["2 piece lemon.juice", "2 piece lemon.zest"]],
    ["juice of 1 lime", "en", ["1 piece lime.juice"]],
    ["2 tbsp lemon juice", "en", ["2 metric-tbsp lemon.juice"]],
    ["2 EL Zitronensaft", "de", ["2 metric-tbsp lemon.juice"]],
    ["100 ml orange juice", "en", ["100 ml orange.juice"]],
    ["3 egg yolks", "en", ["3 piece egg.yolk"]],
    ["3 Eiweiß", "de", ["3 piece egg.white"]],
    ["2 blancs d'œufs", "fr", ["2 piece egg.white"]],
    ["300 g broccoli florets", "en", ["300 g broccoli.florets"]],
    ["300 g Brokkoliröschen", "de", ["300 g broccoli.florets"]],
    ["50 ml bottled lemon juice", "en", ["50 ml lemon-juice-bottled."]],
  ])("are read of %s (%s)", (text, locale, meant) => {
    expect(read(text, locale)).toEqual(meant);
  });

  it("give what published tables say", () => {
    // USDA National Nutrient Database for Standard Reference, Weight file: NDB 09152, 09160, 09206, 01124, 01125.
    expect(gives("lemon", "juice")).toBe(48);
    expect(gives("lime", "juice")).toBe(44);
    expect(gives("orange", "juice")).toBe(86);
    expect([gives("egg", "white"), gives("egg", "yolk")]).toEqual([33, 17]);
    // Armed Forces Recipe Service, TM 10-412, General Information No. 6: 2.20 lb of broccoli as purchased for 1 lb of flowerets.
    expect(gives("broccoli", "florets")).toBeCloseTo(350 / 2.2, 0);
    expect(gives("celery", "leaves")).toBeCloseTo(400 / 34.48, 0);
  });

  it("weigh and measure as their own row says, not as the whole fruit", () => {
    const lemon = foods.get("lemon");
    if (lemon === undefined) throw new Error("no lemon");
    const weigh = (unit: string, part: string) => toBase({ low: "1", high: "1", unit }, lemon, part);
    // Weight file, NDB 09152: a cup of 236.588 ml weighs 244 g; NDB 09156: a tablespoon of zest weighs 6 g.
    expect(lemon.densities.find(({ form }) => form === "juice")?.gramsPerMl).toBeCloseTo(244 / 236.588, 4);
    expect(lemon.densities.find(({ form }) => form === "zest")?.gramsPerMl).toBeCloseTo(6 / 14.787, 3);
    expect(weigh("us-tbsp", "juice").ok).toBe(true);
  });

  it("are each less than the piece they come of, together not more than it", () => {
    const tooMuch = [...foods.values()].filter(({ parts, measures }) => {
      const piece = measures.find(({ name }) => name === "piece")?.grams;
      const sum = parts.reduce((all, { perPiece }) => all + Number(perPiece.low), 0);
      return parts.length > 0 && (piece === undefined || piece === null || sum > piece);
    });
    expect(tooMuch.map(({ slug }) => slug)).toEqual([]);
  });
});
