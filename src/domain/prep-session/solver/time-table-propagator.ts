import type { BoundTrail } from "./bound-trail.js";
import type { TaskNetwork } from "../task-network.js";

/**
 * Time-tabling for one resource: what must run at each moment (tasks whose latest start is before their earliest
 * finish) and which starts that leaves. Explanations name one moment and the tasks that fill it
 * (A. Schutt, T. Feydy, P. Stuckey, M. Wallace: Explaining the cumulative propagator, Constraints 16, 2011).
 */
export class TimeTablePropagator {
  private readonly members: Int32Array;
  private readonly need: Int32Array;
  private readonly capacity: number;
  private readonly points: Int32Array;
  private readonly segmentStart: Int32Array;
  private readonly segmentHeight: Int32Array;
  private segments = 0;

  constructor(
    private readonly network: TaskNetwork,
    resource: number,
    private readonly trail: BoundTrail,
  ) {
    const members: number[] = [];
    for (let task = 0; task < network.tasks; task++)
      if (network.demands[task * network.resources + resource]! > 0 && network.durations[task]! > 0) members.push(task);
    this.members = Int32Array.from(members);
    this.chosen = new Int32Array(members.length + 1);
    this.need = Int32Array.from(members, (task) => network.demands[task * network.resources + resource]!);
    this.capacity = network.capacities[resource]!;
    this.points = new Int32Array(2 * members.length);
    this.segmentStart = new Int32Array(2 * members.length + 1);
    this.segmentHeight = new Int32Array(2 * members.length + 1);
  }

  get tasks(): Int32Array {
    return this.members;
  }

  /** False: the resource is overfull at some moment, or a start has no room; the clash is noted. */
  propagate(): boolean {
    if (!this.buildProfile()) return false;
    if (this.segments === 0) return true;
    for (let i = 0; i < this.members.length; i++) {
      if (this.trail.isFixed(this.members[i]!)) continue;
      if (!this.pushLater(i) || !this.pushEarlier(i)) return false;
    }
    return true;
  }

  /** Segments of constant height; segment k ends where k + 1 starts. */
  private buildProfile(): boolean {
    const { members, points, trail } = this;
    const { durations } = this.network;
    let count = 0;
    for (let i = 0; i < members.length; i++) {
      const task = members[i]!;
      const start = trail.upper(task);
      const end = trail.lower(task) + durations[task]!;
      if (start >= end) continue;
      insertSorted(points, count++, start);
      insertSorted(points, count++, end);
    }
    let segments = 0;
    for (let p = 0; p < count; p++) {
      if (segments > 0 && this.segmentStart[segments - 1] === points[p]) continue;
      this.segmentStart[segments] = points[p]!;
      this.segmentHeight[segments++] = 0;
    }
    this.segments = segments;
    for (let i = 0; i < members.length; i++) {
      const task = members[i]!;
      const start = trail.upper(task);
      const end = trail.lower(task) + durations[task]!;
      if (start >= end) continue;
      let s = 0;
      while (this.segmentStart[s]! < start) s++;
      for (; this.segmentStart[s]! < end; s++) this.segmentHeight[s]! += this.need[i]!;
    }
    for (let s = 0; s < segments; s++) if (this.segmentHeight[s]! > this.capacity) return this.overfull(s);
    return true;
  }

  private overfull(segment: number): boolean {
    const { trail } = this;
    const moment = (this.segmentStart[segment]! + this.segmentStart[segment + 1]! - 1) >> 1;
    trail.noteClash();
    this.chooseFilling(-1, moment, this.capacity);
    for (let c = 0; c < this.chosenCount; c++) {
      const task = this.members[this.chosen[c]!]!;
      trail.clash.push(2 * task, moment + 1 - this.network.durations[task]!);
      trail.clash.push(2 * task + 1, -moment);
    }
    return false;
  }

  private readonly chosen: Int32Array;
  private chosenCount = 0;

  /** Picks tasks that must run at `moment` until they need more than `room`: first those fixed by the root, then large ones. */
  private chooseFilling(except: number, moment: number, room: number): void {
    const { members, trail, network } = this;
    this.chosenCount = 0;
    let sum = 0;
    for (let pass = 0; pass < 2 && sum <= room; pass++)
      for (let i = 0; i < members.length && sum <= room; i++) {
        const task = members[i]!;
        if (i === except || trail.upper(task) > moment || trail.lower(task) + network.durations[task]! <= moment)
          continue;
        const free =
          trail.holdsAtRoot(2 * task, moment + 1 - network.durations[task]!) &&
          trail.holdsAtRoot(2 * task + 1, -moment);
        if (free !== (pass === 0)) continue;
        this.chosen[this.chosenCount++] = i;
        sum += this.need[i]!;
      }
    for (let c = 0; c < this.chosenCount; c++) {
      const need = this.need[this.chosen[c]!]!;
      if (sum - need <= room) continue;
      sum -= need;
      this.chosen[c--] = this.chosen[--this.chosenCount]!;
    }
  }

  private because(i: number, moment: number): void {
    const { trail } = this;
    this.chooseFilling(i, moment, this.capacity - this.need[i]!);
    for (let c = 0; c < this.chosenCount; c++) {
      const task = this.members[this.chosen[c]!]!;
      trail.addToList(2 * task, moment + 1 - this.network.durations[task]!);
      trail.addToList(2 * task + 1, -moment);
    }
  }

  private pushLater(i: number): boolean {
    const { trail, segmentStart } = this;
    const task = this.members[i]!;
    const length = this.network.durations[task]!;
    const room = this.capacity - this.need[i]!;
    let start = trail.lower(task);
    let s = 0;
    while (s < this.segments - 1 && segmentStart[s + 1]! <= start) s++;
    for (; s < this.segments - 1; s++) {
      const ownFrom = trail.upper(task);
      if (segmentStart[s]! >= start + length || segmentStart[s]! >= ownFrom) return true;
      if (this.segmentHeight[s]! <= room) continue;
      const end = Math.min(segmentStart[s + 1]!, ownFrom + 1);
      while (start < end) {
        const moment = Math.min(end, start + length) - 1;
        trail.beginList();
        trail.addToList(2 * task, moment + 1 - length);
        this.because(i, moment);
        if (!trail.raise(2 * task, moment + 1, trail.endList())) return false;
        start = moment + 1;
      }
    }
    return true;
  }

  private pushEarlier(i: number): boolean {
    const { trail, segmentStart } = this;
    const task = this.members[i]!;
    const length = this.network.durations[task]!;
    const room = this.capacity - this.need[i]!;
    let finish = trail.upper(task) + length;
    let s = this.segments - 2;
    while (s > 0 && segmentStart[s]! >= finish) s--;
    for (; s >= 0; s--) {
      const ownUntil = trail.lower(task) + length;
      if (segmentStart[s + 1]! <= finish - length || segmentStart[s + 1]! <= ownUntil) return true;
      if (this.segmentHeight[s]! <= room || segmentStart[s]! >= finish) continue;
      const begin = Math.max(segmentStart[s]!, ownUntil - 1);
      while (finish > begin) {
        const moment = Math.max(begin, finish - length);
        trail.beginList();
        trail.addToList(2 * task + 1, -moment);
        this.because(i, moment);
        if (!trail.raise(2 * task + 1, length - moment, trail.endList())) return false;
        finish = moment;
      }
    }
    return true;
  }
}

function insertSorted(list: Int32Array, count: number, value: number): void {
  let at = count;
  while (at > 0 && list[at - 1]! > value) {
    list[at] = list[at - 1]!;
    at--;
  }
  list[at] = value;
}
