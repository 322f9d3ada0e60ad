import { beforeAll, expect, it } from "vitest";
import { usualEngine } from "../../src/graphql/server/engine-options.js";
import { openGraphqlServer, type GraphqlServer } from "../../src/graphql/server/graphql-server.js";
import { chooseMediaType } from "../../src/graphql/server/media-type.js";
import { readBody } from "../../src/graphql/server/read-request.js";
import { anyone } from "../../src/services/access/actor.js";
import type { Deps } from "../../src/services/deps.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { openTimeSlicer, type TimeSlicer, type SlicedWork } from "../../src/services/time-slices.js";
import { pointsOwed } from "../../src/services/access/rate-limit-window.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { diceFrom } from "../kit/arbitrary/dice.js";
import { addressBy } from "./priced-addresses.js";
import { requestBy } from "./priced-requests.js";
import { demo, openTestApp } from "../graphql/open-test-app.js";

/** Some five milliseconds of a usual processor. */
const leastSteps = 5_000;
const mostRequests = 310;
/** Fewer, since nearly each of them looks for the order of a session. */
const mostAddresses = 100;

interface Measured {
  readonly query: string;
  readonly variables: object;
  readonly steps: number;
  /** Before anything is run. */
  readonly priced: number;
  /** With what is owed afterwards. */
  readonly charged: number;
}

describeOnEmbedded("the price of a request", (open) => {
  let deps: Deps;
  let server: GraphqlServer;

  beforeAll(async () => {
    const { data } = await open();
    const app = await openTestApp(data);
    await loadSeeds(app.deps, demo);
    // A clock that stands still: nothing is cut into turns, and nothing is ended.
    deps = { ...app.deps, slicer: openTimeSlicer(() => 0) };
    server = await openGraphqlServer(usualEngine, deps.log);
  });

  const measure = async (query: string, variables: object): Promise<Measured> => {
    let [steps, priced] = [0, 0];
    const bytes = Buffer.from(JSON.stringify({ query, variables }));
    const type = chooseMediaType({});
    if (type === null) throw new Error("an answer has no form");
    const answer = await server.answer(
      { method: "POST", bytes, type, read: () => readBody(bytes) },
      {
        charge: (cost) => void (priced = cost),
        chargeOwed: (taken) => void (steps = taken),
        gone: () => new AbortController().signal,
        report: () => undefined,
      },
      { deps, actor: anyone, requestId: "price" },
    );
    if (answer.status !== 200) throw new Error(`${answer.body.toString()} ${query}`);
    return { query, variables, steps, priced, charged: priced + pointsOwed(steps, priced) };
  };

  it("follows its work within a factor of ten, over more than 300 requests of five milliseconds or more", async () => {
    const of = diceFrom(20);
    const measured: Measured[] = [];
    while (measured.length < mostRequests) {
      const { query, variables } = requestBy(of);
      const found = await measure(query, variables);
      if (found.steps >= leastSteps) measured.push(found);
    }
    expectInProportion(measured);
  }, 600_000);
});

describeOnEmbedded("the price of a page, or of an answer below /v1", (open) => {
  it("follows its work within a factor of ten, over a hundred requests of five milliseconds or more", async () => {
    const begun: SlicedWork[] = [];
    // Computing is cut into turns by a clock that stands still, and counted.
    const standing = openTimeSlicer(() => 0);
    const slicer: TimeSlicer = {
      ...standing,
      begin: (...given) => {
        const work = standing.begin(...given);
        begun.push(work);
        return work;
      },
    };
    const perAddress = 1_000_000_000;
    const rateLimit = { perAddress, perToken: perAddress, refusedTokensPerAddress: 1 };
    const { data } = await open();
    const app = await openTestApp(data, undefined, undefined, { slicer }, { rateLimit });
    await loadSeeds(app.deps, demo);
    const of = diceFrom(21);
    let left = perAddress;
    const measured: Measured[] = [];
    while (measured.length < mostAddresses) {
      const { method, url, payload } = addressBy(of);
      begun.length = 0;
      const { statusCode, headers, body } = await app.app.inject({ method, url, ...(payload && { payload }) });
      // Swaps and routes are drawn, and some fit no plan: that is said, and takes next to nothing.
      expect([200, 303, 422], `${url} ${body}`).toContain(statusCode);
      const now = Number(/;r=(\d+)/.exec(String(headers["ratelimit"]))?.[1]);
      const charged = left - now;
      left = now;
      const steps = begun.reduce((sum, work) => sum + work.steps, 0);
      if (steps >= leastSteps) measured.push({ query: url, variables: payload ?? {}, steps, priced: charged, charged });
    }
    await app.close();
    expectInProportion(measured);
  }, 600_000);
});

function expectInProportion(measured: readonly Measured[]): void {
  const each = measured.toSorted((a, b) => a.charged / a.steps - b.charged / b.steps);
  const [least, most] = [each[0], each.at(-1)];
  if (least === undefined || most === undefined) throw new Error("nothing was measured");
  expect(most.charged / most.steps / (least.charged / least.steps), JSON.stringify([least, most])).toBeLessThan(10);
}
