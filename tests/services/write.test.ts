import { randomUUID } from "node:crypto";
import { beforeAll, expect, it } from "vitest";
import { failed, ok } from "../../src/domain/problem.js";
import type { Actor } from "../../src/services/access/actor.js";
import type { Deps } from "../../src/services/deps.js";
import { deleteExpiredKeys } from "../../src/services/access/delete-expired-keys.js";
import { createPublisher } from "../../src/services/access/save-publisher.js";
import { write, type WriteOrder } from "../../src/services/write.js";
import { describeOnBothDatabases, describeOnServer, type TestDatabase } from "../kit/databases.js";

const silent = { info: () => undefined, warn: () => undefined, error: () => undefined };
const actor: Actor = { kind: "PROGRAM", name: "test" };
const caller = { actor, requestId: null };

const depsOn = ({ data }: TestDatabase): Deps => ({
  data,
  clock: () => new Date("2026-03-01T09:00:00Z"),
  log: silent,
  knownRules: new Map(),
});

const order = (idempotencyKey: string | null, input: unknown = {}): WriteOrder => ({
  ...{ caller, idempotencyKey, input },
  scope: "ADMIN",
  publisher: null,
  action: "CREATE_PUBLISHER",
});

const subject = { kind: "PUBLISHER", name: "x", before: null, after: null } as const;

describeOnBothDatabases("a write", (open) => {
  let database: TestDatabase;
  let deps: Deps;
  beforeAll(async () => {
    database = await open();
    deps = depsOn(database);
  });

  const count = async (table: string): Promise<unknown> =>
    (await database.sql.query(`SELECT count(*)::int AS n FROM ${table}`)).rows[0]?.["n"];

  it("with a key is done once, and answered the same again", async () => {
    const key = randomUUID();
    const input = { slug: "once", name: "Once", idempotencyKey: key };
    const audited = Number(await count("audit_entries"));
    const answers = [await createPublisher(deps, caller, input), await createPublisher(deps, caller, input)];
    expect(answers).toEqual([ok("once"), ok("once")]);
    expect(await count("audit_entries")).toBe(audited + 1);
    expect(await createPublisher(deps, caller, { ...input, name: "Twice" })).toEqual(
      failed([{ code: "KEY_REUSED", path: ["input", "idempotencyKey"] }]),
    );
    const other = { ...caller, actor: { ...actor, name: "other" } };
    expect(await createPublisher(deps, other, { ...input, slug: "of-another" })).toEqual(ok("of-another"));
  });

  it("with a key that is sent fifty times at once is done once, and others are told to wait or get its answer", async () => {
    const input = { slug: "crowd", name: "Crowd", idempotencyKey: randomUUID() };
    const answers = await Promise.all(Array.from({ length: 50 }, () => createPublisher(deps, caller, input)));
    const inUse = failed([{ code: "KEY_IN_USE", path: ["input", "idempotencyKey"] }]);
    expect(answers).toContainEqual(ok("crowd"));
    for (const answer of answers) expect([ok("crowd"), inUse]).toContainEqual(answer);
  });

  it("that finds problems leaves nothing, not even its key", async () => {
    const key = randomUUID();
    const before = [await count("publishers"), await count("audit_entries"), await count("idempotency_keys")];
    const refused = await write(deps, order(key), async ({ data }) => {
      await data.publishers.create({ slug: "half-done", name: "Half done" });
      return failed([{ code: "SLUG_TAKEN", path: [], slug: "half-done" }]);
    });
    expect(refused).toEqual(failed([{ code: "SLUG_TAKEN", path: [], slug: "half-done" }]));
    const broken = write(deps, order(key), async ({ data }) => {
      await data.publishers.create({ slug: "half-done", name: "Half done" });
      throw new Error("a fault");
    });
    await expect(broken).rejects.toThrow("a fault");
    expect([await count("publishers"), await count("audit_entries"), await count("idempotency_keys")]).toEqual(before);
    const again = await write(deps, order(key, { other: "input" }), async () => ok({ value: 1, subject }));
    expect(again).toEqual(ok(1));
  });

  it("gives back what it answered, whatever JSON that is", async () => {
    const value = { list: [1, "zwei", null, { deep: true }], text: "\u{1f955} \"'\\" };
    for (const each of [value, null, "", 0, false, []]) {
      const key = randomUUID();
      const run = () => write(deps, order(key), async () => ok({ value: each, subject }));
      expect([await run(), await run()]).toEqual([ok(each), ok(each)]);
    }
  });

  it("keeps its key for a day", async () => {
    const input = { slug: "kept", name: "Kept", idempotencyKey: randomUUID() };
    await createPublisher(deps, caller, input);
    const at = (time: string): Deps => ({ ...deps, clock: () => new Date(time) });
    await deleteExpiredKeys(at("2026-03-02T09:00:00.000Z"));
    expect(await createPublisher(deps, caller, input)).toEqual(ok("kept"));
    expect((await deleteExpiredKeys(at("2026-03-02T09:00:00.001Z"))).forgotten).toBeGreaterThan(0);
    expect(await count("idempotency_keys")).toBe(0);
  });
});

describeOnServer("a write that takes long", (open) => {
  it("holds its key: the same call beside it is told so at once, and gets the answer later", async () => {
    const deps = depsOn(await open());
    const key = randomUUID();
    let done = (): void => undefined;
    const waits = new Promise<void>((resolve) => (done = resolve));
    let started = (): void => undefined;
    const runs = new Promise<void>((resolve) => (started = resolve));
    const slow = write(deps, order(key), async () => {
      started();
      await waits;
      return ok({ value: "slow", subject });
    });
    await runs;
    const beside = () => write(deps, order(key), async () => ok({ value: "beside", subject }));
    expect(await beside()).toEqual(failed([{ code: "KEY_IN_USE", path: ["input", "idempotencyKey"] }]));
    done();
    expect(await slow).toEqual(ok("slow"));
    expect(await beside()).toEqual(ok("slow"));
  });
});
