import { beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";

describeOnBothDatabases("publishers", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
  });

  it("keep what their own document says when they are renamed, and take back what it leaves out", async () => {
    const { publishers } = database.data;
    await publishers.save({ slug: "south-field", name: "South Field" });
    const facts = {
      region: "US-WA",
      currency: "XTS",
      languages: ["en-US", "de"],
      description: "Of the beds.",
      website: "https://beds.example/",
    };
    expect(await publishers.describe("south-field", facts)).toBe(true);
    await publishers.rename("south-field", "The South Field");
    const [kept] = await publishers.bySlugs(["south-field"]);
    expect(kept).toMatchObject({ name: "The South Field", ...facts });
    const none = { region: null, currency: null, languages: [], description: null, website: null };
    await publishers.describe("south-field", none);
    expect((await publishers.bySlugs(["south-field"]))[0]).toMatchObject(none);
    expect(await publishers.describe("nobody", facts)).toBe(false);
  });

  it("keep their id when they are renamed", async () => {
    const { publishers } = database.data;
    const first = await publishers.save({ slug: "north-field", name: "North Field" });
    const second = await publishers.save({ slug: "north-field", name: "The North Field" });
    expect(second).toMatchObject({ id: first.id, slug: "north-field", name: "The North Field" });
    expect(await publishers.byIds([first.id])).toEqual([second]);
  });

  it("are found in the order asked for, in one statement, with null for those that are not there", async () => {
    const { publishers } = database.data;
    const a = await publishers.save({ slug: "a", name: "A" });
    const b = await publishers.save({ slug: "b", name: "B" });
    database.statements.clear();
    expect(await publishers.bySlugs(["b", "nobody", "a", "b", "no\0body"])).toEqual([b, null, a, b, null]);
    expect(database.statements.sent).toHaveLength(1);
    expect(await publishers.byIds([b.id, "not an id", a.id, "00000000-0000-4000-8000-000000000000"])).toEqual([
      b,
      null,
      a,
      null,
    ]);
    expect(await publishers.bySlugs([])).toEqual([]);
  });

  it("are refused, with the place, if their name cannot be stored", async () => {
    await expect(database.data.publishers.save({ slug: "x", name: "X\0" })).rejects.toMatchObject({
      name: "UnstorableText",
      path: ["name"],
    });
  });
});
