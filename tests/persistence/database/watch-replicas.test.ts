import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { watchReplicas } from "../../../src/persistence/database/watch-replicas.js";

const maxLagMs = 1_000;

/** A primary and replicas that stand where they are told, on a clock that goes when told. */
function open(count: number) {
  const world = { now: 0, primary: 0, primaryAnswers: true, reached: Array.from({ length: count }, () => 0) };
  const silent = new Set<number>();
  const position = async (at: () => number, answers: () => boolean): Promise<number> => {
    if (!answers()) throw new Error("no answer");
    return at();
  };
  const watch = watchReplicas(
    () =>
      position(
        () => world.primary,
        () => world.primaryAnswers,
      ),
    world.reached.map((_, n) => ({
      name: String(n),
      value: n,
      position: () =>
        position(
          () => world.reached[n] ?? 0,
          () => !silent.has(n),
        ),
    })),
    { maxLagMs, now: () => world.now, log: undefined },
  );
  return { world, silent, watch };
}

describe("the watch over replicas", () => {
  it("asks none before it has looked, then each in turn", async () => {
    const { watch } = open(2);
    expect(watch.pick()).toBeNull();
    await watch.look();
    expect(new Set([watch.pick(), watch.pick()])).toEqual(new Set([0, 1]));
    watch.close();
  });

  it("leaves out one that is silent, and takes it back", async () => {
    const { watch, silent } = open(2);
    silent.add(0);
    await watch.look();
    expect([watch.pick(), watch.pick()]).toEqual([1, 1]);
    silent.clear();
    await watch.look();
    expect(new Set([watch.pick(), watch.pick()])).toEqual(new Set([0, 1]));
    watch.close();
  });

  it("leaves out one that failed to answer a read, until it was looked at again", async () => {
    const { watch } = open(1);
    await watch.look();
    watch.failed(0, new Error("gone"));
    expect(watch.pick()).toBeNull();
    await watch.look();
    expect(watch.pick()).toBe(0);
    watch.close();
  });

  it("asks none that lacks what was heard of, from the very moment", async () => {
    const { watch, world } = open(1);
    await watch.look();
    world.primary = 10;
    watch.heardOfWrite();
    expect(watch.pick()).toBeNull();
    await watch.look();
    expect(watch.pick()).toBeNull();
    world.reached[0] = 10;
    await watch.look();
    expect(watch.pick()).toBe(0);
    watch.close();
  });

  it("trusts no replica for longer than the bound while the primary is silent", async () => {
    const { watch, world } = open(1);
    await watch.look();
    world.primaryAnswers = false;
    world.now = maxLagMs;
    await watch.look();
    expect(watch.pick()).toBe(0);
    world.now = maxLagMs + 1;
    await watch.look();
    expect(watch.pick()).toBeNull();
    watch.close();
  });

  it("never picks one that lacks what was committed longer ago than the bound, or what was heard of", async () => {
    const step = fc.oneof(
      fc.record({ kind: fc.constant("wait" as const), ms: fc.integer({ min: 1, max: 700 }) }),
      fc.record({ kind: fc.constant("write" as const), heard: fc.boolean() }),
      fc.record({ kind: fc.constant("replay" as const), replica: fc.nat(1), bytes: fc.nat(5) }),
      fc.record({ kind: fc.constant("silence" as const), replica: fc.nat(1) }),
      fc.record({ kind: fc.constant("speak" as const), replica: fc.nat(1) }),
      fc.record({ kind: fc.constant("primary" as const), answers: fc.boolean() }),
      fc.constant({ kind: "look" as const }),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 60 }), async (steps) => {
        const { watch, world, silent } = open(2);
        const commits: { readonly at: number; readonly position: number }[] = [];
        let heardOf = 0;
        for (const each of steps) {
          if (each.kind === "wait") world.now += each.ms;
          if (each.kind === "write") {
            world.primary += 1;
            commits.push({ at: world.now, position: world.primary });
            if (each.heard) {
              heardOf = world.primary;
              watch.heardOfWrite();
            }
          }
          if (each.kind === "replay") {
            world.reached[each.replica] = Math.min(world.primary, (world.reached[each.replica] ?? 0) + each.bytes);
          }
          if (each.kind === "silence") silent.add(each.replica);
          if (each.kind === "speak") silent.delete(each.replica);
          if (each.kind === "primary") world.primaryAnswers = each.answers;
          if (each.kind === "look") await watch.look();
          const picked = watch.pick();
          if (picked === null) continue;
          const due = commits.filter(({ at }) => world.now - at > maxLagMs).at(-1)?.position ?? 0;
          expect(world.reached[picked]).toBeGreaterThanOrEqual(Math.max(due, heardOf));
        }
        watch.close();
      }),
      { numRuns: 300 },
    );
  });
});
