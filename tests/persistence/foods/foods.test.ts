import fc from "fast-check";
import { beforeAll, expect, it } from "vitest";
import { readSeeds } from "../../../seeds/load-seeds.js";
import type { Food, Pack } from "../../../src/domain/model/food.js";
import type { FoodFilter } from "../../../src/persistence/data.js";
import { isStorable } from "../../../src/persistence/sql/storable-text.js";
import { food as anyFood } from "../../imports/documents/arbitrary-model.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { smallFood } from "../small-bundle.js";

const { foods: demoFoods } = await readSeeds("seeds");
const everything = { first: 100, after: null, last: null, before: null };

describeOnBothDatabases("foods", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
  });

  const found = async (filter: Partial<FoodFilter>): Promise<readonly string[]> => {
    const page = await database.data.foods.page({ aisle: null, ...filter }, everything);
    return page.items.map(({ item }) => item.slug);
  };

  it("gives the names of all foods, as they are after each change", async () => {
    const nameOf = async (slug: string) =>
      (await database.data.foods.names()).find((food) => food.slug === slug)?.names[0]?.one ?? null;
    await database.data.foods.save([smallFood("named", "first")]);
    const before = await database.data.foods.names();
    expect(await nameOf("named")).toBe("first");
    // What nobody changed is not read again.
    expect(await database.data.foods.names()).toBe(before);
    await database.data.foods.save([smallFood("named", "second")]);
    expect(await nameOf("named")).toBe("second");
    await database.data.foods.save([smallFood("named", "first")]);
    expect(await nameOf("named")).toBe("first");
    await database.data.foods.remove(["named"]);
    expect(await nameOf("named")).toBeNull();
  });

  it("are saved all at once and read back as they were, in one statement however many", async () => {
    const { foods } = database.data;
    const slugs = demoFoods.map(({ slug }) => slug);
    database.statements.clear();
    expect(await foods.save(demoFoods)).toEqual({
      changed: demoFoods.length,
      added: slugs.toSorted(),
      replaced: [],
    });
    expect(database.statements.sent.length).toBeLessThanOrEqual(5);
    database.statements.clear();
    expect(await foods.bySlugs(slugs.toReversed())).toEqual(demoFoods.toReversed());
    expect(database.statements.sent).toHaveLength(1);
  });

  it("count as changed only if something in them changed", async () => {
    const { foods } = database.data;
    const [first, ...others] = demoFoods as readonly [Food, ...Food[]];
    const dearer: Food = { ...first, packs: [...first.packs, ...first.packs].slice(0, 1), aisle: "moved" };
    expect(await foods.save([dearer, ...others])).toEqual({
      changed: 1,
      added: [],
      replaced: [first.slug],
    });
    expect(await foods.bySlugs([first.slug])).toEqual([dearer]);
    expect(await foods.save([dearer, ...others])).toEqual({ changed: 0, added: [], replaced: [] });
    expect(await foods.save([])).toEqual({ changed: 0, added: [], replaced: [] });
  });

  it("are sold loose, by a step or as scales weigh, or in packs", async () => {
    const { foods } = database.data;
    const sold = demoFoods.flatMap(({ packs }) => packs)[0]!;
    const step = { low: "25", high: "25", unit: "g" };
    const packs: readonly Pack[] = [
      { ...sold, id: "crate", loose: { step: null } },
      { ...sold, id: "bin", loose: { step } },
      sold,
    ];
    const loose = { ...smallFood("loose-onion"), packs };
    expect(await foods.save([loose])).toEqual({ changed: 1, added: ["loose-onion"], replaced: [] });
    expect(await foods.bySlugs(["loose-onion"])).toEqual([loose]);
  });

  it("keep their id when their facts change", async () => {
    const { foods } = database.data;
    await foods.save([smallFood("quince")]);
    const [id] = await foods.idsBySlugs(["quince"]);
    await foods.save([smallFood("quince", "Quince")]);
    expect(await foods.idsBySlugs(["medlar", "quince"])).toEqual([null, id]);
    expect(await foods.byIds([String(id), "nonsense"])).toEqual([{ id, food: smallFood("quince", "Quince") }, null]);
  });

  it("are saved all or none", async () => {
    const { foods } = database.data;
    const broken = { ...smallFood("broken"), shoppedBy: "LENGTH" } as unknown as Food;
    await expect(foods.save([smallFood("unbroken"), broken])).rejects.toThrow();
    expect(await foods.bySlugs(["unbroken", "broken"])).toEqual([null, null]);
  });

  it("take the last of two with one slug", async () => {
    const { foods } = database.data;
    expect(await foods.save([smallFood("twin", "first"), smallFood("twin", "second")])).toEqual({
      changed: 1,
      added: ["twin"],
      replaced: [],
    });
    expect(await foods.bySlugs(["twin"])).toEqual([smallFood("twin", "second")]);
  });

  it("are found by aisle, in the order of the bytes of their slugs", async () => {
    const slugs = ["zz-b", "zz-a", "zz-a-b", "zz-a1"];
    await database.data.foods.save(slugs.map((slug) => ({ ...smallFood(slug), aisle: "test aisle" })));
    expect(await found({ aisle: "test aisle" })).toEqual(["zz-a", "zz-a-b", "zz-a1", "zz-b"]);
    expect(await found({ aisle: "nowhere" })).toEqual([]);
  });

  it("are one with a food that lists their name as a word for itself", async () => {
    const also = (slug: string, ...words: string[]): Food => {
      const [name] = smallFood(slug).names;
      return { ...smallFood(slug), names: name === undefined ? [] : [{ ...name, also: words }] };
    };
    await database.data.foods.save([
      also("syn-courgette", "SYN-Zucchini"),
      smallFood("syn-zucchini"),
      also("syn-b", "syn-a"),
      also("syn-a", "syn-b"),
      {
        ...smallFood("syn-other"),
        names: [{ language: "de", region: null, one: "syn-zucchini", many: "x", also: [] }],
      },
    ]);
    database.statements.clear();
    expect(
      await database.data.foods.synonyms(["syn-zucchini", "syn-courgette", "syn-other", "syn-a", "syn-b", "no\0food"]),
    ).toEqual(["syn-courgette", null, null, null, "syn-a", null]);
    expect(database.statements.sent).toHaveLength(1);
  });

  it("come back exactly as they were given, whatever the model allows", async () => {
    const storableFood = anyFood.filter((each) => isStorable(JSON.stringify(each).replaceAll("\\u0000", "\0")));
    await fc.assert(
      fc.asyncProperty(fc.uniqueArray(storableFood, { selector: ({ slug }) => slug, maxLength: 4 }), async (given) => {
        await database.data.foods.save(given);
        expect(await database.data.foods.bySlugs(given.map(({ slug }) => slug))).toEqual(given);
      }),
      { numRuns: 60 },
    );
  });

  it("name the place of a text that no database can hold", async () => {
    const given: Food = {
      ...smallFood("torn"),
      names: [{ ...smallFood("torn").names[0]!, also: ["fine", "\ud800 torn"] }],
    };
    await expect(database.data.foods.save([given])).rejects.toMatchObject({
      name: "UnstorableText",
      path: [0, "names", 0, "also", 1],
    });
  });
});
