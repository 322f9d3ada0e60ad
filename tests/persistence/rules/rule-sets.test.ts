import { beforeAll, expect, it } from "vitest";
import { readRulesFolder } from "../../../src/app/setup/read-rules-folder.js";
import type { RuleSet } from "../../../src/domain/plan/compile/rule-set.js";
import { firstKeepingClasses } from "../../../src/domain/storage/first-keeping-classes.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { smallBundle } from "../small-bundle.js";

const shipped = await readRulesFolder("seeds/rules");
const set = (code: string, inForceFrom: string): RuleSet => ({ ...shipped, code, title: `set ${code}`, inForceFrom });
const at = (day: string): Date => new Date(`${day}T08:00:00Z`);

describeOnBothDatabases("sets of published rules", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
  });

  const codeOn = async (date: string): Promise<string | null> => {
    const { ruleSets } = database.data;
    const id = await ruleSets.inForce(date);
    return id === null ? null : ((await ruleSets.byIds([id]))[0]?.code ?? null);
  };

  it("are used from their first day until the day of the next; the first also before it", async () => {
    const { ruleSets } = database.data;
    expect(await codeOn("2026-01-01")).toBeNull();
    await ruleSets.add(set("spring", "2026-03-01"), at("2026-02-01"));
    await ruleSets.add(set("autumn", "2026-09-01"), at("2026-02-02"));
    await ruleSets.add(set("summer", "2026-06-01"), at("2026-02-03"));
    for (const [date, code] of [
      ["2025-12-31", "spring"],
      ["2026-03-01", "spring"],
      ["2026-05-31", "spring"],
      ["2026-06-01", "summer"],
      ["2026-08-31", "summer"],
      ["2026-09-01", "autumn"],
      ["2999-01-01", "autumn"],
    ] as const)
      expect(await codeOn(date), date).toBe(code);
    const all = await ruleSets.all();
    expect(all.map(({ code, inForceFrom, inForceTo }) => [code, inForceFrom, inForceTo])).toEqual([
      ["autumn", "2026-09-01", null],
      ["summer", "2026-06-01", "2026-09-01"],
      ["spring", "2026-03-01", "2026-06-01"],
    ]);
  });

  it("of one day: the last loaded is used, and the other is marked as never in force again", async () => {
    const { ruleSets } = database.data;
    await ruleSets.add(set("corrected-autumn", "2026-09-01"), at("2026-02-04"));
    expect(await codeOn("2026-09-01")).toBe("corrected-autumn");
    expect((await ruleSets.all()).find(({ code }) => code === "autumn")?.inForceTo).toBe("2026-09-01");
  });

  it("come back whole, and stay as they were loaded: the same code a second time changes nothing", async () => {
    const { ruleSets } = database.data;
    const first = await ruleSets.add(set("whole", "2027-01-01"), at("2026-02-05"));
    expect(first).toMatchObject({ added: true, same: true });
    expect(await ruleSets.contents([first.summary.id])).toEqual([set("whole", "2027-01-01")]);
    expect(await ruleSets.add(set("whole", "2027-01-01"), at("2026-02-06"))).toEqual({ ...first, added: false });
    const other = await ruleSets.add(set("whole", "2028-01-01"), at("2026-02-07"));
    expect(other).toEqual({ summary: first.summary, added: false, same: false });
    await expect(
      database.client.$executeRaw`UPDATE rule_sets SET title = 'other' WHERE code = 'whole'`,
    ).rejects.toThrow(/nothing may change it/);
    await expect(database.client.$executeRaw`DELETE FROM rule_sets WHERE code = 'whole'`).rejects.toThrow(
      /nothing may change it/,
    );
  });

  it("of release 0.1.0, stored without classes of food, come back with those of that release", async () => {
    const { ruleSets } = database.data;
    const { classes: _, ...safety } = set("old", "2026-04-01").safety;
    const content = JSON.stringify({ ...set("old", "2026-04-01"), safety });
    const [added] = await database.client.$queryRaw<{ id: string }[]>`
      INSERT INTO rule_sets (code, title, in_force_from, loaded_at, checksum, format, content)
      VALUES ('old', 'set old', '2026-04-01'::date, '2026-02-08T08:00:00Z'::timestamptz, 'x', 1, ${content}::jsonb)
      RETURNING id`;
    const [found] = await ruleSets.contents([added?.id ?? ""]);
    expect(found?.safety).toEqual({ ...safety, classes: firstKeepingClasses });
  });

  it("are found by id in the order asked for, null where there is none", async () => {
    const { ruleSets } = database.data;
    const [newest] = await ruleSets.all();
    const id = newest?.id ?? "";
    const nobody = "00000000-0000-4000-8000-000000000000";
    expect(await ruleSets.byIds([nobody, id, "no id"])).toEqual([null, newest, null]);
    expect((await ruleSets.contents([nobody, "no id"])).every((each) => each === null)).toBe(true);
  });

  it("are named by the revisions that were checked against them, for good", async () => {
    const { publishers, revisions, ruleSets } = database.data;
    await publishers.save({ slug: "plot", name: "Plot" });
    const id = await ruleSets.inForce("2026-06-01");
    const bundle = smallBundle({ publisher: "plot", slug: "checked", foods: ["kale"] });
    const { summary } = await revisions.publish(bundle, at("2026-06-01"), null, id);
    expect(summary.ruleSet).toBe(id);
    expect((await revisions.summariesByIds([summary.id]))[0]?.ruleSet).toBe(id);
    // Published again under other rules, nothing new is said, so the revision keeps its own.
    const later = await ruleSets.inForce("2026-09-01");
    expect(later).not.toBe(id);
    expect((await revisions.publish(bundle, at("2026-09-01"), null, later)).summary.ruleSet).toBe(id);
    await expect(
      database.client.$executeRaw`UPDATE revisions SET rule_set_id = ${later}::uuid WHERE id = ${summary.id}::uuid`,
    ).rejects.toThrow(/nothing but its withdrawal may change/);
  });
});
