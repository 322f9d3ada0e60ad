import { unlimitedWork, type Work } from "../../counted-work.js";
import { cellsInStep, type TaskNetwork } from "../task-network.js";

/** Which way a schedule is built: from the start on, or (mirrored) from the end back. */
type Direction = "FORWARD" | "BACKWARD";

/** Cells that are set to nothing in one step. */
const cellsFilledInStep = 4_000;

interface ArcLists {
  /** Per task: the other end and the weight of each arc in and out, alternating. */
  readonly before: readonly Int32Array[];
  readonly after: readonly Int32Array[];
}

function arcLists(network: TaskNetwork, direction: Direction): ArcLists {
  const before: number[][] = Array.from({ length: network.tasks }, () => []);
  const after: number[][] = Array.from({ length: network.tasks }, () => []);
  for (let arc = 0; arc < network.arcFrom.length; arc++) {
    const [from, to, weight] = [network.arcFrom[arc]!, network.arcTo[arc]!, network.arcWeight[arc]!];
    // A greatest wait runs back; it is checked once the schedule stands, not built from.
    if (weight < 0) continue;
    const [first, second] = direction === "FORWARD" ? [from, to] : [to, from];
    const mirrored = weight + network.durations[to]! - network.durations[from]!;
    const length = direction === "FORWARD" ? weight : mirrored;
    before[second]!.push(first, length);
    after[first]!.push(second, length);
  }
  return { before: before.map((list) => Int32Array.from(list)), after: after.map((list) => Int32Array.from(list)) };
}

/**
 * Serial schedule generation: takes the tasks by priority, those they wait for first, and gives each the earliest
 * place where its resources are free. One instance keeps its arrays between schedules.
 */
export class ScheduleGenerator {
  private readonly arcs: ArcLists;
  private readonly apart: readonly Int32Array[];
  private usage: Int32Array;
  private readonly waiting: Int32Array;
  private readonly span: number;
  /** Minutes that were looked at while one schedule was built. */
  private looked = 0;

  constructor(
    private readonly network: TaskNetwork,
    direction: Direction,
    private readonly work: Work = unlimitedWork,
  ) {
    this.arcs = arcLists(network, direction);
    const apart: number[][] = Array.from({ length: network.tasks }, () => []);
    network.pairFirst.forEach((a, pair) => {
      apart[a]!.push(network.pairSecond[pair]!);
      apart[network.pairSecond[pair]!]!.push(a);
    });
    this.apart = apart.map((list) => Int32Array.from(list));
    this.span = network.horizon + 1;
    this.usage = new Int32Array(this.span * network.resources);
    this.waiting = new Int32Array(network.tasks);
  }

  /** Lower `priority` goes first. null: some task found no place before the horizon. */
  build(priority: ArrayLike<number>, releases: Int32Array | null): Int32Array | null {
    const { network, arcs, waiting } = this;
    const { tasks } = network;
    this.work.step((tasks * tasks + this.looked) / cellsInStep + this.usage.length / cellsFilledInStep + 1);
    this.looked = 0;
    this.usage.fill(0);
    const starts = new Int32Array(tasks).fill(-1);
    for (let task = 0; task < tasks; task++) waiting[task] = arcs.before[task]!.length / 2;
    for (let placed = 0; placed < tasks; placed++) {
      let next = -1;
      for (let task = 0; task < tasks; task++)
        if (starts[task]! < 0 && waiting[task] === 0 && (next < 0 || priority[task]! < priority[next]!)) next = task;
      if (next < 0) return null;
      const start = this.place(next, starts, releases);
      if (start < 0) return null;
      starts[next] = start;
      const after = arcs.after[next]!;
      for (let i = 0; i < after.length; i += 2) waiting[after[i]!]! -= 1;
    }
    return starts;
  }

  private place(task: number, starts: Int32Array, releases: Int32Array | null): number {
    const { network } = this;
    const length = network.durations[task]!;
    let start = releases === null ? 0 : releases[task]!;
    const before = this.arcs.before[task]!;
    for (let i = 0; i < before.length; i += 2) start = Math.max(start, starts[before[i]!]! + before[i + 1]!);
    for (;;) {
      const later = this.nextTry(task, start, length, starts);
      if (later === start) break;
      start = later;
    }
    if (start + length >= this.span) return -1;
    for (let resource = 0; resource < network.resources; resource++) {
      const need = network.demands[task * network.resources + resource]!;
      if (need === 0) continue;
      const row = resource * this.span;
      for (let at = start; at < start + length; at++) this.usage[row + at]! += need;
    }
    return start;
  }

  /** `start` itself if the task fits there, otherwise the first later start worth trying. */
  private nextTry(task: number, start: number, length: number, starts: Int32Array): number {
    const { network, usage } = this;
    for (let resource = 0; resource < network.resources; resource++) {
      const need = network.demands[task * network.resources + resource]!;
      if (need === 0) continue;
      const room = network.capacities[resource]! - need;
      const row = resource * this.span;
      const end = Math.min(start + length, this.span);
      this.looked += end - start;
      for (let at = end - 1; at >= start; at--) if (usage[row + at]! > room) return at + 1;
    }
    for (const other of this.apart[task]!) {
      const from = starts[other]!;
      if (from >= 0 && from < start + length && start < from + network.durations[other]!)
        return from + network.durations[other]!;
    }
    return start;
  }

  /** Priorities that make the other direction repeat this schedule, tightened: the end of each task, last first. */
  turned(starts: Int32Array): Float64Array {
    return Float64Array.from(starts, (start, task) => -(start + this.network.durations[task]!));
  }
}
