import { execFile } from "node:child_process";
import type { AddressInfo } from "node:net";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";

const run = promisify(execFile);

describeOnBothDatabases("the example of one list for two plans", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    await app.app.listen({ port: 0, host: "127.0.0.1" });
  });
  afterAll(() => app.close());

  it("prints what to buy and what the till asks for", async () => {
    const { port } = app.app.server.address() as AddressInfo;
    const { stdout } = await run(process.execPath, ["examples/list-for-two-plans.mjs", `http://127.0.0.1:${port}`]);
    expect(stdout).toMatch(/^pearl barley: .* \(1 × bag of 1 kg\)$/m);
    expect(stdout).toMatch(/^At the till: \d+\.\d\d XTS$/m);
  });
});
