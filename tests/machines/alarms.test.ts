import { execFileSync } from "node:child_process";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startService, type ServiceProcess } from "../app/processes/service-process.js";

/** Prometheus' own tool, of Debian's package `prometheus`: `apt-get install prometheus`. */
const promtool = (words: readonly string[], input = ""): string =>
  execFileSync("/usr/bin/promtool", words, { input, encoding: "utf8", stdio: ["pipe", "pipe", "pipe"] });

const rulesFile = "examples/alarms.yaml";

describe("the figures of a service, for Prometheus", () => {
  let folder: string;
  let service: ServiceProcess;
  let figures: string;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    folder = await mkdtemp(join(tmpdir(), "prepwright-figures-"));
    service = await startService({ DATA_DIR: folder, PREPWRIGHT_METRICS_PORT: "0" });
    for (const path of ["/", "/v1/plans", "/v1/nothing", "/graphql?query={__typename}"]) {
      await fetch(service.address + path);
    }
    const told = service.errors.find((line) => line.includes('"msg":"metrics are')) ?? "{}";
    const { address } = JSON.parse(told) as { readonly address?: string };
    figures = await (await fetch(`${address ?? ""}/metrics`)).text();
  });
  afterAll(async () => {
    await service.stop("SIGINT");
    await rm(folder, { recursive: true });
  });

  it("are as Prometheus wants names, kinds and helps of figures to be", () => {
    expect(figures).toContain("prepwright_requests_total{");
    expect(promtool(["check", "metrics"], figures)).toBe("");
  });

  it("have every figure that the alarms ask for, and the alarms are rules", async () => {
    expect(promtool(["check", "rules", rulesFile])).toMatch(/SUCCESS: \d\d rules found/);
    const asked = new Set((await readFile(rulesFile, "utf8")).match(/\b(prepwright|nodejs|process)_[a-z_]+/g));
    expect(asked.size).toBeGreaterThan(8);
    // Of what has not happened yet there are no numbers, but its kind is told.
    const told = new Set([...figures.matchAll(/^# TYPE (\S+)/gm)].map(([, name]) => name));
    const missing = [...asked].filter((name) => !told.has(name.replace(/_bucket$/, "")));
    expect(missing).toEqual([]);
  });
});
