import { createHash } from "node:crypto";
import fc from "fast-check";
import { beforeAll, expect, it } from "vitest";
import { readSeeds } from "../../../seeds/load-seeds.js";
import { isStorable } from "../../../src/persistence/sql/storable-text.js";
import {
  component as anyComponent,
  food as anyFood,
  plan as anyPlan,
} from "../../imports/documents/arbitrary-model.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { smallBundle, smallComponent } from "../small-bundle.js";

const { bundles } = await readSeeds("seeds");
const publisher = "north-field";

const holdable = (value: unknown): boolean => isStorable(JSON.stringify(value).replaceAll("\\u0000", "\0"));

/** Components and a plan that draws on them. */
const anyDrafts = fc
  .array(anyFood, { minLength: 1, maxLength: 3 })
  .chain((foods) =>
    fc
      .uniqueArray(anyComponent(foods), { selector: ({ slug }) => slug, minLength: 1, maxLength: 3 })
      .chain((components) => fc.record({ components: fc.constant(components), plan: anyPlan(foods, components) })),
  )
  .filter(holdable);

describeOnBothDatabases("drafts", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
    await database.data.publishers.save({ slug: publisher, name: "North Field" });
    await database.data.publishers.save({ slug: "elsewhere", name: "Elsewhere" });
  });

  it("of the demo's plans and components come back as they were given, in one statement each", async () => {
    const { data, statements } = database;
    const plans = bundles.map(({ plan }) => ({ ...plan, publisher }));
    for (const plan of plans) expect(await data.plans.saveDraft(plan, null)).toBe(1);
    const components = [
      ...new Map(bundles.flatMap((each) => each.components).map((each) => [each.slug, each])).values(),
    ];
    for (const component of components) expect(await data.components.saveDraft(publisher, component, null)).toBe(1);
    statements.clear();
    const read = await data.plans.drafts(plans.toReversed());
    expect(statements.sent).toHaveLength(1);
    expect(read.map((draft) => draft?.value)).toEqual(plans.toReversed());
    statements.clear();
    const names = components.map(({ slug }) => ({ publisher, slug }));
    const readComponents = await data.components.drafts([...names, { publisher: "elsewhere", slug: names[0]!.slug }]);
    expect(statements.sent).toHaveLength(1);
    expect(readComponents.map((draft) => draft?.value)).toEqual([...components, undefined]);
  });

  it("come back exactly as they were given, whatever the model allows", async () => {
    const { data } = database;
    await fc.assert(
      fc.asyncProperty(anyDrafts, async ({ components, plan }) => {
        const names = components.map(({ slug }) => ({ publisher, slug }));
        const before = await data.components.drafts(names);
        for (const [index, component] of components.entries()) {
          await data.components.saveDraft(publisher, component, before[index]?.version ?? null);
        }
        expect((await data.components.drafts(names)).map((draft) => draft?.value)).toEqual(components);
        const ours = { ...plan, publisher };
        const [known] = await data.plans.drafts([ours]);
        const version = await data.plans.saveDraft(ours, known?.version ?? null);
        expect(await data.plans.drafts([ours])).toMatchObject([{ version }]);
        expect((await data.plans.drafts([ours]))[0]?.value).toEqual(ours);
      }),
      { numRuns: 20 },
    );
  });

  it("count versions, and refuse a writer who read an older one", async () => {
    const { plans, components } = database.data;
    const { plan } = smallBundle({ publisher, slug: "versions", foods: ["kale"] });
    expect(await plans.saveDraft(plan, null)).toBe(1);
    expect(await plans.saveDraft({ ...plan, title: "Second" }, 1)).toBe(2);
    await expect(plans.saveDraft(plan, 1)).rejects.toMatchObject({ name: "StaleDraft", expected: 1, actual: 2 });
    await expect(plans.saveDraft(plan, null)).rejects.toMatchObject({ name: "StaleDraft", expected: null, actual: 2 });
    expect(await plans.drafts([plan])).toMatchObject([{ value: { title: "Second" }, version: 2 }]);

    const component = smallComponent("versions", ["kale"]);
    expect(await components.saveDraft(publisher, component, null)).toBe(1);
    expect(await components.saveDraft(publisher, { ...component, lines: [] }, 1)).toBe(2);
    await expect(components.saveDraft(publisher, component, 1)).rejects.toMatchObject({
      name: "StaleDraft",
      actual: 2,
    });
    await expect(components.saveDraft(publisher, component, null)).rejects.toMatchObject({ name: "StaleDraft" });
    await expect(components.saveDraft(publisher, smallComponent("never-saved"), 4)).rejects.toMatchObject({
      name: "StaleDraft",
      expected: 4,
      actual: null,
    });
    expect((await components.drafts([{ publisher, slug: "versions" }]))[0]?.value.lines).toEqual([]);
  });

  it("let exactly one of several writers win", async () => {
    const { plans, components } = database.data;
    const { plan } = smallBundle({ publisher, slug: "contended" });
    await plans.saveDraft(plan, null);
    await components.saveDraft(publisher, smallComponent("contended"), null);
    const titles = Array.from({ length: 8 }, (_, index) => `writer ${index}`);
    const planSaves = await Promise.allSettled(titles.map((title) => plans.saveDraft({ ...plan, title }, 1)));
    const componentSaves = await Promise.allSettled(
      titles.map((title) => components.saveDraft(publisher, { ...smallComponent("contended"), title }, 1)),
    );
    for (const saves of [planSaves, componentSaves]) {
      expect(saves.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
      for (const save of saves)
        if (save.status === "rejected") expect(save.reason).toMatchObject({ name: "StaleDraft" });
    }
  });

  it("keep the text their writer wrote, to the last comment, and who saved it", async () => {
    const { plans, components } = database.data;
    const { plan } = smallBundle({ publisher, slug: "texts" });
    const text = "# a remark\r\nkind: plan\n\n\ttabs and \u00e9\u0301 🥕  \n";
    await plans.saveDraft(plan, null, { document: { text, format: "YAML" }, by: "token 7" });
    const [draft] = await plans.drafts([plan]);
    expect(draft).toMatchObject({ document: { text, format: "YAML" }, updatedBy: "token 7" });
    expect(draft?.document?.hash).toBe(createHash("sha256").update(text).digest("hex"));
    await plans.saveDraft(plan, 1);
    expect(await plans.drafts([plan])).toMatchObject([{ document: null, updatedBy: null, version: 2 }]);

    await components.saveDraft(publisher, smallComponent("texts"), null, {
      document: { text: "{}", format: "JSON" },
      by: null,
    });
    expect(await components.drafts([{ publisher, slug: "texts" }])).toMatchObject([
      { document: { text: "{}", format: "JSON" } },
    ]);
  });

  it("are gone when they are discarded, and go on counting when they come again", async () => {
    const { plans, components, drafts } = database.data;
    const { plan } = smallBundle({ publisher, slug: "discarded", foods: ["kale"] });
    const name = { publisher, slug: "discarded" };
    await plans.saveDraft(plan, null);
    await plans.saveDraft(plan, 1);
    await components.saveDraft(publisher, smallComponent("discarded", ["kale"]), null);
    await expect(drafts.discard({ kind: "PLAN", ...name }, 1)).rejects.toMatchObject({
      name: "StaleDraft",
      expected: 1,
      actual: 2,
    });
    await drafts.discard({ kind: "PLAN", ...name }, 2);
    await drafts.discard({ kind: "COMPONENT", ...name }, 1);
    expect(await plans.drafts([name])).toEqual([null]);
    expect(await components.drafts([name])).toEqual([null]);
    await expect(drafts.discard({ kind: "PLAN", ...name }, 2)).rejects.toMatchObject({
      name: "StaleDraft",
      actual: null,
    });
    await expect(drafts.discard({ kind: "PLAN", publisher, slug: "\0" }, 1)).rejects.toMatchObject({
      name: "StaleDraft",
    });
    const refs = [
      { kind: "PLAN", ...name },
      { kind: "PLAN", publisher, slug: "versions" },
      { kind: "COMPONENT", publisher, slug: "no\0thing" },
    ] as const;
    expect(await drafts.versions(refs)).toEqual([null, 2, null]);
    expect(await plans.saveDraft(plan, null)).toBe(3);
    expect(await components.saveDraft(publisher, smallComponent("discarded"), null)).toBe(2);
    await drafts.discard({ kind: "PLAN", ...name }, 3);
    expect(await plans.saveDraft(plan, null)).toBe(4);
  });

  it("are listed for their publisher: components, then plans, each by slug", async () => {
    const { publishers, plans, components, drafts } = database.data;
    await publishers.save({ slug: "lister", name: "Lister" });
    for (const slug of ["b", "a-1", "Z"]) {
      await plans.saveDraft({ ...smallBundle({ publisher: "lister", slug }).plan, title: `plan ${slug}` }, null);
      await components.saveDraft("lister", smallComponent(slug), null);
    }
    const page = (kind: "PLAN" | "COMPONENT" | null, first: number, after: string | null) =>
      drafts.page({ publisher: "lister", kind }, { first, after, last: null, before: null });
    const names = (read: Awaited<ReturnType<typeof page>>) => read.items.map(({ item }) => `${item.kind} ${item.slug}`);
    const all = ["COMPONENT Z", "COMPONENT a-1", "COMPONENT b", "PLAN Z", "PLAN a-1", "PLAN b"];
    const whole = await page(null, 9, null);
    expect(names(whole)).toEqual(all);
    expect(whole.items.at(-1)?.item).toMatchObject({
      publisher: "lister",
      title: "plan b",
      version: 1,
      updatedBy: null,
    });
    const [first, second] = [await page(null, 4, null), await page(null, 4, whole.items[3]?.cursor ?? null)];
    expect([...names(first), ...names(second)]).toEqual(all);
    expect(names(await page("PLAN", 9, null))).toEqual(all.slice(3));
    expect(names(await page("PLAN", 9, whole.items[4]?.cursor ?? null))).toEqual(["PLAN b"]);
    expect(
      (await drafts.page({ publisher: "no\0body", kind: null }, { first: 9, after: null, last: null, before: null }))
        .items,
    ).toEqual([]);
  });

  it("belong to a publisher that exists", async () => {
    const { plans, components } = database.data;
    const { plan } = smallBundle({ publisher: "nobody", slug: "lost" });
    await expect(plans.saveDraft(plan, null)).rejects.toMatchObject({ name: "UnknownPublisher", publisher: "nobody" });
    await expect(components.saveDraft("nobody", smallComponent("lost"), null)).rejects.toMatchObject({
      name: "UnknownPublisher",
    });
  });

  it("take no more statements for a long plan than for a short one", async () => {
    const { data, statements } = database;
    const count = async (foods: number) => {
      const names = Array.from({ length: foods }, (_, index) => `food-${index}`);
      const { plan } = smallBundle({ publisher, slug: `long-${foods}`, foods: names });
      await data.plans.saveDraft(plan, null);
      statements.clear();
      await data.plans.saveDraft(plan, 1);
      return statements.sent.length;
    };
    expect(await count(200)).toBe(await count(2));
  });
});
