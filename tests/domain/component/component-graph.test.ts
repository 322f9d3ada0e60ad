import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findCycles, mostCycles } from "../../../src/domain/component/cycles.js";
import { componentGraph, type ComponentGraph } from "../../../src/domain/component/component-graph.js";
import { component, line, made, of, route } from "../../kit/builders.js";

/** `{ dal: ["stock"] }`: dal takes stock. */
const graphOf = (uses: Readonly<Record<string, readonly string[]>>, eaten: readonly string[]): ComponentGraph =>
  componentGraph(
    Object.entries(uses).map(([slug, takes]) =>
      component(
        slug,
        "100 g",
        takes.map((each) => line("10 g", made(each))),
      ),
    ),
    eaten.map((each) => line("10 g", made(each))),
  );

const chain = (length: number, last: readonly string[]): Record<string, readonly string[]> =>
  Object.fromEntries(Array.from({ length }, (_, at) => [`c${at}`, at + 1 < length ? [`c${at + 1}`] : last] as const));

/** All simple cycles by trying every path: slow and plain. */
function everyCycle(edges: readonly (readonly number[])[]): string[] {
  const found = new Set<string>();
  const extend = (path: readonly number[]): void => {
    for (const to of edges[path.at(-1)!]!) {
      if (to === path[0]) found.add(path.join(" "));
      else if (to > path[0]! && !path.includes(to)) extend([...path, to]);
    }
  };
  edges.forEach((_, start) => extend([start]));
  return [...found].sort();
}

const edgesUpTo = (nodes: number) =>
  fc.array(fc.uniqueArray(fc.nat(nodes - 1), { maxLength: 4 }), { minLength: nodes, maxLength: nodes });

describe("the graph of components", () => {
  it("orders them so that each is made after what it uses", () => {
    const { makeOrder, cycles, unreached } = graphOf(
      { plate: ["sauce", "dal"], sauce: ["stock"], dal: ["stock"], stock: [] },
      ["plate"],
    );
    expect(cycles).toEqual([]);
    expect(unreached).toEqual([]);
    expect(makeOrder).toEqual([3, 1, 2, 0]);
  });

  it("takes something reached twice, or taken twice, for no cycle", () => {
    const { cycles, makeOrder } = graphOf({ a: ["b", "b", "c"], b: ["c"], c: [] }, ["a", "c", "a"]);
    expect(cycles).toEqual([]);
    expect(makeOrder).toEqual([2, 1, 0]);
  });

  it("names a cycle with every step between, back to where it began", () => {
    expect(graphOf({ a: ["b"], b: ["c"], c: ["a"] }, ["a"]).cycles).toEqual([["a", "b", "c", "a"]]);
  });

  it("names a component that takes itself", () => {
    expect(graphOf({ starter: ["starter"] }, ["starter"]).cycles).toEqual([["starter", "starter"]]);
  });

  it("goes on after the first cycle, also one that shares its steps", () => {
    expect(graphOf({ a: ["b", "c"], b: ["c"], c: ["a"], x: ["y"], y: ["x"] }, ["a"]).cycles.toSorted()).toEqual([
      ["a", "b", "c", "a"],
      ["a", "c", "a"],
      ["x", "y", "x"],
    ]);
  });

  it("finds a cycle that only another route would close", () => {
    const stock = component("stock", "1 l", [line("1 l", "water")], {
      routes: [route("lazy", [line("1 g", made("dal"))])],
    });
    const dal = component("dal", "1 kg", [line("1 l", made("stock")), line("1 g", of("salt"))]);
    const { cycles } = componentGraph([dal, stock], [line("1 g", made("dal"))]);
    expect(cycles).toEqual([["dal", "stock", "dal"]]);
  });

  it("names components that no meal leads to, and leaves them out of the order", () => {
    const { unreached, makeOrder } = graphOf({ a: [], lonely: ["friend"], friend: [] }, ["a"]);
    expect(unreached).toEqual(["lonely", "friend"]);
    expect(makeOrder).toEqual([0]);
  });

  it("passes over names that stand for nothing", () => {
    expect(graphOf({ a: ["nobody"] }, ["a", "nobody"])).toEqual({ makeOrder: [0], cycles: [], unreached: [] });
  });

  it("walks a chain of two thousand, and a ring of two thousand", () => {
    const { makeOrder, cycles } = graphOf(chain(2000, []), ["c0"]);
    expect(cycles).toEqual([]);
    expect(makeOrder).toEqual(Array.from({ length: 2000 }, (_, at) => 1999 - at));
    const ring = graphOf(chain(2000, ["c0"]), ["c0"]);
    expect(ring.cycles).toEqual([[...Array.from({ length: 2000 }, (_, at) => `c${at}`), "c0"]]);
  });
});

describe("all cycles of a graph", () => {
  it("are those that trying every path finds, each once", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }).chain(edgesUpTo), (edges) => {
        const slow = everyCycle(edges);
        const found = findCycles(edges).map((cycle) => cycle.join(" "));
        if (slow.length <= mostCycles) expect(found.toSorted()).toEqual(slow);
        else expect(found.length).toBe(mostCycles);
      }),
      { numRuns: 400 },
    );
  });

  it("are told from the first node on, also where a knot leads to a later one", () => {
    expect(findCycles([[1, 2], [0], [3], [2]])).toEqual([
      [0, 1],
      [2, 3],
    ]);
  });

  it("stop at the limit, but every knot is named", () => {
    const everybody = Array.from({ length: 9 }, (_, at) => at);
    const knot = everybody.map((node) => everybody.filter((to) => to !== node));
    const cycles = findCycles([...knot, [10], [9], [11]]);
    expect(cycles.slice(-2)).toEqual([[9, 10], [11]]);
    expect(cycles.length).toBe(mostCycles + 2);
    expect(new Set(cycles.map((cycle) => cycle.join(" "))).size).toBe(cycles.length);
  });
});
