import { afterAll, beforeAll, expect, it } from "vitest";
import { openCachedDeps } from "../../../src/app/setup/open-cache.js";
import { anyone, type Actor } from "../../../src/services/access/actor.js";
import { depsForActor } from "../../../src/services/deps-for-actor.js";
import { loadPlan } from "../../../src/services/plans/load-plan.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { smallBundle } from "../../persistence/small-bundle.js";

const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
const writer: Actor = { kind: "TOKEN", token: "w", publisher: "north-field", scopes: ["PUBLISH"] };

describeOnBothDatabases("an instance that has not heard yet what another wrote", (open) => {
  let database: TestDatabase;
  let instance: Awaited<ReturnType<typeof openCachedDeps>>;
  let hear: () => void;
  beforeAll(async () => {
    database = await open();
    const deps = { data: database.data, clock: () => new Date(), log, knownRules: new Map() };
    const follow: TestDatabase["follow"] = async (follower) => {
      follower.listening(true);
      hear = () => follower.heard("plan north-field/bean-night");
      return { caughtUp: async () => undefined, close: async () => undefined };
    };
    instance = await openCachedDeps({ deps, database: { ...database, follow } }, 8);
    await database.data.publishers.save({ slug: "north-field", name: "North Field" });
  });
  afterAll(() => instance.close());

  const publish = (title: string) =>
    database.data.revisions.publish(smallBundle({ publisher: "north-field", slug: "bean-night", title }), new Date());
  const titleFor = async (actor: Actor): Promise<string | undefined> => {
    const ref = { publisher: "north-field", slug: "bean-night", revision: null };
    return (await loadPlan(depsForActor(instance.deps, actor), ref))?.bundle.plan.title;
  };

  it("lets the writer find it at once, and all others once it has heard", async () => {
    await publish("First");
    expect([await titleFor(anyone), await titleFor(writer)]).toEqual(["First", "First"]);
    await publish("Second");
    expect([await titleFor(writer), await titleFor(anyone)]).toEqual(["Second", "First"]);
    hear();
    expect([await titleFor(anyone), await titleFor(writer)]).toEqual(["Second", "Second"]);
  });
});
