import { beforeAll, expect, it } from "vitest";
import { anyone } from "../../src/services/access/actor.js";
import { createLoaders } from "../../src/graphql/loaders.js";
import type { Deps } from "../../src/services/deps.js";
import { describeOnBothDatabases, type TestDatabase } from "../kit/databases.js";
import { demo } from "./open-test-app.js";

describeOnBothDatabases("the loaders of a request", (open) => {
  let database: TestDatabase;
  let deps: Deps;

  beforeAll(async () => {
    database = await open();
    const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
    deps = { data: database.data, clock: () => new Date("2026-03-01T09:00:00Z"), log, knownRules: new Map() };
    await deps.data.foods.save(demo.foods.filter(({ slug }) => slug !== "lemon"));
  });

  it("O-39: answer in the order of the keys, null where there is nothing, in one statement for each table", async () => {
    const loaders = createLoaders(deps, anyone);
    await loaders.foods.load("apple");
    database.statements.clear();
    await createLoaders(deps, anyone).foods.load("apple");
    const forOne = database.statements.sent.length;
    database.statements.clear();
    const found = await loaders.readFoods(["onion", "lemon", "a\0b", "apple", "kale", "onion"]);
    expect(found.map((food) => food?.slug ?? null)).toEqual(["onion", null, null, "apple", "kale", "onion"]);
    expect(database.statements.sent.length).toBe(forOne);
  });

  it("O-39: remember for one request only, also that there was nothing", async () => {
    const first = createLoaders(deps, anyone);
    expect(await first.foods.load("lemon")).toBeNull();
    await deps.data.foods.save(demo.foods.filter(({ slug }) => slug === "lemon"));
    expect(await first.foods.load("lemon")).toBeNull();
    expect((await createLoaders(deps, anyone).foods.load("lemon"))?.slug).toBe("lemon");
  });
});
