import type { BoundTrail } from "./bound-trail.js";
import { reasonKind } from "./bound-trail.js";
import type { LiteralList } from "./literal-list.js";
import type { TaskNetwork } from "../task-network.js";

/**
 * Waits between starts, and pairs that must not overlap. Each pair has a variable of its own: 1 puts the first task
 * before the second, 0 the other way round. Variables: tasks, the finish, then the pairs.
 */
export class PrecedencePropagator {
  readonly finish: number;
  readonly firstPair: number;
  readonly variables: number;
  private readonly from: Int32Array;
  private readonly to: Int32Array;
  private readonly weight: Int32Array;
  private readonly arcsOut: Int32Array[];
  private readonly arcsIn: Int32Array[];
  private readonly pairsAt: Int32Array[];

  constructor(
    private readonly network: TaskNetwork,
    private readonly trail: () => BoundTrail,
  ) {
    this.finish = network.tasks;
    this.firstPair = network.tasks + 1;
    this.variables = this.firstPair + network.pairFirst.length;
    const last = [...network.finishTasks];
    this.from = Int32Array.from([...network.arcFrom, ...last]);
    this.to = Int32Array.from([...network.arcTo, ...last.map(() => this.finish)]);
    this.weight = Int32Array.from([...network.arcWeight, ...last.map((task) => network.durations[task]!)]);
    const bucket = (ends: ArrayLike<number>[]): Int32Array[] => {
      const lists: number[][] = Array.from({ length: this.firstPair }, () => []);
      for (const end of ends) for (let i = 0; i < end.length; i++) lists[end[i]!]!.push(i);
      return lists.map((list) => Int32Array.from(list));
    };
    this.arcsOut = bucket([this.from]);
    this.arcsIn = bucket([this.to]);
    this.pairsAt = bucket([network.pairFirst, network.pairSecond]);
  }

  /** Carries one risen bound on. */
  propagate(bound: number): boolean {
    const variable = bound >> 1;
    if (variable >= this.firstPair) return this.order(variable - this.firstPair);
    const trail = this.trail();
    const value = trail.value[bound]!;
    const lower = (bound & 1) === 0;
    const arcs = (lower ? this.arcsOut : this.arcsIn)[variable]!;
    const ends = lower ? this.to : this.from;
    for (let i = 0; i < arcs.length; i++) {
      const arc = arcs[i]!;
      const target = 2 * ends[arc]! + (bound & 1);
      if (!trail.raise(target, value + this.weight[arc]!, arc * 4 + reasonKind.arc)) return false;
    }
    const pairs = this.pairsAt[variable]!;
    for (let i = 0; i < pairs.length; i++) if (!this.order(pairs[i]!)) return false;
    return true;
  }

  private order(pair: number): boolean {
    const trail = this.trail();
    const variable = this.firstPair + pair;
    const first = this.network.pairFirst[pair]!;
    const second = this.network.pairSecond[pair]!;
    if (!trail.isFixed(variable)) {
      if (!this.mayPrecede(first, second, 2 * variable + 1, 0)) return false;
      if (!this.mayPrecede(second, first, 2 * variable, 1)) return false;
      if (!trail.isFixed(variable)) return true;
    }
    const firstLeads = trail.lower(variable) === 1;
    const [before, after] = firstLeads ? [first, second] : [second, first];
    const length = this.network.durations[before]!;
    const reason = (pair * 2 + (firstLeads ? 1 : 0)) * 4 + reasonKind.order;
    return (
      trail.raise(2 * after, trail.lower(before) + length, reason) &&
      trail.raise(2 * before + 1, length - trail.upper(after), reason)
    );
  }

  /** If `before` can no longer end by the latest start of `after`, raises the bound that says so. */
  private mayPrecede(before: number, after: number, bound: number, value: number): boolean {
    const trail = this.trail();
    const length = this.network.durations[before]!;
    const latest = trail.upper(after);
    if (trail.lower(before) + length <= latest) return true;
    trail.beginList();
    trail.addToList(2 * before, latest - length + 1);
    trail.addToList(2 * after + 1, -latest);
    return trail.raise(bound, value, trail.endList());
  }

  explainArc(reason: number, bound: number, value: number, into: LiteralList): void {
    const arc = reason >> 2;
    const other = (bound & 1) === 0 ? this.from[arc]! : this.to[arc]!;
    into.push(2 * other + (bound & 1), value - this.weight[arc]!);
  }

  explainOrder(reason: number, bound: number, value: number, into: LiteralList): void {
    const code = reason >> 2;
    const pair = code >> 1;
    const firstLeads = (code & 1) === 1;
    const first = this.network.pairFirst[pair]!;
    const second = this.network.pairSecond[pair]!;
    const [before, after] = firstLeads ? [first, second] : [second, first];
    const other = (bound & 1) === 0 ? before : after;
    into.push(2 * other + (bound & 1), value - this.network.durations[before]!);
    const variable = this.firstPair + pair;
    if (firstLeads) into.push(2 * variable, 1);
    else into.push(2 * variable + 1, 0);
  }
}
