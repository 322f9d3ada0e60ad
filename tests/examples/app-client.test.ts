import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, it } from "vitest";
import { ask, Refused } from "../../examples/app-client/ask.js";
import { WeekendDocument } from "../../examples/app-client/generated.js";
import { openService, type OpenedService } from "../browser/open-service.js";
import { describeOnBothDatabases } from "../kit/databases.js";

const run = promisify(execFile);

describeOnBothDatabases("the example of an app's client", (open) => {
  let service: OpenedService;
  beforeAll(async () => {
    service = await openService(await open());
  });
  afterAll(() => service.close());

  const weekend = (...words: readonly string[]) =>
    run(process.execPath, ["--import", "tsx", "examples/app-client/weekend.ts", service.address, ...words]);

  it("shows what to buy, when to begin what, and the allergens that are not ruled out", async () => {
    const { stdout } = await weekend("third-gate-allotments/roots-and-barley", "5");
    expect(stdout).toMatch(/^Roots and barley, .* \(revision 1\), for 5\n/);
    expect(stdout).toMatch(/^ {2}pearl barley: .* \(1 × bag\)$/m);
    expect(stdout).toMatch(/^\d+ minutes, \d+ of them with your hands$/m);
    expect(stdout).toMatch(/^ {2}0 min: /m);
    expect(stdout).toMatch(/: contains$/m);
    expect(stdout).not.toMatch(/undefined|NaN|\[object/);
  });

  it("says that there is no such plan", async () => {
    await expect(weekend("third-gate-allotments/nothing")).rejects.toMatchObject({
      code: 1,
      stderr: "There is no plan third-gate-allotments/nothing.\n",
    });
  });

  it("says what is wrong with what was asked for, and where", async () => {
    await expect(weekend("third-gate-allotments/roots-and-barley", "0")).rejects.toMatchObject({
      code: 1,
      stderr: expect.stringMatching(/^servings: 0 servings .*from 1 to /),
    });
  });

  it("hands on what the service refuses", async () => {
    const variables = { publisher: "third-gate-allotments", slug: "bean-night", servings: 1.5 };
    await expect(ask(service.address, WeekendDocument, variables)).rejects.toBeInstanceOf(Refused);
    await expect(ask(service.address, WeekendDocument, variables)).rejects.toThrow(/servings/);
  });
});
