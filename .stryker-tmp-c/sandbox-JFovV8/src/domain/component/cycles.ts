/** Cycles that are named; a knot of components can hold more of them than anybody would read. */
// @ts-nocheck

export const mostCycles = 100;

type EdgesOf = (node: number) => readonly number[];

/**
 * Strongly connected groups of more than one node, or of one that leads to itself, in ascending order (Tarjan's
 * algorithm, with a stack of its own: a chain may be thousands long).
 */
function knots(nodes: readonly number[], edgesOf: EdgesOf): readonly (readonly number[])[] {
  const found: number[][] = [];
  const order = new Map<number, number>();
  const lowest = new Map<number, number>();
  const open: number[] = [];
  const isOpen = new Set<number>();
  const lower = (node: number, to: number): void => {
    lowest.set(node, Math.min(lowest.get(node)!, to));
  };
  const enter = (node: number): { node: number; next: number } => {
    lowest.set(node, order.size);
    order.set(node, order.size);
    open.push(node);
    isOpen.add(node);
    return { node, next: 0 };
  };
  const leave = (node: number): void => {
    if (lowest.get(node) !== order.get(node)) return;
    const group = open.splice(open.lastIndexOf(node));
    for (const each of group) isOpen.delete(each);
    if (group.length > 1 || edgesOf(node).includes(node)) found.push(group.toSorted((a, b) => a - b));
  };
  for (const start of nodes) {
    if (order.has(start)) continue;
    const trail = [enter(start)];
    for (let top = trail.at(-1); top !== undefined; top = trail.at(-1)) {
      const to = edgesOf(top.node)[top.next];
      top.next += 1;
      if (to === undefined) {
        trail.pop();
        const below = trail.at(-1);
        if (below !== undefined) lower(below.node, lowest.get(top.node)!);
        leave(top.node);
      } else if (!order.has(to)) trail.push(enter(to));
      else if (isOpen.has(to)) lower(top.node, order.get(to)!);
    }
  }
  return found.toSorted((a, b) => a[0]! - b[0]!);
}

/** Every cycle through `start` among the allowed nodes (Johnson's algorithm, one start of it), up to `most`. */
function cyclesFrom(start: number, edgesOf: EdgesOf, most: number): number[][] {
  const cycles: number[][] = [];
  const blocked = new Set<number>();
  const waiting = new Map<number, Set<number>>();
  const unblock = (node: number): void => {
    const freed = [node];
    for (let each = freed.pop(); each !== undefined; each = freed.pop()) {
      if (!blocked.delete(each)) continue;
      freed.push(...(waiting.get(each) ?? []));
      waiting.delete(each);
    }
  };
  const trail: { node: number; next: number; closed: boolean }[] = [{ node: start, next: 0, closed: false }];
  blocked.add(start);
  for (let top = trail.at(-1); top !== undefined && cycles.length < most; top = trail.at(-1)) {
    const to = edgesOf(top.node)[top.next];
    top.next += 1;
    if (to === start) {
      cycles.push(trail.map(({ node }) => node));
      top.closed = true;
    } else if (to !== undefined && !blocked.has(to)) {
      blocked.add(to);
      trail.push({ node: to, next: 0, closed: false });
    } else if (to === undefined) {
      trail.pop();
      const below = trail.at(-1);
      if (top.closed) {
        unblock(top.node);
        if (below !== undefined) below.closed = true;
      } else {
        for (const next of edgesOf(top.node)) {
          waiting.set(next, (waiting.get(next) ?? new Set()).add(top.node));
        }
      }
    }
  }
  return cycles;
}

/**
 * Every way round through a graph, as node indexes without the return to the first; each once, from its lowest index on,
 * up to `mostCycles`. Every knot is named at least once, however large the one before it.
 *
 * @param edges for each node, the nodes it leads to, each once
 */
export function findCycles(edges: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const cycles: number[][] = [];
  const all = edges.map((_, node) => node);
  for (const whole of knots(all, (node) => edges[node]!)) {
    const open: (readonly number[])[] = [whole];
    for (let knot = open.shift(); knot !== undefined; knot = open.shift()) {
      const room = mostCycles - cycles.length;
      if (room <= 0 && knot !== whole) break;
      const inside = new Set(knot);
      const within: EdgesOf = (node) => edges[node]!.filter((to) => inside.has(to));
      const [start, ...rest] = knot;
      cycles.push(...cyclesFrom(start!, within, Math.max(1, room)));
      // What is left without the start may still be knotted.
      inside.delete(start!);
      open.unshift(...knots(rest, within));
    }
  }
  return cycles;
}
