import { execFile, execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createTestDatabase, dropTestDatabase } from "../../kit/databases.js";
import { startService } from "./service-process.js";

const run = promisify(execFile);
const PATH = process.env["PATH"];

describe("the processes on a Postgres server", () => {
  let url: string;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    url = await createTestDatabase("empty");
  });
  afterAll(() => dropTestDatabase(url));

  it("serve in production on an empty database, without demo data, and leave with 0", async () => {
    const service = await startService({ DATABASE_URL: url, NODE_ENV: "production" });
    const ready = await fetch(`${service.address}/readyz`);
    expect([ready.status, await ready.json()]).toEqual([200, { status: "ready" }]);
    const { stdout } = await run("sh", ["-c", service.lines[1] ?? ""]);
    expect(JSON.parse(stdout)).toMatchObject({ data: { plans: { edges: [] } } });
    expect(await service.stop()).toBe(0);
  });

  it("are not ready from SIGTERM on, answer until the time to drain is over, and leave with 0", async () => {
    const service = await startService({ DATABASE_URL: url, PREPWRIGHT_DRAIN_SECONDS: "2" });
    const stopped = service.stop();
    const seen: number[] = [];
    let ready: Response;
    do {
      ready = await fetch(`${service.address}/readyz`);
      seen.push(ready.status);
    } while (ready.status === 200);
    expect((await fetch(`${service.address}/v1/plans`)).status).toBe(200);
    expect(await ready.json()).toMatchObject({ reasons: [{ code: "STOPPING" }] });
    expect(await stopped).toBe(0);
    expect(seen.length).toBeLessThan(50);
    await expect(fetch(`${service.address}/healthz`)).rejects.toThrow();
  });

  it("start twice at the same time on one database, and one of them migrates", async () => {
    const other = await createTestDatabase("empty");
    const both = await Promise.all([startService({ DATABASE_URL: other }), startService({ DATABASE_URL: other })]);
    const applied = both.flatMap(({ errors }) => errors.filter((line) => line.includes("migration applied")));
    expect(new Set(applied.map((line) => (JSON.parse(line) as { migration: string }).migration)).size).toBe(
      applied.length,
    );
    expect(await Promise.all(both.map((service) => service.stop()))).toEqual([0, 0]);
    await dropTestDatabase(other);
  });

  it("run one job at once when told", async () => {
    const { stdout } = await run(process.execPath, ["dist/worker.js", "--once", "verify-revisions"], {
      env: { PATH, DATABASE_URL: url },
    });
    expect(stdout).toBe('verify-revisions: {"checked":0,"mismatched":[]}\n');
  });

  it("load a set of published rules from files, while a service runs and uses it at once", async () => {
    const folder = await mkdtemp(join(tmpdir(), "prepwright-rules-"));
    const names = ["allergens.yaml", "cautions.yaml", "food-safety.yaml", "keeping-classes.yaml", "rule-set.yaml"];
    for (const name of names) {
      const text = await readFile(join("seeds/rules", name), "utf8");
      await writeFile(join(folder, name), text.replace(/^code: .*$/m, "code: corrected"));
    }
    const shipped = /^code: "(.+)"$/m.exec(await readFile("seeds/rules/rule-set.yaml", "utf8"))?.[1];
    const service = await startService({ DATABASE_URL: url });
    const files = names.map((name) => join(folder, name));
    const loaded = await run(process.execPath, ["dist/cli.js", "rules", "load", "--local", ...files], {
      env: { PATH, DATABASE_URL: url },
    });
    expect(loaded.stdout).toMatch(/^Rule set corrected is loaded, used from \d{4}-\d\d-\d\d\.\n$/);
    const answer = await fetch(`${service.address}/graphql`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ query: "{ ruleSets { code } }" }),
    });
    expect(await answer.json()).toMatchObject({ data: { ruleSets: [{ code: "corrected" }, { code: shipped }] } });
    expect(await service.stop()).toBe(0);
    await rm(folder, { recursive: true });
  });

  it("work until they are told to stop", async () => {
    const child = spawn(process.execPath, ["dist/worker.js"], {
      env: { PATH, DATABASE_URL: url, PREPWRIGHT_METRICS_PORT: "0" },
      stdio: ["ignore", "ignore", "pipe"],
    });
    let figures = "";
    const exit = once(child, "exit");
    const lines: string[] = [];
    for await (const line of createInterface({ input: child.stderr })) {
      lines.push(line);
      const { msg, address } = JSON.parse(line) as { readonly msg: string; readonly address?: string };
      if (msg.startsWith("metrics")) {
        expect((await fetch(`${address ?? ""}/readyz`)).status).toBe(200);
        figures = await (await fetch(`${address ?? ""}/metrics`)).text();
      }
      if (msg === "working") child.kill("SIGTERM");
    }
    expect(figures).toMatch(/^prepwright_pool_connections\{state="most"\} \d+$/m);
    expect(await exit).toEqual([0, null]);
    expect(lines.filter((line) => line.includes('"level":50'))).toEqual([]);
  });

  it.each([
    [["--once", "nothing"], { DATABASE_URL: "postgres://nowhere/x" }, /--once must name a job: verify-revisions/],
    [[], {}, /DATABASE_URL must name a Postgres server/],
  ])("refuse %j with %j and exit with 2", async (args, environment, message) => {
    const failed = await run(process.execPath, ["dist/worker.js", ...args], { env: { PATH, ...environment } }).catch(
      (error: { code: number; stderr: string }) => error,
    );
    expect(failed).toMatchObject({ code: 2, stderr: expect.stringMatching(message) });
  });
});
