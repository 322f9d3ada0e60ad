import { describe, expect, it } from "vitest";
import type { Food, FoodName, OwnMeasure } from "../../src/domain/model/food.js";
import { noHousehold } from "../../src/domain/model/household.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { compileFoodNames, findFood } from "../../src/domain/quantity/food-name.js";
import { presentAmount } from "../../src/domain/quantity/format.js";
import { lineWords } from "../../src/exports/words/line-words.js";
import { nameBook } from "../../src/exports/words/name-book.js";
import { bundle, food, line, meal, own, plan } from "../kit/builders.js";
import { readBase } from "../kit/base-foods.js";

/** Words of Polish grammar: the nominative singular and plural, and the genitive plural. */
const forms = { one: "jabłko", many: "jabłka", counted: "jabłek" };
const name = (facts: Partial<FoodName>): FoodName => ({ language: "pl", region: null, ...forms, also: [], ...facts });
const withPiece = (): readonly OwnMeasure[] => [own("piece", { pieces: 1 })];
const apple = (names: readonly FoodName[], measures: readonly OwnMeasure[] = withPiece()): Food =>
  food("apple", { names, measures, shoppedBy: "COUNT" });

/** CLDR's cardinal categories as the platform has them, and the form that each takes. */
const formOf = (count: number, language: string): string =>
  ({ one: forms.one, many: forms.counted })[new Intl.PluralRules(language).select(count) as string] ?? forms.many;

const counts = [0, 1, 2, 4, 5, 11, 12, 14, 21, 22, 25, 40, 101, 102, 112, 1.5];
const said = (count: number, of: Food, locale: string): string =>
  presentAmount({ dimension: "COUNT", low: count, high: count }, of, { measures: "METRIC", locale }).text;

describe("a counted food in Polish", () => {
  it.each(counts.filter(Number.isInteger))("takes the form of CLDR's category of %d", (count) => {
    expect(said(count, apple([name({})]), "pl")).toBe(`${String(count)} ${formOf(count, "pl")}`);
  });

  it("is named as before where the category is another one, and where nobody gave the form", () => {
    expect(said(1.5, apple([name({})]), "pl")).toMatch(/ jabłka$/);
    const { counted: _, ...two } = name({});
    for (const count of [2, 5, 12, 22]) expect(said(count, apple([two]), "pl")).toBe(`${String(count)} jabłka`);
  });

  it("takes it after both ends of a range", () => {
    const range = { dimension: "COUNT", low: 3, high: 5 } as const;
    expect(presentAmount(range, apple([name({})]), { measures: "METRIC", locale: "pl" }).text).toBe("3–5 jabłek");
  });

  it("leaves languages alone whose numbers have no such category", () => {
    const german = apple([name({ language: "de" })]);
    for (const count of [0, 2, 5, 12, 22]) expect(said(count, german, "de")).toBe(`${String(count)} jabłka`);
  });

  it.each([
    [0, "jabłek"],
    [1, "jabłko"],
    [2, "jabłka"],
    [5, "jabłek"],
    [12, "jabłek"],
    [22, "jabłka"],
  ])("in a line without a measure of a piece too: %d %s", (count, expected) => {
    const whole = bundle(
      plan([meal("supper", [line(`${String(count)} piece`, "apple")])]),
      [],
      [apple([name({})], [])],
    );
    const scaled = scalePlan(whole, 1, noHousehold);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    const book = nameBook(whole, { measures: "METRIC", locale: "pl", converts: false });
    expect(lineWords(scaled.value.meals[0]!.lines[0]!, book)).toMatchObject({ amount: String(count), name: expected });
  });

  it("is found by that form, alone and in a line", () => {
    const names = compileFoodNames([apple([name({})])]);
    for (const word of Object.values(forms))
      expect(findFood(names, word, "pl", null)).toEqual({ kind: "FOUND", slug: "apple" });
  });
});

describe("base foods that are counted", () => {
  it("have the form after numbers in Polish, unless they have one form only", async () => {
    const { whole } = await readBase();
    const polish = whole.flatMap(({ slug, names }) =>
      names.filter(({ language }) => language === "pl").map((each) => ({ slug, ...each })),
    );
    const two = polish.filter(({ one, many }) => one !== many);
    expect(two.length).toBeGreaterThan(300);
    // Their plural is their genitive, too.
    const same = ["gęś", "kość szpikowa", "pierś z kaczki"];
    expect(two.filter(({ one, counted }) => counted === undefined && !same.includes(one))).toEqual([]);
    expect(two.filter(({ many, counted }) => counted === many)).toEqual([]);
  });
});
