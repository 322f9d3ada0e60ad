import type { Component } from "../model/component.js";
import type { Line } from "../model/line.js";

export interface ComponentGraph {
  /** An order to make them in: every component after those it uses. Only complete when `cycles` is empty. */
  readonly makeOrder: readonly number[];
  /** Each as slugs from a component back to itself: ["dal", "stock", "dal"]. */
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
const allLines = ({ lines, routes }: Component): readonly Line[] =>
  routes.length === 0 ? lines : [...lines, ...routes.flatMap((route) => route.lines)];

/**
 * Walks the components depth first, with a stack of its own (a chain may be thousands long), and goes on after the
 * first cycle. A component that is reached twice is no cycle.
 *
 * @param roots lines of the meals
 */
export function componentGraph(components: readonly Component[], roots: readonly Line[]): ComponentGraph {
  const indexOf = new Map(components.map(({ slug }, index) => [slug, index]));
  const uses = components.map((component) => usedBy(allLines(component), indexOf));
  const UNSEEN = 0;
  const OPEN = 1;
  const DONE = 2;
  const state = new Uint8Array(components.length);
  const makeOrder: number[] = [];
  const cycles: string[][] = [];
  const slugOf = (index: number): string => components[index]?.slug ?? "";

  const walk = (start: number): void => {
    const trail: { readonly index: number; next: number }[] = [{ index: start, next: 0 }];
    state[start] = OPEN;
    for (let top = trail.at(-1); top !== undefined; top = trail.at(-1)) {
      const to = uses[top.index]?.[top.next];
      top.next += 1;
      if (to === undefined) {
        state[top.index] = DONE;
        makeOrder.push(top.index);
        trail.pop();
      } else if (state[to] === UNSEEN) {
        state[to] = OPEN;
        trail.push({ index: to, next: 0 });
      } else if (state[to] === OPEN) {
        const from = trail.findIndex(({ index }) => index === to);
        cycles.push([...trail.slice(from).map(({ index }) => slugOf(index)), slugOf(to)]);
      }
    }
  };

  for (const index of usedBy(roots, indexOf)) if (state[index] === UNSEEN) walk(index);
  const unreached = components.filter((_, index) => state[index] === UNSEEN).map(({ slug }) => slug);
  // Their cycles are faults too, and a draft should hear of all its faults at once.
  for (let index = 0; index < components.length; index++) if (state[index] === UNSEEN) walk(index);
  return { makeOrder, cycles, unreached };
}
