import { setTimeout as wait } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { createSemaphore } from "../../../src/persistence/database/semaphore.js";

describe("turns", () => {
  it("come in the order asked, never more at a time than allowed, and failures give their place up too", async () => {
    const turns = createSemaphore(3, 10_000);
    const begun: number[] = [];
    let open = 0;
    let most = 0;
    const work = Array.from({ length: 20 }, (_, n) =>
      turns(async () => {
        begun.push(n);
        open += 1;
        most = Math.max(most, open);
        await wait(n % 4);
        open -= 1;
        if (n % 5 === 0) throw new Error("failed");
        return n;
      }),
    );
    const ended = await Promise.allSettled(work);
    expect(ended.filter(({ status }) => status === "rejected")).toHaveLength(4);
    expect(begun).toEqual(Array.from({ length: 20 }, (_, n) => n));
    expect(most).toBe(3);
  });

  it("are refused to whom they do not come in time, and others go on", async () => {
    const turns = createSemaphore(1, 30);
    let release = (): void => undefined;
    const first = turns(() => new Promise<void>((resolve) => (release = resolve)));
    await expect(turns(async () => 1)).rejects.toThrow("1 transactions were open all along for 30 ms");
    const third = turns(async () => 3);
    release();
    expect(await third).toBe(3);
    await first;
    expect(await turns(async () => 4)).toBe(4);
  });
});
