import { execFile } from "node:child_process";
import { describe, expect, it } from "vitest";
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

const uses = {
  "used the server": `
    const { startPostgres } = await import("./tests/kit/postgres/start-postgres.ts");
    await (await startPostgres()).stop();`,
  // A run of suites that ask for the embedded database alone: the browser's are such.
  "made the embedded template": `
    const { makeTemplate } = await import("./tests/kit/postgres/templates.ts");
    await (await makeTemplate("/embedded")).stop();`,
};

describe.each(Object.entries(uses))("a process that %s", (_, use) => {
  it.each([
    ["has nothing left to do", "process.exitCode = 3;", 3],
    ["exits with 0", "process.exit(0);", 0],
    ["exits with 3", "process.exit(3);", 3],
  ])("and %s ends with the code it was given", async (_end, end, expected) => {
    const code = await new Promise((ended) => {
      execFile(process.execPath, ["--import", "tsx", "--input-type=module", "-e", `${use}\n${end}`], (error) =>
        ended(error?.code ?? 0),
      );
    });
    expect(code).toBe(expected);
  });
});
