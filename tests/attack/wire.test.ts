import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { routesOf } from "../app/server/routes-of.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { addressAttacks, framingAttacks, methodAttacks, type WireAttack } from "./wire-attacks.js";
import { sendWire } from "./wire-client.js";

describeOnEmbedded("bytes that no client sends", (open) => {
  let app: TestApp;
  let port: number;
  let paths: readonly string[];

  beforeAll(async () => {
    app = await openTestApp((await open()).data, undefined, undefined, {}, { bodyTime: 1_000 });
    await loadSeeds(app.deps, demo);
    port = Number(new URL(await app.app.listen({ port: 0, host: "127.0.0.1" })).port);
    const named: Readonly<Record<string, string>> = {
      publisher: demo.publisher.slug,
      slug: demo.plans[0]?.slug ?? "",
      revision: "1",
    };
    paths = [
      ...new Set(
        routesOf(app.app).map(({ path }) =>
          path.replace(/:(\w+)/g, (_, name: string) => named[name] ?? "a").replaceAll("*", "a"),
        ),
      ),
    ].filter((path) => !path.endsWith("/stream"));
  });
  afterAll(() => app.close());

  /** What is wrong with what comes back; null: nothing. */
  const faultsOf = async (attacks: readonly WireAttack[]): Promise<readonly string[]> => {
    const faults: string[] = [];
    for (const attack of attacks) {
      const { statuses, text, ended } = await sendWire(port, attack, 20_000);
      const wrong = statuses.filter((status) => status >= 500);
      if (wrong.length > 0) faults.push(`${attack.name}: ${wrong.join(" ")}: ${text.slice(0, 300)}`);
      if (!ended) faults.push(`${attack.name}: the connection stays open`);
      if (attack.answers !== undefined && statuses.length !== attack.answers)
        faults.push(`${attack.name}: ${String(statuses.length)} answers: ${statuses.join(" ")}`);
      if (/node_modules|\bat \S+ \(|\/src\//.test(text)) faults.push(`${attack.name}: shows an inside`);
    }
    expect(app.logged.filter((line) => /"level":[56]0/.test(line))).toEqual([]);
    expect(await sendWire(port, lives, 20_000)).toMatchObject({ statuses: [200], ended: true });
    return faults;
  };
  const lives: WireAttack = {
    ...{ name: "lives", then: "WAIT" },
    pieces: [Buffer.from("GET /healthz HTTP/1.1\r\nhost: a\r\nconnection: close\r\n\r\n")],
  };

  it("in heads and bodies get a refusal or nothing, and the service lives", async () => {
    expect(framingAttacks.length).toBeGreaterThan(70);
    expect(await faultsOf(framingAttacks)).toEqual([]);
  }, 300_000);

  it("for methods: each has its answer at every address, in their order", async () => {
    expect(paths.length).toBeGreaterThan(40);
    expect(await faultsOf(methodAttacks(paths))).toEqual([]);
  }, 300_000);

  it("in addresses: wrong signs, thousands of keys, one key again and again", async () => {
    expect(await faultsOf(addressAttacks(paths))).toEqual([]);
  }, 300_000);
});
