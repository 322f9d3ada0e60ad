import { beforeAll, expect, it } from "vitest";
import type { PublishedKeepingRule } from "../../src/domain/model/keeping.js";
import { describeOnBothDatabases, type TestDatabase } from "../kit/databases.js";

const rule = (id: string, changes: Partial<PublishedKeepingRule> = {}): PublishedKeepingRule => ({
  id,
  keepsAs: "cooked-grain",
  place: "FRIDGE",
  days: 1.5,
  daysFrom: null,
  counts: "HOURS",
  firstDay: 0,
  printed: "36 hours",
  purpose: "SAFETY",
  audience: "HOUSEHOLD",
  region: "XA",
  condition: null,
  temperature: "below 5 °C",
  inForceFrom: null,
  inForceTo: null,
  publisher: "an invented office",
  note: null,
  source: { kind: "INVENTED", title: "made up for this test", section: "1" },
  ...changes,
});

describeOnBothDatabases("published keeping rules", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
  });

  it("hold from their first day until the day before they end", async () => {
    const { keepingRules } = database.data;
    const always = rule("always");
    const old = rule("old", { inForceFrom: "2019-03-01", inForceTo: "2024-07-01", firstDay: 1, daysFrom: 1, days: 3 });
    const current = rule("new", { inForceFrom: "2024-07-01", counts: "DAYS", note: "tightened" });
    expect(await keepingRules.save([current, always, old])).toEqual({ changed: 3 });
    expect(await keepingRules.inForce("2019-02-28")).toEqual([always]);
    expect(await keepingRules.inForce("2019-03-01")).toEqual([always, old]);
    expect(await keepingRules.inForce("2024-06-30")).toEqual([always, old]);
    expect(await keepingRules.inForce("2024-07-01")).toEqual([always, current]);
  });

  it("count as changed only if something in them changed", async () => {
    const { keepingRules } = database.data;
    const given = [rule("one"), rule("two")];
    await keepingRules.save(given);
    expect(await keepingRules.save(given)).toEqual({ changed: 0 });
    expect(await keepingRules.save([rule("one"), rule("two", { inForceTo: "2000-01-01" })])).toEqual({ changed: 1 });
    expect((await keepingRules.inForce("2026-01-01")).map(({ id }) => id)).not.toContain("two");
    expect(await keepingRules.save([])).toEqual({ changed: 0 });
  });
});
