import { beforeAll, beforeEach, expect, it } from "vitest";
import { readBaseFolder } from "../../../src/app/setup/read-base-folder.js";
import type { Food } from "../../../src/domain/model/food.js";
import { compileFoodNames, matchFood } from "../../../src/domain/quantity/food-name.js";
import { loadShippedBaseFoods } from "../../../src/services/foods/load-base-foods.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { silentLog } from "../imports/open-feed.js";

const asked = [
  ...["carrot", "onion", "leek", "whole-milk", "aubergine", "courgette", "dried-chickpeas", "parsley-root", "parsley"],
  ...["tomato-puree", "passata", "tomato"],
];

describeOnBothDatabases("base foods in a database", (open) => {
  let database: TestDatabase;
  let all: readonly Food[];
  let foods: readonly Food[];

  const load = (code: string, given: readonly Food[], hash = code) =>
    loadShippedBaseFoods({ data: database.data, log: silentLog }, { code, title: code, hash }, () =>
      Promise.resolve(given),
    );
  const saved = async (slug: string) => (await database.data.foods.bySlugs([slug]))[0];
  const named = (slug: string): Food => {
    const found = foods.find((food) => food.slug === slug);
    if (found === undefined) throw new Error(`no base food ${slug}`);
    return found;
  };

  beforeAll(async () => {
    all = (await readBaseFolder("seeds")).foods;
    // Those that are asked for, and some beside them.
    foods = all.filter(({ slug }, at) => asked.includes(slug) || at % 20 === 0);
  }, 60_000);
  beforeEach(async () => {
    database = await open();
  });

  it("are read back as they were written, and loaded once", async () => {
    await load("2026-01-01", all);
    const found = await database.data.foods.bySlugs(all.map(({ slug }) => slug));
    expect(found).toEqual(all);
    database.statements.clear();
    await load("2026-01-01", []);
    expect(database.statements.sent).toHaveLength(1);
    expect(await database.data.foods.baseEdition()).toMatchObject({ code: "2026-01-01", foods: all.length });
  });

  it("leave what an operator saved, and give way to it by name and by slug", async () => {
    const [carrot, onion] = [named("carrot"), named("onion")];
    const own = { ...carrot, aisle: "house", names: [{ ...(carrot.names[0] ?? fail()), also: ["moon root"] }] };
    await database.data.foods.save([own]);
    await load("2026-01-01", foods);
    expect(await saved("carrot")).toEqual(own);
    // Saved after it was loaded, and the same by content: theirs as well.
    await database.data.foods.save([onion]);
    await load(
      "2026-02-01",
      foods.map((food) => ({ ...food, aisle: "other" })),
    );
    expect([await saved("carrot"), await saved("onion")]).toEqual([own, onion]);
    expect((await saved("leek"))?.aisle).toBe("other");
    const mine: Food = {
      ...onion,
      slug: "my-milk",
      names: [{ language: "en", region: null, one: "milk", many: "milk", also: [] }],
    };
    await database.data.foods.save([mine]);
    const names = compileFoodNames(await database.data.foods.names());
    expect(matchFood(names, "milk", "en", null)).toEqual({ kind: "FOUND", slug: "my-milk" });
    expect(matchFood(names, "Möhren", "de", null)).toEqual({ kind: "NONE" });
    expect(matchFood(names, "moon root", "en", null)).toEqual({ kind: "FOUND", slug: "carrot" });
  });

  it("are not put back by an older program, nor by one of the same day that differs", async () => {
    await load("2026-02-01", foods.slice(0, 5));
    await load("2026-01-01", foods);
    await load("2026-02-01", foods, "another hash");
    expect(await database.data.foods.names()).toHaveLength(5);
  });

  it("are no synonyms of what an operator saved, nor of each other", async () => {
    await load("2026-01-01", foods);
    const slugs = foods.map(({ slug }) => slug);
    expect((await database.data.foods.synonyms(slugs)).filter((slug) => slug !== null)).toEqual([]);
  });

  it("are found by their names in five languages, and words of regions in their own", async () => {
    await load("2026-01-01", foods);
    const names = compileFoodNames(await database.data.foods.names());
    const found = (words: string, language: string, region: string | null = null) => {
      const match = matchFood(names, words, language, region);
      return match.kind === "FOUND" ? match.slug : match;
    };
    expect(found("courgettes", "en", "GB")).toBe(found("zucchini", "en", "US"));
    expect(found("aubergines", "en")).toBe("aubergine");
    expect(found("eggplants", "en", "US")).toBe("aubergine");
    expect(found("Möhren", "de")).toBe("carrot");
    expect(found("pois chiches secs", "fr")).toBe("dried-chickpeas");
    expect(found("berenjenas", "es")).toBe("aubergine");
    expect(found("marchewki", "pl")).toBe("carrot");
    expect(found("pietruszka", "pl")).toBe("parsley-root");
    expect(found("tomato puree", "en", "GB")).toBe("tomato-puree");
    expect(found("tomato puree", "en", "US")).toBe("passata");
    expect(found("tomato puree", "en")).toMatchObject({ kind: "AMBIGUOUS" });
    expect(found("tomato paste", "en", "US")).toBe("tomato-puree");
  });
});

const fail = (): never => {
  throw new Error("a base food has a name");
};
