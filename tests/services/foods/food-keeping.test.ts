import { beforeAll, expect, it } from "vitest";
import { checkOffline } from "../../../src/app/cli/check-offline.js";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { checkDocuments } from "../../../src/services/drafts/check/check-documents.js";
import type { Deps } from "../../../src/services/deps.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { saveDocuments } from "../../../src/services/drafts/save-documents.js";
import { saveFoods } from "../../../src/services/foods/save-foods.js";
import { rules } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { nightClock, silentLog } from "../imports/open-feed.js";

const publisher = "third-gate-allotments";
const actor = { kind: "PROGRAM", name: "test" } as const;
const caller = { actor, requestId: null };

/** Published figures for leftovers end after four days, and none allows them on a shelf. */
const beans = (place: string, days: number): string => `kind: food
slug: dressed-beans
names: { en: dressed beans }
aisle: chilled
shopped-by: mass
keeps-as: leftovers
keeping: [{ place: ${place}, days: ${days}, source: writer }]
`;

describeOnBothDatabases("a food said to keep beyond every published rule of its class", (open) => {
  let deps: Deps;
  beforeAll(async () => {
    const { data } = await open();
    await data.publishers.save({ slug: publisher, name: "Third Gate Allotments" });
    deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    await loadShippedRules(deps, rules);
  });

  const doors = {
    "saving foods": async (text: string) => {
      const saved = await saveFoods(deps, caller, { texts: [{ name: "beans.yaml", text }] });
      return saved.ok ? [] : saved.problems;
    },
    "saving documents": async (text: string) => {
      const saved = await saveDocuments(deps, caller, { publisher, texts: [{ name: "beans.yaml", text }] });
      return saved.ok ? [] : saved.problems;
    },
    "checking documents": async (text: string) =>
      (await checkDocuments(deps, actor, { publisher, texts: [{ name: "beans.yaml", text }] })).problems,
    "checking files without a service": async (text: string) =>
      (await checkOffline(readDocuments(text, "beans.yaml"), null)).problems,
  };

  it.each(Object.keys(doors) as (keyof typeof doors)[])("is refused at its line: %s", async (door) => {
    expect(await doors[door](beans("fridge", 3))).toEqual([]);
    const [long, ...more] = await doors[door](beans("fridge", 14));
    expect(more).toEqual([]);
    expect(long).toMatchObject({ code: "KEPT_BEYOND_RULES" });
    expect(long?.path.map(String).slice(-2)).toEqual(["keeping", "0"]);
    expect(JSON.stringify(long)).toMatch(/"line":7/);
    expect(await doors[door](beans("room", 2))).toMatchObject([{ code: "NEEDS_THE_COLD" }]);
  });

  it("is not saved", async () => {
    await doors["saving documents"](beans("fridge", 14));
    const [found] = await deps.data.foods.bySlugs(["dressed-beans"]);
    expect(found?.keeping[0]?.days).toBe(3);
  });
});
