// @ts-nocheck
import { execFile } from "node:child_process";
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

it.each([
  ["has nothing left to do", "process.exitCode = 3;", 3],
  ["exits with 0", "process.exit(0);", 0],
  ["exits with 3", "process.exit(3);", 3],
])("a process that used the server and %s ends with the code it was given", async (_, end, expected) => {
  const script = `
    import { startPostgres } from "./tests/kit/start-postgres.ts";
    const server = await startPostgres();
    await server.stop();
    ${end}`;
  const code = await new Promise((ended) => {
    execFile(process.execPath, ["--import", "tsx", "--input-type=module", "-e", script], (error) =>
      ended(error?.code ?? 0),
    );
  });
  expect(code).toBe(expected);
});
