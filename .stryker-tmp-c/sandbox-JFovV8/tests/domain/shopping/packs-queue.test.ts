// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LabelQueue } from "../../../src/domain/shopping/packs-queue.js";

const drained = (queue: LabelQueue): readonly number[] => {
  const labels: number[] = [];
  for (let label = queue.pop(); label !== null; label = queue.pop()) labels.push(label);
  return labels;
};

describe("the queue of labels", () => {
  it("gives them out by first key, then second, then age", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: 3 }))), (keys) => {
        const queue = new LabelQueue();
        keys.forEach(([first, second], label) => queue.push(label, first, second));
        const sorted = keys
          .map(([first, second], label) => ({ first, second, label }))
          .toSorted((a, b) => a.first - b.first || a.second - b.second || a.label - b.label);
        expect(drained(queue)).toEqual(sorted.map(({ label }) => label));
      }),
    );
  });

  it("takes more while it gives out", () => {
    const queue = new LabelQueue();
    queue.push(0, 5, 0);
    queue.push(1, 3, 0);
    expect(queue.pop()).toBe(1);
    queue.push(2, 4, 0);
    queue.push(3, 6, 0);
    expect(drained(queue)).toEqual([2, 0, 3]);
    expect(queue.pop()).toBeNull();
    queue.push(4, 1, 1);
    expect(drained(queue)).toEqual([4]);
  });
});
