import { describe, expect, it } from "vitest";
import { feedSettingsSchema } from "../../../src/services/imports/feeds/feed-settings.js";
import { compileFoodNames } from "../../../src/domain/quantity/food-name.js";
import { pricedFoodFinder } from "../../../src/services/imports/rows/find-priced-food.js";
import { saveFeed } from "../../../src/services/imports/feeds/save-feed.js";
import type { Deps } from "../../../src/services/deps.js";
import { demo } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { ending, nightClock, openFeed, silentLog } from "./open-feed.js";

const settings = (given: object = {}) => feedSettingsSchema.parse({ source: "A shop", ...given });

describe("a food of a price list", () => {
  const named = (slug: string, language: string, one: string, many: string, also: readonly string[] = []) => ({
    slug,
    names: [{ language, region: null, one, many, also }],
  });
  const foods = [
    named("carrot", "de", "Möhre", "Möhren", ["Karotte", "Karotten"]),
    named("chickpeas", "en", "chickpeas", "chickpeas", ["garbanzos"]),
    named("tomato", "en", "tomato", "tomatoes"),
    named("tomato-paste", "en", "tomato paste", "tomato paste"),
    named("sweet-pepper", "de", "Paprika", "Paprika"),
    named("paprika-powder", "en", "paprika", "paprika"),
    named("paprika-spice", "de", "Paprikapulver", "Paprikapulver"),
    named("black-pepper", "en", "pepper", "pepper"),
    named("chilli", "en", "pepper", "peppers"),
  ];
  const find = pricedFoodFinder(compileFoodNames(foods), settings({ locale: "de", articles: { "10442": "tomato" } }));

  it.each([
    ["carrot", "carrot"],
    ["Möhren", "carrot"],
    ["moehren", "carrot"],
    ["KAROTTE", "carrot"],
    ["garbanzos", "chickpeas"],
    ["tomato paste", "tomato-paste"],
    ["tomato sauce", null],
    // The list is German, where the word is the vegetable.
    ["Paprika", "sweet-pepper"],
    ["10442", "tomato"],
    ["10443", null],
    ["", null],
    ["constructor", null],
  ])("is found by its slug, any of its names or the shop's number: %s", (written, slug) => {
    expect(find(written)).toEqual(slug === null ? { kind: "NONE" } : { kind: "FOUND", slug });
  });

  it("is not guessed where a word means several", () => {
    expect(find("pepper")).toEqual({ kind: "AMBIGUOUS", slugs: ["black-pepper", "chilli"] });
  });
});

describeOnBothDatabases("a price list in a shop's own words", (open) => {
  it("brings prices by names in five languages and by article numbers, and puts aside what it cannot tell", async () => {
    const { data } = await open();
    await data.foods.save(demo.foods);
    const deps: Deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    const articles = { "A-7": "pearl-barley" };
    const feed = await openFeed(deps, {
      ...{ publisher: null, kind: "PRICES", slug: "shop" },
      settings: { currency: "XTS", region: "XA", locale: "en", articles, columns: { Artikel: "food" } },
    });
    const run = await feed.run(
      "Artikel,pack,content,price\nA-7,sack,1 kg,1.90\nÄpfel,bag,2 kg,3.10\npommes,box,5 kg,7.50\nmanzana,tray,4 kg,6.10\n" +
        "jabłka,crate,10 kg,14.00\napples,net,1 kg,1.80\nno such thing,net,1 kg,1.80\n",
    );
    expect(ending(run)).toEqual(["DONE", 7, 6, 0, 0, 1, 0]);
    const [apple] = await data.foods.bySlugs(["apple"]);
    const listed = apple?.packs.filter(({ source }) => source.title === "The society's own files");
    expect(listed?.map(({ id }) => id).toSorted()).toEqual(["bag", "box", "crate", "net", "tray"]);
    expect((await feed.quarantined(run)).map(({ problems }) => problems)).toEqual([
      [{ code: "UNKNOWN_FOOD", path: ["food"], food: "no such thing" }],
    ]);
  });

  it("is saved only with articles whose foods there are", async () => {
    const { data } = await open();
    await data.foods.save(demo.foods);
    const deps: Deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    const operator = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;
    const articles = { "1": "carrot", "2": "carot" };
    expect(
      await saveFeed(deps, operator, {
        publisher: null,
        slug: "s",
        kind: "PRICES",
        settings: { source: "A shop", articles },
      }),
    ).toEqual({
      ok: false,
      problems: [{ code: "UNKNOWN_FOOD", path: ["input", "settings", "articles", "2"], food: "carot" }],
    });
  });
});
