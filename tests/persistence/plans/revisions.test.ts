import { createHash } from "node:crypto";
import { titlesOfPlan } from "../../../src/domain/plan/translate/in-language.js";
import { languagesOfPlan } from "../../../src/domain/plan/translate/texts-of.js";
import { beforeAll, expect, it } from "vitest";
import { readSeeds } from "../../../seeds/load-seeds.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { canonicalJson } from "../../../src/persistence/sql/canonical-json.js";
import type { RevisionSummary } from "../../../src/persistence/data.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { smallBundle } from "../small-bundle.js";

const { bundles } = await readSeeds("seeds");
const publisher = "north-field";
const day = (date: number) => new Date(Date.UTC(2026, 2, date, 9, 30, 0, 123));

describeOnBothDatabases("revisions", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
    await database.data.publishers.save({ slug: publisher, name: "North Field" });
  });

  const publish = async (bundle: PlanBundle, date = day(1)): Promise<RevisionSummary> =>
    (await database.data.revisions.publish(bundle, date)).summary;
  const newest = async (slug: string) =>
    (await database.data.revisions.summaries([{ publisher, slug, revision: null }]))[0]?.revision ?? null;

  it("freeze the demo's plans with all they refer to", async () => {
    const { revisions } = database.data;
    for (const bundle of bundles) {
      const given = { ...bundle, plan: { ...bundle.plan, publisher } };
      const { id, ...summary } = await publish(given);
      const { plan } = given;
      const checksum = expect.stringMatching(/^[0-9a-f]{64}$/);
      expect(summary).toEqual({
        publisher,
        slug: plan.slug,
        title: plan.title,
        revision: 1,
        serves: plan.serves,
        locale: plan.locale,
        publishedAt: day(1),
        withdrawnAt: null,
        withdrawnBecause: null,
        ruleSet: null,
        changeNote: null,
        checksum,
        translatedInto: languagesOfPlan(given).slice(1),
      });
      const titles = titlesOfPlan(given);
      const asked = [...titles.keys(), "xx"].map((language) => ({ id, language }));
      expect(await revisions.titles(asked)).toEqual([...titles.values(), null]);
      expect(await revisions.titles([{ id: "no id", language: "de" }])).toEqual([null]);
      const [frozen] = await revisions.bundles([id]);
      expect(frozen?.plan).toEqual(plan);
      expect(new Map(frozen?.foods.map((food) => [food.slug, food]))).toEqual(
        new Map(given.foods.map((food) => [food.slug, food])),
      );
      expect(new Map(frozen?.components.map((each) => [each.slug, each]))).toEqual(
        new Map(given.components.map((each) => [each.slug, each])),
      );
      expect(summary.checksum).toBe(createHash("sha256").update(canonicalJson(frozen)).digest("hex"));
    }
  });

  it("get the next number, unless they say what the newest one says", async () => {
    const { revisions } = database.data;
    const first = smallBundle({ publisher, slug: "numbers", foods: ["kale", "leek"] });
    const one = await revisions.publish(first, day(1));
    expect(one).toMatchObject({ created: true, summary: { revision: 1 } });
    const reordered = { ...first, foods: first.foods.toReversed() };
    expect(await revisions.publish(reordered, day(2))).toEqual({ created: false, summary: one.summary });
    const second = smallBundle({ publisher, slug: "numbers", title: "Changed" });
    expect(await revisions.publish(second, day(3))).toMatchObject({ created: true, summary: { revision: 2 } });
    expect(await revisions.publish(first, day(4))).toMatchObject({ created: true, summary: { revision: 3 } });
  });

  it("stay in force until they are withdrawn, and are found by number for ever", async () => {
    const { revisions } = database.data;
    const named = (title: string) => smallBundle({ publisher, slug: "withdrawn", title });
    await publish(named("One"));
    const two = await publish(named("Two"), day(2));
    expect(await newest("withdrawn")).toBe(2);
    expect(await revisions.withdraw({ publisher, slug: "withdrawn", revision: 2 }, day(3))).toBe(true);
    expect(await revisions.withdraw({ publisher, slug: "withdrawn", revision: 2 }, day(4))).toBe(false);
    expect(await newest("withdrawn")).toBe(1);
    expect(await revisions.summaries([{ publisher, slug: "withdrawn", revision: 2 }])).toEqual([
      { ...two, withdrawnAt: day(3) },
    ]);
    // The number of a withdrawn revision is not given out again, and its words may be published again.
    expect(await revisions.publish(named("Two"), day(5))).toMatchObject({ created: true, summary: { revision: 3 } });
    expect(await revisions.withdraw({ publisher, slug: "withdrawn", revision: 1 }, day(6))).toBe(true);
    expect(await newest("withdrawn")).toBe(3);
    expect(await revisions.withdraw({ publisher, slug: "withdrawn", revision: 3 }, day(6))).toBe(true);
    expect(await newest("withdrawn")).toBe(null);
    for (const [slug, revision] of [
      ["withdrawn", 9],
      ["withdrawn", 2 ** 40],
      ["nothing", 1],
      ["no\0thing", 1],
    ] as const) {
      expect(await revisions.withdraw({ publisher, slug, revision }, day(7))).toBe(false);
    }
    expect(await revisions.withdraw({ publisher: "nobody", slug: "withdrawn", revision: 1 }, day(7))).toBe(false);
  });

  it("say what they changed and why they were withdrawn, and are listed with the withdrawn ones among them", async () => {
    const { data, statements } = database;
    const named = (title: string) => smallBundle({ publisher, slug: "noted", title });
    const name = { publisher, slug: "noted" };
    const { summary: one } = await data.revisions.publish(named("One"), day(1));
    const { summary: two } = await data.revisions.publish(named("Two"), day(2), "Half the salt.");
    const { summary: three } = await data.revisions.publish(named("Three"), day(3));
    expect([one.changeNote, two.changeNote, three.changeNote]).toEqual([null, "Half the salt.", null]);
    await data.revisions.withdraw({ ...name, revision: 3 }, day(4), "Wrong lentils.");
    const all = [{ ...three, withdrawnAt: day(4), withdrawnBecause: "Wrong lentils." }, two, one];
    statements.clear();
    const whole = await data.revisions.ofPlan(name, { first: 9, after: null, last: null, before: null });
    expect(statements.sent).toHaveLength(1);
    expect(whole.items.map(({ item }) => item)).toEqual(all);
    const first = await data.revisions.ofPlan(name, { first: 1, after: null, last: null, before: null });
    const after = first.items[0]?.cursor ?? null;
    const rest = await data.revisions.ofPlan(name, { first: 9, after, last: null, before: null });
    expect([...first.items, ...rest.items].map(({ item }) => item)).toEqual(all);
    expect([first.hasNext, rest.hasNext, rest.hasPrevious]).toEqual([true, false, true]);
    for (const nobody of [
      { publisher: "nobody", slug: "noted" },
      { publisher, slug: "no\0thing" },
    ]) {
      const none = await data.revisions.ofPlan(nobody, { first: 9, after: null, last: null, before: null });
      expect(none.items).toEqual([]);
    }
  });

  it("are found in the order asked for, in one statement however many, with null for those that are not there", async () => {
    const { data, statements } = database;
    const a = await publish(smallBundle({ publisher, slug: "found-a" }));
    const b1 = await publish(smallBundle({ publisher, slug: "found-b" }));
    const b2 = await publish(smallBundle({ publisher, slug: "found-b", title: "B" }));
    const ref = (slug: string, revision: number | null, owner = publisher) => ({ publisher: owner, slug, revision });
    statements.clear();
    expect(
      await data.revisions.summaries([
        ref("found-b", null),
        ref("nothing", null),
        ref("found-a", 1),
        ref("found-b", 1),
        ref("found-b", 3),
        ref("found-b", 0.5),
        ref("found-b", 2 ** 31),
        ref("found-a", null, "nobody"),
        ref("found-a\0", null),
        ref("found-b", null),
      ]),
    ).toEqual([b2, null, a, b1, null, null, null, null, null, b2]);
    expect(statements.sent).toHaveLength(1);
    const ids = [b1.id, "nonsense", a.id, "00000000-0000-4000-8000-000000000000"];
    expect(await data.revisions.summariesByIds(ids)).toEqual([b1, null, a, null]);
    expect((await data.revisions.bundles(ids)).map((bundle) => bundle?.plan.slug)).toEqual([
      "found-b",
      undefined,
      "found-a",
      undefined,
    ]);
    expect(statements.sent).toHaveLength(3);
    expect(await data.revisions.summaries([])).toEqual([]);
  });

  it("are found by a component they hold: the newest that is in force", async () => {
    const { data, statements } = database;
    const holding = (slug: string, components: string[]) => smallBundle({ publisher, slug, components });
    const older = await publish(holding("holds-1", ["barley", "dal"]), day(10));
    const newer = await publish(holding("holds-2", ["barley"]), day(11));
    const name = (slug: string, owner = publisher) => ({ publisher: owner, slug });
    statements.clear();
    expect(
      await data.revisions.holdingComponents([name("dal"), name("none"), name("barley"), name("barley", "nobody")]),
    ).toEqual([older, null, newer, null]);
    expect(statements.sent).toHaveLength(1);
    await data.revisions.withdraw({ publisher, slug: "holds-2", revision: 1 }, day(12));
    expect(await data.revisions.holdingComponents([name("barley")])).toEqual([older]);
  });

  it("cannot be changed or deleted, not even past the program", async () => {
    const { id } = await publish(smallBundle({ publisher, slug: "frozen" }));
    const { client } = database;
    for (const change of [
      "document = '{}'",
      "document = jsonb_set(document, '{plan,title}', '\"x\"')",
      "checksum = repeat('0', 64)",
      "title = 'x'",
      "revision = 7",
      "published_at = now()",
      "serves = 9",
      "change_note = 'less salt'",
    ]) {
      await expect(
        client.$executeRawUnsafe(`UPDATE revisions SET ${change} WHERE id = '${id}'`),
        change,
      ).rejects.toThrow("nothing but its withdrawal may change");
    }
    await expect(client.$executeRawUnsafe(`DELETE FROM revisions WHERE id = '${id}'`)).rejects.toThrow("never deleted");
    const withdraw = (because: string) =>
      client.$executeRawUnsafe(
        `UPDATE revisions SET withdrawn_at = now(), withdrawn_because = '${because}' WHERE id = '${id}'`,
      );
    await expect(
      client.$executeRawUnsafe(`UPDATE revisions SET withdrawn_because = 'never withdrawn' WHERE id = '${id}'`),
    ).rejects.toThrow("revisions_reason_of_withdrawal");
    expect(await withdraw("salt")).toBe(1);
    await expect(withdraw("sugar")).rejects.toThrow("that stays as it is");
  });

  it("keep a checksum that a change past the program gives away", async () => {
    const { data, sql } = await open();
    await data.publishers.save({ slug: publisher, name: "North Field" });
    const all: string[] = [];
    for (const slug of ["a", "b", "c", "d", "e"]) {
      all.push((await data.revisions.publish(smallBundle({ publisher, slug, foods: ["kale"] }), day(1))).summary.id);
    }
    await data.revisions.withdraw({ publisher, slug: "c", revision: 1 }, day(2));
    const first = await data.revisions.checksums(null, 3);
    const rest = await data.revisions.checksums(first.at(-1)?.id ?? null, 3);
    expect([...first, ...rest].map(({ id }) => id)).toEqual(all.toSorted());
    for (const { stored, computed } of [...first, ...rest]) expect(computed).toBe(stored);
    await expect(data.revisions.checksums("nonsense", 3)).rejects.toMatchObject({ name: "BadCursor" });

    const harmed = all[1] ?? "";
    await sql.query(`ALTER TABLE revisions DISABLE TRIGGER revisions_stay_as_published;
      UPDATE revisions SET document = jsonb_set(document, '{plan,serves}', '3') WHERE id = '${harmed}'`);
    const after = await data.revisions.checksums(null, 9);
    expect(after.filter(({ stored, computed }) => stored !== computed).map(({ id }) => id)).toEqual([harmed]);
  });

  it("get consecutive numbers when twenty are published at once, and one number for one document", async () => {
    const { revisions } = database.data;
    const twenty = Array.from({ length: 20 }, (_, index) =>
      smallBundle({ publisher, slug: "parallel", title: `Version ${index}` }),
    );
    const published = await Promise.all(twenty.map((bundle) => revisions.publish(bundle, day(1))));
    expect(published.map(({ summary }) => summary.revision).toSorted((a, b) => a - b)).toEqual(
      Array.from({ length: 20 }, (_, index) => index + 1),
    );
    expect(published.every(({ created }) => created)).toBe(true);
    expect(await newest("parallel")).toBe(20);

    const same = smallBundle({ publisher, slug: "parallel-same" });
    const again = await Promise.all(Array.from({ length: 20 }, () => revisions.publish(same, day(1))));
    expect(new Set(again.map(({ summary }) => summary.id)).size).toBe(1);
    expect(again.filter(({ created }) => created)).toHaveLength(1);
  });

  it("belong to a publisher that exists", async () => {
    await expect(publish(smallBundle({ publisher: "nobody", slug: "lost" }))).rejects.toMatchObject({
      name: "UnknownPublisher",
    });
  });

  it("name the place of a text that no database can hold", async () => {
    await expect(publish(smallBundle({ publisher, slug: "torn", title: "\0" }))).rejects.toMatchObject({
      name: "UnstorableText",
      path: ["plan", "title"],
    });
  });
});
