import { readdirSync, readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { scopes } from "../../../src/services/access/actor.js";
import type { FuzzedRequest } from "../../fuzz/fuzzed-request.js";
import { faultOf, RequestSender } from "../../fuzz/request-sender.js";
import { openRest, type RestApp } from "../../rest/open-rest.js";
import { describeOnBothDatabases } from "../../kit/databases.js";

const folder = "tests/fixtures/requests/found";

interface Kept extends Omit<FuzzedRequest, "body"> {
  /** Bytes, a character each. */
  readonly body: string | null;
}

describeOnBothDatabases("requests that once broke the service", (open) => {
  let app: RestApp;
  let sender: RequestSender;
  let token: string;

  beforeAll(async () => {
    app = await openRest(open);
    token = await app.tokenFor(null, scopes);
    sender = new RequestSender(await app.app.listen({ port: 0, host: "127.0.0.1" }), 1);
  });
  afterAll(async () => {
    sender.close();
    await app.close();
  });

  it.each(readdirSync(folder))("%s", async (name) => {
    const text = readFileSync(`${folder}/${name}`, "utf8").replaceAll("TOKEN", token);
    const kept = JSON.parse(text) as Kept;
    const request = { ...kept, body: kept.body === null ? null : Buffer.from(kept.body, "latin1") };
    const before = app.logged.length;
    expect(faultOf(request, await sender.send(request))).toBeNull();
    expect(app.logged.slice(before).filter((line) => /"level":[56]0/.test(line))).toEqual([]);
  });
});
