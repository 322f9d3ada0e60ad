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

it("a process that used the server ends with the exit code it was given", async () => {
  // A test run sets its exit code and then has nothing left to do; it must not end with 0.
  const script = `
    import { startPostgres } from "./tests/kit/start-postgres.ts";
    const server = await startPostgres();
    await server.stop();
    process.exitCode = 3;`;
  const code = await new Promise((ended) => {
    execFile(process.execPath, ["--import", "tsx", "--input-type=module", "-e", script], (error) => ended(error?.code));
  });
  expect(code).toBe(3);
});
