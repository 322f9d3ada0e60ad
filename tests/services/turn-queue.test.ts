import { describe, expect, it } from "vitest";
import { openTurnQueue } from "../../src/services/turn-queue.js";

/** A slice that lets so many computations run, and then pauses until the event loop came round. */
function openSlice(each: number) {
  let left = each;
  let pausing: Promise<void> | null = null;
  const turns = [0];
  const pause = (): Promise<void> | null => {
    if (pausing !== null) return pausing;
    if (left > 0) return null;
    return (pausing = new Promise((done) =>
      setImmediate(() => {
        [left, pausing] = [each, null];
        turns.push(0);
        done();
      }),
    ));
  };
  const use = (): void => {
    left -= 1;
    turns[turns.length - 1]! += 1;
  };
  return { pause, use, turns };
}

describe("a queue of turns", () => {
  it("runs what is asked at once while it is its turn, and no promise is made", () => {
    const inTurn = openTurnQueue(() => null);
    expect([1, 2, 3].map((each) => inTurn(() => each * 2))).toEqual([2, 4, 6]);
  });

  it("lets no turn do more than its share, however many wait, and however their work goes on", async () => {
    const { pause, use, turns } = openSlice(3);
    const inTurn = openTurnQueue(pause);
    const order: number[] = [];
    // As GraphQL does with the rows of a list: the work comes after the promise of the row.
    await Promise.all(
      Array.from({ length: 100 }, async (_, at) => {
        const row = inTurn(() => at);
        order.push(row instanceof Promise ? await row : row);
        use();
      }),
    );
    expect(order).toEqual(Array.from({ length: 100 }, (_, at) => at));
    expect(Math.max(...turns)).toBeLessThanOrEqual(3);
  });

  it("fails what waits where the request is ended, and what fails by itself alone", async () => {
    const over = new AbortController();
    const pause = (): Promise<void> =>
      over.signal.aborted
        ? Promise.reject(new Error("ended"))
        : new Promise((done) => setImmediate(() => (over.abort(), done())));
    const inTurn = openTurnQueue(pause);
    const settled = await Promise.allSettled([inTurn(() => 1), inTurn(() => 2)]);
    expect(settled.map(({ status }) => status)).toEqual(["rejected", "rejected"]);

    const { pause: pauseShortly, use } = openSlice(1);
    use();
    const other = openTurnQueue(pauseShortly);
    const failing = other(() => {
      throw new Error("its own");
    });
    const [first, second] = await Promise.allSettled([failing, other(() => "fine")]);
    expect([first.status, second]).toEqual(["rejected", { status: "fulfilled", value: "fine" }]);
  });
});
