import type { InSlices, Work } from "../../counted-work.js";
import type { TaskNetwork } from "../task-network.js";
import { cellsInStep, unreachable } from "../task-network.js";

/** Earliest starts by the waits alone. */
export function earliestStarts(network: TaskNetwork): Int32Array {
  const { tasks, distance, earliest } = network;
  return Int32Array.from({ length: tasks }, (_, task) => {
    let start = earliest[task]!;
    for (let other = 0; other < tasks; other++) {
      const path = distance[other * tasks + task]!;
      if (path !== unreachable) start = Math.max(start, earliest[other]! + path);
    }
    return start;
  });
}

/** Least time from the end of each task to the finish; `unreachable` if the finish does not wait for it. */
export function tails(network: TaskNetwork): Int32Array {
  const { tasks, distance, durations, finishTasks } = network;
  return Int32Array.from({ length: tasks }, (_, task) => {
    let tail = unreachable;
    for (const last of finishTasks) {
      const path = distance[task * tasks + last]!;
      if (path !== unreachable) tail = Math.max(tail, path + durations[last]! - durations[task]!);
    }
    return tail;
  });
}

/** Work of all tasks that start at `head` or later and leave at least `tail` must fit between. */
function* energyBound(network: TaskNetwork, heads: Int32Array, tail: Int32Array, work: Work): InSlices<number> {
  const { tasks, resources, demands, durations, capacities } = network;
  let bound = 0;
  const byTail = [...heads.keys()].filter((task) => tail[task] !== unreachable).sort((a, b) => tail[b]! - tail[a]!);
  for (let resource = 0; resource < resources; resource++) {
    work.step((tasks * tasks) / cellsInStep);
    yield;
    for (let from = 0; from < tasks; from++) {
      let energy = 0;
      for (const task of byTail) {
        if (heads[task]! < heads[from]!) continue;
        energy += durations[task]! * demands[task * resources + resource]!;
        if (energy > 0) bound = Math.max(bound, heads[from]! + Math.ceil(energy / capacities[resource]!) + tail[task]!);
      }
    }
  }
  return bound;
}

/** Tasks of which no two can run together take at least as long as one after another (node packing, greedily). */
function* packingBound(network: TaskNetwork, heads: Int32Array, tail: Int32Array, work: Work): InSlices<number> {
  const { tasks, durations, distance, pairFirst, pairSecond } = network;
  const exclusive = new Uint8Array(tasks * tasks);
  for (let a = 0; a < tasks; a++)
    for (let b = 0; b < tasks; b++) if (distance[a * tasks + b]! >= durations[a]!) exclusive[a * tasks + b] = 1;
  for (let a = 0; a < tasks; a++)
    for (let b = 0; b < a; b++)
      if (exclusive[a * tasks + b] === 1) exclusive[b * tasks + a] = 1;
      else exclusive[a * tasks + b] = exclusive[b * tasks + a]!;
  pairFirst.forEach((a, pair) => {
    exclusive[a * tasks + pairSecond[pair]!] = 1;
    exclusive[pairSecond[pair]! * tasks + a] = 1;
  });
  const candidates = [...heads.keys()].filter((task) => durations[task]! > 0 && tail[task] !== unreachable);
  let bound = 0;
  for (const seed of candidates) {
    const chosen = [seed];
    const rest = candidates
      .filter((task) => exclusive[seed * tasks + task] === 1)
      .sort((a, b) => durations[b]! - durations[a]!);
    for (const task of rest)
      if (task !== seed && chosen.every((other) => exclusive[task * tasks + other] === 1)) chosen.push(task);
    work.step((rest.length * chosen.length) / cellsInStep + 1);
    yield;
    const length = chosen.reduce((sum, task) => sum + durations[task]!, 0);
    const head = Math.min(...chosen.map((task) => heads[task]!));
    bound = Math.max(bound, head + length + Math.min(...chosen.map((task) => tail[task]!)));
  }
  return bound;
}

/** A proved bound on the finish: critical path, work per resource, and tasks that exclude each other. */
export function* lowerBound(network: TaskNetwork, work: Work): InSlices<number> {
  const heads = earliestStarts(network);
  const tail = tails(network);
  let path = 0;
  for (let task = 0; task < network.tasks; task++)
    if (tail[task] !== unreachable) path = Math.max(path, heads[task]! + network.durations[task]! + tail[task]!);
  return Math.max(
    path,
    yield* energyBound(network, heads, tail, work),
    yield* packingBound(network, heads, tail, work),
  );
}
