import { beforeAll, expect, it } from "vitest";
import { usualEngine } from "../../src/graphql/server/engine-options.js";
import { openGraphqlServer, type GraphqlServer } from "../../src/graphql/server/graphql-server.js";
import { chooseMediaType } from "../../src/graphql/server/media-type.js";
import { readBody } from "../../src/graphql/server/read-request.js";
import { anyone } from "../../src/services/access/actor.js";
import type { Deps } from "../../src/services/deps.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { openTimeSlicer } from "../../src/services/time-slices.js";
import { demo, openTestApp } from "../graphql/open-test-app.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { graphqlAttacks } from "./graphql-attacks.js";

/** The most steps that one request may be computed for, whatever it says. */
const mostSteps = 1_000_000;
/** Steps for each point that is asked for before anything is run. */
const mostForAPoint = 1_000;

const target = {
  publisher: demo.publisher.slug,
  plans: demo.plans.map(({ slug }) => slug),
  foods: demo.foods.map(({ slug }) => slug),
  components: demo.components.map(({ slug }) => slug),
};
const corpus = graphqlAttacks(target).filter(({ path, body }) => path === "/graphql" && body !== null);

describeOnEmbedded("the steps of an attack", (open) => {
  let deps: Deps;
  let server: GraphqlServer;

  beforeAll(async () => {
    const { data } = await open();
    const app = await openTestApp(data);
    await loadSeeds(app.deps, demo);
    // A clock that stands still: nothing is cut into turns, and nothing is ended for its time.
    deps = { ...app.deps, slicer: openTimeSlicer(() => 0) };
    server = await openGraphqlServer(usualEngine, deps.log);
  });

  it("are few for each point of its price, and never more than so many, though no clock ends it", async () => {
    const measured: {
      readonly name: string;
      readonly steps: number;
      readonly priced: number;
      readonly bytes: number;
    }[] = [];
    for (const { name, body } of corpus) {
      const bytes = body ?? Buffer.alloc(0);
      const type = chooseMediaType({});
      if (type === null) throw new Error("an answer has no form");
      let [steps, priced] = [0, 0];
      await server.answer(
        { method: "POST", bytes, type, read: () => readBody(bytes) },
        {
          charge: (cost) => void (priced += cost),
          chargeOwed: (taken) => void (steps += taken),
          gone: () => new AbortController().signal,
          report: () => undefined,
        },
        { deps, actor: anyone, requestId: "attack" },
      );
      measured.push({ name, steps, priced, bytes: bytes.length });
    }
    const worst = measured.toSorted((a, b) => b.steps - a.steps)[0];
    const cheapest = measured.toSorted((a, b) => b.steps / (b.priced + 1) - a.steps / (a.priced + 1))[0];
    console.log(
      `${String(measured.length)} attacks; most steps ${JSON.stringify(worst)}; most for a point ${JSON.stringify(cheapest)}`,
    );
    expect(measured.filter(({ steps }) => steps > 0).length).toBeGreaterThan(200);
    expect(measured.filter(({ steps }) => steps > mostSteps)).toEqual([]);
    const [refused, run] = [measured.filter(({ priced }) => priced === 0), measured.filter(({ priced }) => priced > 0)];
    expect(run.filter(({ steps, priced }) => steps > mostForAPoint * priced)).toEqual([]);
    // What is refused before it has a price is charged by its length.
    expect(refused.filter(({ steps, bytes }) => steps > 2 * bytes)).toEqual([]);
  }, 900_000);
});
