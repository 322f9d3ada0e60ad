// @ts-nocheck
import { describe, expect, it } from "vitest";
import type { FoodName } from "../../../src/domain/model/food.js";
import {
  compileFoodNames,
  matchFood,
  readersFoodName,
  type NamedFood,
} from "../../../src/domain/quantity/food-name.js";
import { parseLine } from "../../../src/domain/quantity/parse.js";
import { singularPhrase } from "../../../src/domain/quantity/singular.js";

const name = (one: string, many: string, facts: Partial<FoodName> = {}): FoodName => ({
  language: "en",
  region: null,
  one,
  many,
  also: [],
  ...facts,
});

const food = (slug: string, ...names: FoodName[]): NamedFood => ({ slug, names });

const found = (slug: string) => ({ kind: "FOUND", slug });
const NONE = { kind: "NONE" };

/** The food that a line's own words name. */
const ofLine = (foods: readonly NamedFood[], line: string, region: string | null = null) =>
  matchFood(compileFoodNames(foods), parseLine(line, { locale: "en", measures: "US_CUSTOMARY" }).food, "en", region);

describe("O-20: plural, singular and words that only look plural", () => {
  it("lines that differ in number or ripeness are one food", () => {
    const foods = [food("tomato", name("tomato", "tomatoes"))];
    for (const line of ["2 tomatoes", "1 tomato", "3 ripe tomatoes"])
      expect(ofLine(foods, line), line).toEqual(found("tomato"));
  });

  it.each([
    "hummus",
    "couscous",
    "molasses",
    "asparagus",
    "watercress",
    "lemongrass",
    "pasta",
    "swiss",
    "bass",
    "citrus",
    "haggis",
    "schnapps",
    "brussels",
    "grits",
    "oats",
    "greens",
    "species",
    "series",
    "lens",
  ])("%s stays as it is", (word) => {
    expect(singularPhrase(word, "en")).toBe(word);
  });

  it.each([
    ["leaves", "leaf"],
    ["bay leaves", "bay leaf"],
    ["potatoes", "potato"],
    ["tomatoes", "tomato"],
    ["berries", "berry"],
    ["cookies", "cookie"],
    ["radishes", "radish"],
    ["peaches", "peach"],
    ["boxes", "box"],
    ["cloves", "clove"],
    ["olives", "olive"],
    ["avocados", "avocado"],
    ["cherry tomatoes", "cherry tomato"],
    ["peas", "pea"],
    ["pies", "pie"],
    ["loaves", "loaf"],
    ["glasses", "glass"],
    ["sauces", "sauce"],
    ["gas", "gas"],
    ["flour", "flour"],
    ["halves", "half"],
    ["knives", "knife"],
    ["calves", "calf"],
    ["sheaves", "sheaf"],
    ["geese", "goose"],
    ["radii", "radius"],
    ["brownies", "brownie"],
    ["smoothies", "smoothie"],
    ["chives", "chive"],
    ["endives", "endive"],
    ["shoes", "shoe"],
    ["chestnuts", "chestnut"],
  ])("one of %s is %s", (many, one) => {
    expect(singularPhrase(many, "en")).toBe(one);
  });

  it("matches a plural that the catalogue does not list, in English only", () => {
    const foods = [food("leek", name("leek", "leek")), food("lauch", name("Lauch", "Lauch", { language: "de" }))];
    const names = compileFoodNames(foods);
    expect(matchFood(names, "leeks", "en", null)).toEqual(found("leek"));
    expect(matchFood(names, "Lauchs", "de", null)).toEqual(NONE);
    expect(singularPhrase("gousses", "fr")).toBe("gousses");
  });

  it("keeps a mass noun in its one form, whatever the amount", () => {
    const flour = food("flour", name("flour", "flour"));
    expect(ofLine([flour], "2 cups flour")).toEqual(found("flour"));
    expect(readersFoodName(flour, "en", null)?.many).toBe("flour");
  });
});

describe("O-21: same food, two names", () => {
  const pairs: readonly (readonly [slug: string, british: string, american: string])[] = [
    ["chickpea", "chickpeas", "garbanzo beans"],
    ["spring-onion", "spring onions", "scallions"],
    ["rocket", "rocket", "arugula"],
    ["aubergine", "aubergine", "eggplant"],
  ];

  it.each(pairs)("%s", (slug, british, american) => {
    const foods = [
      food(slug, name(british, british, { region: "GB" }), name(american, american, { region: "US" })),
      food("other", name("other", "others")),
    ];
    expect(ofLine(foods, `2 ${british}`, "US")).toEqual(found(slug));
    expect(ofLine(foods, `2 ${american}`, "US")).toEqual(found(slug));
    expect(ofLine(foods, `2 ${american}`)).toEqual(found(slug));
    const [one] = foods;
    expect(one && readersFoodName(one, "en", "GB")?.one).toBe(british);
    expect(one && readersFoodName(one, "en", "US")?.one).toBe(american);
  });

  it("merges old lines as soon as a synonym is added", () => {
    const before = [food("chickpea", name("chickpea", "chickpeas"))];
    const after = [food("chickpea", name("chickpea", "chickpeas", { also: ["garbanzo bean", "garbanzos"] }))];
    expect(ofLine(before, "1 (15-oz) can garbanzo beans")).toEqual(NONE);
    expect(ofLine(after, "1 (15-oz) can garbanzo beans")).toEqual(found("chickpea"));
    expect(ofLine(after, "2 (15-oz) cans chickpeas")).toEqual(found("chickpea"));
  });
});

describe("O-22: a shared word is not a shared food", () => {
  const pairs = [
    ["tomato paste", "tomatoes"],
    ["coconut milk", "milk"],
    ["peanut butter", "butter"],
    ["cream of tartar", "cream"],
    ["garlic powder", "garlic"],
    ["boneless, skinless chicken breast", "cooked chicken"],
  ] as const;
  const slug = (words: string): string => words.replaceAll(/[ ,]+/g, "-");
  const foods = pairs.flat().map((words) => food(slug(words), name(words, words)));

  it.each(pairs)("%s and %s are two foods", (a, b) => {
    expect(ofLine(foods, `2 cups ${a}`)).toEqual(found(slug(a)));
    expect(ofLine(foods, `2 cups ${b}`)).toEqual(found(slug(b)));
  });

  it("shredded cooked chicken is cooked chicken, and no chicken breast", () => {
    expect(ofLine(foods, "2 cups shredded cooked chicken")).toEqual(found("cooked-chicken"));
    expect(ofLine(foods, "1 lb chicken")).toEqual(NONE);
  });

  it("knows nothing by a part of its name", () => {
    const only = [food("tomato-paste", name("tomato paste", "tomato paste"))];
    for (const words of ["tomato", "paste", "tomato paste sauce", ""]) {
      expect(matchFood(compileFoodNames(only), words, "en", null), words).toEqual(NONE);
    }
  });
});

describe("matching names", () => {
  const foods = [
    food("coriander-leaf", name("cilantro", "cilantro"), name("coriander", "coriander", { region: "GB" })),
    food("coriander-seed", name("coriander", "coriander", { region: "US" })),
    food(
      "courgette",
      name("courgette", "courgettes", { region: "GB" }),
      name("Zucchini", "Zucchini", { language: "de" }),
    ),
    food("swede", name("swede", "swedes", { region: "GB" })),
    food("jalapeno", name("jalapeño", "jalapeños")),
    food("gift", name("Gift", "Gifte", { language: "de" })),
    food("chips-fried", name("chips", "chips")),
    food("chips-crisp", name("chips", "chips")),
  ];
  const names = compileFoodNames(foods);
  const match = (words: string, language: string | null = "en", region: string | null = null) =>
    matchFood(names, words, language, region);

  it("lets the reader's region decide between two foods of one name", () => {
    expect(match("coriander", "en", "GB")).toEqual(found("coriander-leaf"));
    expect(match("coriander", "en", "US")).toEqual(found("coriander-seed"));
    expect(match("coriander", "en", "AU")).toEqual({ kind: "AMBIGUOUS", slugs: ["coriander-leaf", "coriander-seed"] });
    expect(match("coriander")).toEqual({ kind: "AMBIGUOUS", slugs: ["coriander-leaf", "coriander-seed"] });
  });

  it("takes a name of another region where it is the only one", () => {
    expect(match("swede", "en", "US")).toEqual(found("swede"));
  });

  it("asks where a name is two foods everywhere", () => {
    expect(match("chips")).toEqual({ kind: "AMBIGUOUS", slugs: ["chips-crisp", "chips-fried"] });
  });

  it("looks in the language asked for, or in all", () => {
    expect(match("gift")).toEqual(NONE);
    expect(match("gift", "de")).toEqual(found("gift"));
    expect(match("gift", null)).toEqual(found("gift"));
    expect(match("courgettes", null)).toEqual(found("courgette"));
  });

  it.each(["Jalapeño", "jalapeno", "JALAPEÑOS", "  jalapeño ", "jalape\u006e\u0303o"])(
    "does not mind how %j is typed",
    (words) => {
      expect(match(words)).toEqual(found("jalapeno"));
    },
  );

  it("does not mind a hyphen, but minds a missing word", () => {
    const spring = compileFoodNames([food("spring-onion", name("spring onion", "spring onions"))]);
    expect(matchFood(spring, "Spring-Onions", "en", null)).toEqual(found("spring-onion"));
    expect(matchFood(spring, "springonion", "en", null)).toEqual(NONE);
  });

  it("prefers a name as written to one by its singular", () => {
    const two = compileFoodNames([food("green", name("green", "green")), food("greens", name("greens", "greens"))]);
    expect(matchFood(two, "greens", "en", null)).toEqual(found("greens"));
    expect(matchFood(two, "green", "en", null)).toEqual(found("green"));
  });
});

describe("the name for a reader", () => {
  const courgette = food(
    "courgette",
    name("courgette", "courgettes"),
    name("zucchini", "zucchini", { region: "US" }),
    name("Zucchetti", "Zucchetti", { language: "de", region: "CH" }),
    name("Zucchini", "Zucchini", { language: "de" }),
  );

  it.each([
    ["en", "US", "zucchini"],
    ["en", "AU", "courgette"],
    ["en", null, "courgette"],
    ["de", "CH", "Zucchetti"],
    ["de", "DE", "Zucchini"],
    ["fr", "FR", "courgette"],
  ])("in %s of %s is %s", (language, region, expected) => {
    expect(readersFoodName(courgette, language, region)?.one).toBe(expected);
  });

  it("falls back to a name of another region, then to the first there is", () => {
    const only = food("x", name("Rüebli", "Rüebli", { language: "de", region: "CH" }));
    expect(readersFoodName(only, "de", "DE")?.one).toBe("Rüebli");
    expect(readersFoodName(only, "pl", null)?.one).toBe("Rüebli");
    expect(readersFoodName(food("none"), "en", null)).toBeNull();
  });
});

describe("the nearest of several names", () => {
  const swede = food("swede", name("swede", "swedes", { region: "GB" }));
  const turnip = food("turnip", name("swede", "swedes"));
  const other = food("other", name("swede", "swedes", { region: "AU" }));
  const called = (foods: readonly NamedFood[], region: string | null) =>
    matchFood(compileFoodNames(foods), "swede", "en", region);

  it("is that of the reader's region, then that of everywhere, then any", () => {
    expect(called([swede, turnip, other], "GB")).toEqual(found("swede"));
    expect(called([swede, turnip, other], "US")).toEqual(found("turnip"));
    expect(called([swede, turnip, other], null)).toEqual(found("turnip"));
    expect(called([swede], "US")).toEqual(found("swede"));
    expect(called([swede, other], "US")).toEqual({ kind: "AMBIGUOUS", slugs: ["other", "swede"] });
  });

  it("is an exact one before one that only agrees in the singular", () => {
    const foods = [food("leaf-tea", name("leaf", "leaf")), food("leaves", name("leaves", "leaves"))];
    expect(matchFood(compileFoodNames(foods), "leaves", "en", null)).toEqual(found("leaves"));
  });

  it("is read in English where no language is given", () => {
    expect(matchFood(compileFoodNames([food("leek", name("leek", "leek"))]), "leeks", null, null)).toEqual(
      found("leek"),
    );
  });

  it("takes ß for ss, and any run of spaces, hyphens and commas for one space", () => {
    const foods = [food("kohl", name("Weißkohl, rund", "Weißkohl, rund", { language: "de" }))];
    expect(matchFood(compileFoodNames(foods), "weisskohl -  Rund", "de", null)).toEqual(found("kohl"));
  });

  it("for a reader is in the own language, then English, then the first there is", () => {
    const [polish, english, german] = ["pl", "en", "de"].map((language) => name(language, language, { language }));
    const of = (names: readonly FoodName[], language: string) =>
      readersFoodName({ slug: "it", names }, language, null)?.one;
    expect(of([polish!, english!, german!], "de")).toBe("de");
    expect(of([polish!, english!, german!], "fr")).toBe("en");
    expect(of([polish!, german!], "fr")).toBe("pl");
    expect(of([], "fr")).toBeUndefined();
  });
});
