import { getEventListeners } from "node:events";
import { expect, it } from "vitest";
import { withTimeLimit } from "../../src/services/with-time-limit.js";

it("work that ends in time leaves nothing behind on the signal of whoever asked", async () => {
  const gone = new AbortController();
  for (let request = 0; request < 100; request += 1) {
    expect(await withTimeLimit({}, 10_000, gone.signal, () => Promise.resolve(request))).toBe(request);
    await expect(withTimeLimit({}, 10_000, gone.signal, () => Promise.reject(new Error("no")))).rejects.toThrow("no");
  }
  expect(getEventListeners(gone.signal, "abort")).toHaveLength(0);
});

it("work is ended when its time is over, when whoever asked goes, and at once if they went before", async () => {
  const never = (): Promise<never> => new Promise(() => undefined);
  expect(await withTimeLimit({}, 5, null, never)).toBe("ENDED");
  const gone = new AbortController();
  setTimeout(() => gone.abort(), 5);
  expect(await withTimeLimit({}, 10_000, gone.signal, never)).toBe("ENDED");
  let told = false;
  const work = (_: object, over: AbortSignal): Promise<never> => {
    told = over.aborted;
    return never();
  };
  expect([await withTimeLimit({}, 10_000, gone.signal, work), told]).toEqual(["ENDED", true]);
});
