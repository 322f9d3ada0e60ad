import { expect, it } from "vitest";
import { describeOnBothDatabases } from "./databases.js";

describeOnBothDatabases("a test database", (open) => {
  it("is migrated, empty and alone", async () => {
    const [one, other] = await Promise.all([open(), open()]);
    await one.data.publishers.save({ slug: "north-field", name: "North Field" });
    expect(await other.data.publishers.bySlugs(["north-field"])).toEqual([null]);
    expect(await one.data.publishers.bySlugs(["north-field"])).toMatchObject([{ name: "North Field" }]);
    expect((await one.sql.query("SELECT count(*)::int AS n FROM _prisma_migrations")).rows).toEqual([
      { n: expect.any(Number) },
    ]);
  });

  it("counts every statement", async () => {
    const { data, statements } = await open();
    statements.clear();
    await data.publishers.bySlugs(["a", "b", "c"]);
    expect(statements.sent).toHaveLength(1);
    await data.transaction((inside) => inside.publishers.save({ slug: "a", name: "A" }));
    expect(statements.sent).toHaveLength(2);
  });
});
