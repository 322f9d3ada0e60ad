import { beforeAll, expect, it } from "vitest";
import { shippedEdition } from "../../../src/imports/usda/read-usda.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { openFoodTable } from "../../kit/open-food-table.js";

const rows = [...openFoodTable.values()];
const first = (count: number, after: string | null = null) => ({ first: count, after, last: null, before: null });

describeOnBothDatabases("the open food table", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
    expect(await database.data.catalogue.contentHash()).toBeNull();
    expect(await database.data.catalogue.load(shippedEdition, "hash", rows)).toBe(true);
  });

  const search = async (words: string, count = 5): Promise<readonly string[]> => {
    const { items } = await database.data.catalogue.page(words, first(count));
    return items.map(({ item }) => item.row.ndbNo);
  };

  it("reads back as it was, in the order asked for", async () => {
    const { catalogue } = database.data;
    const numbers = ["20081", "99999", "01001", "no\0thing", "11124", "11124"];
    const found = await catalogue.byNumbers(numbers);
    expect(found.map((each) => each?.row ?? null)).toEqual(numbers.map((ndbNo) => openFoodTable.get(ndbNo) ?? null));
    expect(found[0]?.edition).toEqual(shippedEdition);
    for (let at = 0; at < rows.length; at += 1000) {
      const page = rows.slice(at, at + 1000);
      const read = await catalogue.byNumbers(page.map(({ ndbNo }) => ndbNo));
      expect(read.map((each) => each?.row)).toEqual(page);
    }
  });

  it("is loaded once: the same content changes nothing", async () => {
    database.statements.clear();
    expect(await database.data.catalogue.load(shippedEdition, "hash", rows)).toBe(false);
    expect(database.statements.sent.filter((sql) => sql.includes("catalogue_foods"))).toEqual([]);
    expect(await database.data.catalogue.contentHash()).toBe("hash");
  });

  it("finds words in any order, in any case, by their beginnings, the plainest description first", async () => {
    expect(await search("raw carrots")).toEqual(await search("CARROT raw"));
    expect((await search("raw carrots"))[0]).toBe("11124");
    expect((await search("wheat flour whole grain"))[0]).toBe("20080");
    expect(await search("garlic raw", 1)).toEqual(["11215"]);
    expect(await search("carrot carrot 'x")).toEqual([]);
    for (const nothing of ["", "  ", "&|!:*", "carrots moonstone"]) expect(await search(nothing)).toEqual([]);
  });

  it("is walked in pages that leave nothing out and repeat nothing, forwards and back", async () => {
    const { catalogue } = database.data;
    const walked: string[] = [];
    let after: string | null = null;
    for (;;) {
      const page: Awaited<ReturnType<typeof catalogue.page>> = await catalogue.page("beans", first(50, after));
      walked.push(...page.items.map(({ item }) => item.row.ndbNo));
      if (!page.hasNext) break;
      after = page.items.at(-1)?.cursor ?? null;
    }
    const wanted = rows.filter(({ description, otherNames }) =>
      /(^|[^a-z0-9])beans/i.test([description, ...otherNames].join(" ")),
    );
    expect(new Set(walked)).toEqual(new Set(wanted.map(({ ndbNo }) => ndbNo)));
    expect(walked).toHaveLength(wanted.length);
    const back = await catalogue.page("beans", { first: null, after: null, last: 3, before: after });
    expect(back.items).toHaveLength(3);
    expect(walked.slice(walked.length - (walked.length % 50 || 50) - 4).join()).toContain(
      back.items.map(({ item }) => item.row.ndbNo).join(),
    );
  });

  it("gives way to another edition, all of it", async () => {
    const { catalogue } = database.data;
    const next = { code: "next", title: "Next edition" };
    const [row] = rows;
    if (row === undefined) throw new Error("the table is empty");
    expect(await catalogue.load(next, "other", [{ ...row, refuse: null }])).toBe(true);
    expect(await catalogue.contentHash()).toBe("other");
    const [known, gone] = await catalogue.byNumbers([row.ndbNo, "11124"]);
    expect(known).toEqual({ row: { ...row, refuse: null }, edition: next });
    expect(gone).toBeNull();
    expect(await catalogue.load(shippedEdition, "hash", rows)).toBe(true);
    expect((await catalogue.byNumbers(["11124"]))[0]?.edition).toEqual(shippedEdition);
  });

  it("is loaded by one of two processes that begin at once", async () => {
    const { catalogue } = database.data;
    const few = rows.slice(0, 20);
    const loads = [1, 2, 3].map(() => catalogue.load({ code: "twice", title: "At once" }, "at once", few));
    expect((await Promise.all(loads)).filter(Boolean)).toHaveLength(1);
    expect(await catalogue.byNumbers(few.map(({ ndbNo }) => ndbNo))).not.toContain(null);
  });
});
