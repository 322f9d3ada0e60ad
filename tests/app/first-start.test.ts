import { execFileSync } from "node:child_process";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openServer } from "../../src/persistence/database/open-server.js";
import { createToken } from "../../src/services/access/create-token.js";
import { createTestDatabase, dropTestDatabase } from "../kit/databases.js";
import { silentLog } from "../services/imports/open-feed.js";
import { startService } from "./processes/service-process.js";

/** A row of USDA SR26, the edition of the open table that comes with the program: 11124, "Carrots, raw". */
const food = (number: string): string =>
  `kind: food\nslug: ours\nnames: { en: Ours }\naisle: vegetables\nshopped-by: mass\nusda: '${number}'\n`;
const query = `query ($texts: [DocumentTextInput!]!) {
  checkDocuments(publisher: "own", texts: $texts) { problems { code path message } }
  catalogueFood(ndbNo: "11124") { description }
}`;

describe("the first start on an empty database", () => {
  let url: string;
  let token: string;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    url = await createTestDatabase("migrated");
    const { data, close } = await openServer(url, { log: silentLog });
    const deps = { data, clock: () => new Date(), log: silentLog, knownRules: new Map() };
    await data.publishers.save({ slug: "own", name: "Own" });
    const caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;
    const order = { publisher: null, name: "check", scopes: ["READ_DRAFTS", "WRITE"], expiresAt: null } as const;
    const made = await createToken(deps, caller, order);
    if (!made.ok || made.value.text === null) throw new Error("no token");
    token = made.value.text;
    await close();
  });
  afterAll(() => dropTestDatabase(url));

  it("has the open table when it answers, however many begin at once", async () => {
    const starting = Array.from({ length: 3 }, async () => {
      const service = await startService({ DATABASE_URL: url, LOG_LEVEL: "warn" });
      const check = async (number: string): Promise<unknown> => {
        const answer = await fetch(`${service.address}/graphql`, {
          method: "POST",
          headers: { "content-type": "application/json", authorization: `Bearer ${token}` },
          body: JSON.stringify({ query, variables: { texts: [{ name: "f.yaml", text: food(number) }] } }),
        });
        return ((await answer.json()) as { data: unknown }).data;
      };
      const first = await check("11124");
      const wrong = await check("99999");
      await service.stop();
      return { first, wrong };
    });
    for (const { first, wrong } of await Promise.all(starting)) {
      const catalogueFood = { description: "Carrots, raw" };
      const unknown = [{ code: "UNKNOWN_CODE", path: ["usda"], message: expect.any(String) }];
      expect(first).toEqual({ checkDocuments: { problems: [] }, catalogueFood });
      expect(wrong).toEqual({ checkDocuments: { problems: unknown }, catalogueFood });
    }
  }, 120_000);
});
