import { afterEach, beforeAll, describe, expect, it } from "vitest";
import type { Followed } from "../../../src/persistence/database/change-signals.js";
import { describeOnBothDatabases, describeOnServer, type TestDatabase } from "../../kit/databases.js";
import { smallBundle, smallFood } from "../small-bundle.js";

const heardBy = () => {
  const heard: string[] = [];
  const states: boolean[] = [];
  return {
    heard,
    states,
    follower: { heard: (signal: string) => void heard.push(signal), listening: (is: boolean) => void states.push(is) },
  };
};

const followed: Followed[] = [];
afterEach(async () => {
  await Promise.all(followed.splice(0).map((each) => each.close()));
});

describeOnBothDatabases("changes of the database", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
    await database.data.publishers.save({ slug: "north-field", name: "North Field" });
  });

  it("are heard as they are committed, by what changed", async () => {
    const { heard, states, follower } = heardBy();
    const line = await database.follow(follower);
    followed.push(line);
    const { data } = database;
    expect(states).toEqual([true]);
    const said = async (): Promise<readonly string[]> => {
      await line.caughtUp();
      return [...new Set(heard.splice(0))];
    };
    await data.publishers.rename("north-field", "North Fields");
    expect(await said()).toEqual(["publishers"]);
    const bundle = smallBundle({ publisher: "north-field", slug: "bean-night" });
    await data.foods.save([smallFood("carrot")]);
    expect(await said()).toEqual(["foods"]);
    const { summary } = await data.revisions.publish(bundle, new Date());
    expect((await said()).toSorted()).toEqual(["listings", "plan north-field/bean-night"]);
    await data.revisions.withdraw(
      { publisher: "north-field", slug: "bean-night", revision: summary.revision },
      new Date(),
    );
    expect((await said()).toSorted()).toEqual(["listings", "plan north-field/bean-night"]);
    await data.plans.saveDraft(bundle.plan, null);
    expect(await said()).toEqual([]);
    // Of a review, which adds a change and leaves the revision as it is.
    const again = await data.revisions.publish(bundle, new Date());
    await said();
    const fresher = { kind: "KEEPING", path: [], before: "4 days", after: "2 days", lessSafe: true } as const;
    const review = { revisionId: again.summary.id, differences: [fresher], lessSafe: true, at: new Date() };
    expect(await data.reviews.save(review)).toBe(true);
    expect(await said()).toEqual(["plan north-field/bean-night"]);
  });

  it("are not heard where they were rolled back", async () => {
    const { heard, follower } = heardBy();
    const line = await database.follow(follower);
    followed.push(line);
    const failed = database.data.transaction(async (inside) => {
      await inside.publishers.rename("north-field", "South Field");
      throw new Error("no");
    });
    await expect(failed).rejects.toThrow("no");
    await line.caughtUp();
    expect(heard).toEqual([]);
  });
});

describeOnServer("listening to a server", (open) => {
  const until = async (holds: () => boolean): Promise<void> => {
    for (const end = Date.now() + 20_000; !holds() && Date.now() < end;)
      await new Promise((done) => setTimeout(done, 20));
    expect(holds()).toBe(true);
  };

  describe("whose connection is cut", () => {
    it("is told at once that nothing is heard, and listens again by itself", async () => {
      const database = await open();
      const { heard, states, follower } = heardBy();
      const line = await database.follow(follower);
      followed.push(line);
      await database.sql.query(
        "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'prepwright-listen' AND datname = current_database()",
      );
      await until(() => states.length >= 3);
      expect(states).toEqual([true, false, true]);
      await database.data.publishers.save({ slug: "east-field", name: "East Field" });
      await line.caughtUp();
      expect(heard).toContain("publishers");
    });
  });

  it("closes without waiting for another attempt", async () => {
    const database = await open();
    const { states, follower } = heardBy();
    const line = await database.follow(follower);
    await line.close();
    expect(states).toEqual([true, false]);
    await line.caughtUp();
  });
});
