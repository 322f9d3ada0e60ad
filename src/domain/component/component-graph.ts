import type { Component } from "../model/component.js";
import type { Line } from "../model/line.js";
import { findCycles } from "./cycles.js";

export interface ComponentGraph {
  /** An order to make those in that a meal leads to: each after what it uses. Means nothing where there are `cycles`. */
  readonly makeOrder: readonly number[];
  /** Each as slugs from a component back to itself: ["dal", "stock", "dal"]. Every way round is one (cycles.ts). */
  readonly cycles: readonly (readonly string[])[];
  /** Slugs of components that no meal leads to. */
  readonly unreached: readonly string[];
}

/** Indexes of the components that some lines use; names that are not there are somebody else's problem. */
const usedBy = (lines: readonly Line[], indexOf: ReadonlyMap<string, number>): number[] => {
  const used = new Set<number>();
  for (const { item } of lines) {
    const index = item.kind === "COMPONENT" ? indexOf.get(item.component) : undefined;
    if (index !== undefined) used.add(index);
  }
  return [...used];
};

/** Every way to use a component counts, so that no choice of route can close a cycle. */
const allLines = ({ lines, routes }: Component): readonly Line[] => [
  ...lines,
  ...routes.flatMap((route) => route.lines),
];

/**
 * Walks the components depth first, with a stack of its own (a chain may be thousands long). A component that is reached twice is
 * no cycle.
 *
 * @param roots lines of the meals
 */
export function componentGraph(components: readonly Component[], roots: readonly Line[]): ComponentGraph {
  const indexOf = new Map(components.map(({ slug }, index) => [slug, index]));
  const uses = components.map((component) => usedBy(allLines(component), indexOf));
  const seen = new Uint8Array(components.length);
  const makeOrder: number[] = [];
  const slugOf = (index: number): string => components[index]?.slug ?? "";

  const walk = (start: number): void => {
    const trail: { readonly index: number; next: number }[] = [{ index: start, next: 0 }];
    seen[start] = 1;
    for (let top = trail.at(-1); top !== undefined; top = trail.at(-1)) {
      const to = uses[top.index]?.[top.next];
      top.next += 1;
      if (to === undefined) {
        makeOrder.push(top.index);
        trail.pop();
      } else if (seen[to] === 0) {
        seen[to] = 1;
        trail.push({ index: to, next: 0 });
      }
    }
  };

  for (const index of usedBy(roots, indexOf)) if (seen[index] === 0) walk(index);
  const unreached = components.filter((_, index) => seen[index] === 0).map(({ slug }) => slug);
  // Faults of what no meal leads to are faults too, and a draft should hear of all its faults at once.
  const cycles = findCycles(uses).map((cycle) => [...cycle, cycle[0] ?? -1].map(slugOf));
  return { makeOrder, cycles, unreached };
}
