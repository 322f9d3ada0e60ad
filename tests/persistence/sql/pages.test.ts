import fc from "fast-check";
import { beforeAll, expect, it } from "vitest";
import type { Page, PageRequest } from "../../../src/persistence/sql/page.js";
import type { PlanFilter, RevisionSummary } from "../../../src/persistence/data.js";
import { encodeCursor } from "../../../src/persistence/sql/cursor.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { smallBundle, smallFood } from "../small-bundle.js";

/**
 * Relay's algorithm (GraphQL Cursor Connections Specification, sections "Pagination algorithm" and "PageInfo") on a plain
 * list. A cursor stands for a position in the total order, so it still cuts where its item is gone.
 */
function modelPage<T>(
  all: readonly T[],
  { first, after, last, before }: Omit<PageRequest, "after" | "before"> & { after: T | null; before: T | null },
  compare: (a: T, b: T) => number,
): { readonly items: readonly T[]; readonly hasNext: boolean; readonly hasPrevious: boolean } {
  const behind = after === null ? [] : all.filter((each) => compare(each, after) <= 0);
  const beyond = before === null ? [] : all.filter((each) => compare(each, before) >= 0);
  const edges = all.filter((each) => !behind.includes(each) && !beyond.includes(each));
  return {
    items: first === null ? edges.slice(Math.max(0, edges.length - (last ?? 0))) : edges.slice(0, first),
    hasNext: first === null ? beyond.length > 0 : edges.length > first,
    hasPrevious: last === null ? behind.length > 0 : edges.length > last,
  };
}

const publisher = "north-field";
const nothing: PlanFilter = { publisher: null, search: null, usesFood: null, usesComponent: null };
const forwards = (first: number, after: string | null = null): PageRequest => ({
  first,
  after,
  last: null,
  before: null,
});
const day = (date: number) => new Date(Date.UTC(2026, 2, date));
const shown = <T>(page: Page<T>) => ({ ...page, items: page.items.map(({ item }) => item) });

/** publishedAt descending, then id. */
const inListOrder = (a: RevisionSummary, b: RevisionSummary): number =>
  b.publishedAt.getTime() - a.publishedAt.getTime() || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

describeOnBothDatabases("pages", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
    await database.data.publishers.save({ slug: publisher, name: "North Field" });
  });

  it("of plans are those of the model, for any request, with plans published and withdrawn between pages", async () => {
    const { revisions } = database.data;
    let count = 0;
    let plans: readonly RevisionSummary[] = [];
    const publish = async (date: Date) => {
      const bundle = smallBundle({ publisher, slug: `plan-${count++}` });
      plans = [...plans, (await revisions.publish(bundle, date)).summary].toSorted(inListOrder);
    };
    const withdraw = async (at: number) => {
      const gone = plans[at % plans.length];
      if (gone === undefined) return;
      await revisions.withdraw({ ...gone }, day(28));
      plans = plans.filter((each) => each !== gone);
    };
    for (const date of [3, 3, 3, 3, 3, 1, 2, 5, 6]) await publish(day(date));

    const place = fc.option(fc.nat({ max: 20 }), { nil: null });
    const asked = fc.record({
      size: fc.integer({ min: 1, max: 6 }),
      backwards: fc.boolean(),
      after: place,
      before: place,
    });
    const step = fc.oneof(
      { weight: 6, arbitrary: asked.map((request) => ({ kind: "ask" as const, request })) },
      { weight: 1, arbitrary: fc.integer({ min: 1, max: 6 }).map((date) => ({ kind: "publish" as const, date })) },
      { weight: 1, arbitrary: fc.nat().map((at) => ({ kind: "withdraw" as const, at })) },
    );
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 12 }), async (steps) => {
        // Cursors of plans that are withdrawn on the way still cut.
        const seen = plans;
        const cursorOf = ({ publishedAt, id }: RevisionSummary) => encodeCursor([publishedAt.toISOString(), id]);
        for (const each of steps) {
          if (each.kind === "publish") await publish(day(each.date));
          else if (each.kind === "withdraw") await withdraw(each.at);
          else {
            const { size, backwards } = each.request;
            const sizes = backwards ? { first: null, last: size } : { first: size, last: null };
            const at = (index: number | null) =>
              index === null ? null : (seen[index % Math.max(1, seen.length)] ?? null);
            const [after, before] = [at(each.request.after), at(each.request.before)];
            const page = await revisions.page(nothing, {
              ...sizes,
              after: after && cursorOf(after),
              before: before && cursorOf(before),
            });
            expect(shown(page)).toEqual(modelPage(plans, { ...sizes, after, before }, inListOrder));
            for (const { cursor, item } of page.items) expect(cursor).toBe(cursorOf(item));
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it("of foods are those of the model, for any request", async () => {
    const { foods } = database.data;
    const slugs = ["b", "a", "a-b", "a1", "ab", "c", "zucchini", "z-a"];
    await foods.save(slugs.map((slug) => smallFood(slug)));
    const all = slugs.toSorted((a, b) => (a < b ? -1 : 1));
    const place = fc.option(fc.constantFrom(...all, "aa", "zz"), { nil: null });
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 9 }),
        fc.boolean(),
        place,
        place,
        async (size, backwards, after, before) => {
          const sizes = backwards ? { first: null, last: size } : { first: size, last: null };
          const cursors = { after: after && encodeCursor([after]), before: before && encodeCursor([before]) };
          const page = await foods.page({ aisle: null }, { ...sizes, ...cursors });
          expect(
            shown({ ...page, items: page.items.map(({ item, ...rest }) => ({ ...rest, item: item.slug })) }),
          ).toEqual(modelPage(all, { ...sizes, after, before }, (a, b) => (a < b ? -1 : a > b ? 1 : 0)));
        },
      ),
      { numRuns: 80 },
    );
  });

  it("of plans are narrowed by publisher, words of the title, food and component", async () => {
    const { data } = await open();
    for (const slug of ["north", "south"]) await data.publishers.save({ slug, name: slug });
    const given = [
      {
        publisher: "north",
        slug: "roots",
        title: "Roots & Barley, four ways",
        foods: ["carrot"],
        components: ["barley"],
      },
      { publisher: "north", slug: "beans", title: "Crème of beans", foods: ["beans", "carrot"] },
      { publisher: "south", slug: "roots", title: "ROOTS again", components: ["barley"] },
    ];
    for (const each of given) await data.revisions.publish(smallBundle(each), day(1));
    const found = async (filter: Partial<PlanFilter>) => {
      const { items } = await data.revisions.page({ ...nothing, ...filter }, forwards(10));
      return items.map(({ item }) => `${item.publisher}/${item.slug}`).toSorted();
    };
    expect(await found({})).toEqual(["north/beans", "north/roots", "south/roots"]);
    expect(await found({ publisher: "north" })).toEqual(["north/beans", "north/roots"]);
    expect(await found({ publisher: "nobody" })).toEqual([]);
    expect(await found({ search: "roots" })).toEqual(["north/roots", "south/roots"]);
    expect(await found({ search: "barley ROOTS" })).toEqual(["north/roots"]);
    expect(await found({ search: "creme" })).toEqual(["north/beans"]);
    expect(await found({ search: "root" })).toEqual([]);
    expect(await found({ usesFood: "carrot" })).toEqual(["north/beans", "north/roots"]);
    expect(await found({ usesComponent: "barley", publisher: "south" })).toEqual(["south/roots"]);
    expect(await found({ usesFood: "no\0food" })).toEqual([]);
    // Only what the newest revision in force says counts.
    await data.revisions.publish(smallBundle({ publisher: "north", slug: "roots", title: "Swedes" }), day(2));
    expect(await found({ search: "roots" })).toEqual(["south/roots"]);
    expect(await found({ usesFood: "carrot" })).toEqual(["north/beans"]);
    await data.revisions.withdraw({ publisher: "north", slug: "roots", revision: 2 }, day(3));
    expect(await found({ search: "roots" })).toEqual(["north/roots", "south/roots"]);
    await data.revisions.withdraw({ publisher: "south", slug: "roots", revision: 1 }, day(3));
    expect(await found({})).toEqual(["north/beans", "north/roots"]);
  });

  it("take one statement, or two with the foods on it, whatever their size", async () => {
    const { data, statements } = database;
    statements.clear();
    await data.revisions.page(nothing, forwards(50));
    expect(statements.sent).toHaveLength(1);
    statements.clear();
    await data.foods.page({ aisle: null }, forwards(50));
    expect(statements.sent).toHaveLength(2);
  });

  it("refuse cursors that no page of the list gave out", async () => {
    const { revisions, foods } = database.data;
    const id = "00000000-0000-4000-8000-000000000000";
    const cursors = [
      "",
      "nonsense",
      encodeCursor([]),
      encodeCursor(["a"]),
      encodeCursor(["2026-03-01T00:00:00.000Z", "not an id"]),
      encodeCursor(["2026-03-01", id]),
      encodeCursor(["0000-01-01T00:00:00.000Z", id]),
      encodeCursor(["2026-02-30T00:00:00.000Z", id]),
      encodeCursor(["2026-03-01T00:00:00.000Z", id, "more"]),
      `${encodeCursor(["2026-03-01T00:00:00.000Z", id])} `,
      Buffer.from("{}").toString("base64url"),
      Buffer.from('"').toString("base64url"),
    ];
    for (const cursor of cursors) {
      await expect(revisions.page(nothing, forwards(1, cursor)), cursor).rejects.toMatchObject({ name: "BadCursor" });
      await expect(
        revisions.page(nothing, { first: null, after: null, last: 1, before: cursor }),
        cursor,
      ).rejects.toMatchObject({ name: "BadCursor" });
    }
    for (const cursor of ["nonsense", encodeCursor(["a", "b"]), encodeCursor(["a\0"]), encodeCursor(["\ud800"])]) {
      await expect(foods.page({ aisle: null }, forwards(1, cursor))).rejects.toMatchObject({
        name: "BadCursor",
      });
    }
  });

  it("are asked for by one size", async () => {
    const { revisions } = database.data;
    const sizes = [
      { first: null, last: null },
      { first: 1, last: 1 },
    ];
    for (const each of sizes) {
      await expect(revisions.page(nothing, { ...each, after: null, before: null })).rejects.toThrow(RangeError);
    }
  });
});
