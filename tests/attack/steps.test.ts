import { beforeAll, expect, it } from "vitest";
import { usualEngine } from "../../src/graphql/server/engine-options.js";
import { openGraphqlServer, type GraphqlServer } from "../../src/graphql/server/graphql-server.js";
import { chooseMediaType } from "../../src/graphql/server/media-type.js";
import { readBody } from "../../src/graphql/server/read-request.js";
import { anyone, type Actor } from "../../src/services/access/actor.js";
import type { Deps } from "../../src/services/deps.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { openTimeSlicer, type SlicedWork } from "../../src/services/time-slices.js";
import { demo, openTestApp } from "../graphql/open-test-app.js";
import { describeOnEmbedded } from "../kit/databases.js";
import type { AttackRequest } from "./attack-request.js";
import { demoTarget, expectFewSteps, payable, readable, type CountedAttack } from "./counted-attack.js";
import { documentAttacks } from "./document-attacks.js";
import { foodAttacks } from "./food-attacks.js";
import { graphqlAttacks } from "./graphql-attacks.js";
import { pageAttacks } from "./page-attacks.js";
import { restAttacks } from "./rest-attacks.js";
import { writerAttacks } from "./writer-attacks.js";

/** A clock that stands still: nothing is cut into turns, and nothing is ended for its time. */
const standing = openTimeSlicer(() => 0);

const isGraphql = ({ path, body }: AttackRequest): boolean => path === "/graphql" && body !== null;

describeOnEmbedded("the steps of an attack over GraphQL", (open) => {
  let deps: Deps;
  let server: GraphqlServer;

  beforeAll(async () => {
    const { data } = await open();
    const app = await openTestApp(data);
    await loadSeeds(app.deps, demo);
    deps = { ...app.deps, slicer: standing };
    server = await openGraphqlServer(usualEngine, deps.log);
  });

  const count = async (corpus: readonly AttackRequest[], actor: Actor): Promise<readonly CountedAttack[]> => {
    const measured: CountedAttack[] = [];
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
        { deps, actor, requestId: "attack" },
      );
      measured.push({ name, steps, priced, bytes: bytes.length });
    }
    return measured;
  };

  it("are few for each point of its price, and never more than so many, though no clock ends it", async () => {
    expectFewSteps(
      "attacks over GraphQL",
      await count([...graphqlAttacks(demoTarget), ...foodAttacks(demoTarget)].filter(isGraphql), anyone),
      {
        ...{ most: payable, counted: 200 },
      },
    );
  }, 900_000);

  it("are as few where a writer has documents of a megabyte checked", async () => {
    const { publisher } = demoTarget;
    const writer: Actor = { kind: "TOKEN", token: "attack", publisher, scopes: ["READ_DRAFTS"] };
    expectFewSteps(
      "documents of writers",
      await count([...documentAttacks(demoTarget), ...writerAttacks(demoTarget).filter(isGraphql)], writer),
      {
        most: readable,
        counted: 10,
      },
    );
  }, 900_000);
});

describeOnEmbedded("the steps of an attack over REST and on pages", (open) => {
  it("are few for each point of its price, and never more than so many, though no clock ends it", async () => {
    let [steps, priced] = [0, 0];
    const counting = {
      ...standing,
      begin: (...given: Parameters<typeof standing.begin>): SlicedWork => {
        const work = standing.begin(...given);
        begun.push(work);
        return work;
      },
    };
    const begun: SlicedWork[] = [];
    const { data } = await open();
    const { app, deps } = await openTestApp(
      data,
      undefined,
      undefined,
      { slicer: counting },
      {
        // Requests that are made up here have no connection that could be ended in the middle of a body.
        bodyTime: 86_400_000,
        watchRequests: (of) =>
          of.addHook("onRequest", (_request, reply, done) => {
            const { charge } = reply;
            reply.charge = function (points) {
              priced += points;
              charge.call(this, points);
            };
            done();
          }),
      },
    );
    await loadSeeds(deps, demo);
    const measured: CountedAttack[] = [];
    for (const { name, method, path, headers, body } of [
      ...restAttacks(demoTarget),
      ...pageAttacks(demoTarget),
      ...foodAttacks(demoTarget).filter((each) => !isGraphql(each)),
    ]) {
      [steps, priced, begun.length] = [0, 0, 0];
      const { statusCode } = await app.inject({
        ...{ method: method as "GET", url: path, headers },
        ...(body === null ? {} : { payload: body }),
      });
      steps = begun.reduce((sum, work) => sum + work.steps, 0);
      expect(statusCode, name).toBeLessThan(500);
      measured.push({ name, steps, priced, bytes: path.length + (body?.length ?? 0) });
    }
    await app.close();
    expectFewSteps("attacks over REST", measured, { most: payable, counted: 100 });
  }, 900_000);
});
