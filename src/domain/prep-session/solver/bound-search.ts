import type { InSlices, Work } from "../../counted-work.js";
import { propagateAfterLast } from "./after-last-propagator.js";
import { BoundTrail, noReason, reasonKind } from "./bound-trail.js";
import { ClauseStore } from "./clause-store.js";
import { ConflictAnalysis } from "./conflict-analysis.js";
import type { LiteralList } from "./literal-list.js";
import { PrecedencePropagator } from "./precedence-propagator.js";
import type { TaskNetwork } from "../task-network.js";
import { TimeTablePropagator } from "./time-table-propagator.js";

/** Of what `looked` counts, how much is one step. */
const looksInStep = 40;

interface SearchLimits {
  readonly conflictLimit: number;
  readonly shouldStop: () => boolean;
  readonly work: Work;
}

/** What `BoundSearch.run` came to: no better schedule exists, or it ran out of budget. */
type SearchEnd = "PROVED" | "STOPPED";

/**
 * Branch and bound that learns from dead ends (lazy clause generation). Finds schedules of falling length until it
 * proves that there is none shorter than the last.
 */
export class BoundSearch {
  conflicts = 0;
  best: Int32Array | null = null;
  bestFinish: number;
  private readonly trail: BoundTrail;
  private readonly order: PrecedencePropagator;
  private readonly tables: TimeTablePropagator[];
  private readonly tablesOf: number[][];
  private readonly dirty: Uint8Array;
  private readonly clauses: ClauseStore;
  private readonly analysis: ConflictAnalysis;
  private readonly activity: Float64Array;
  private readonly phase: Int32Array;
  private increment = 1;
  /** Bounds and tasks that were looked at since the last turn. */
  private looked = 0;
  private head = 0;
  private maxClauses = 2000;

  /** `upperBound`: only schedules that finish earlier are looked for. */
  constructor(
    private readonly network: TaskNetwork,
    lowerBound: number,
    upperBound: number,
    start: Int32Array | null,
  ) {
    this.order = new PrecedencePropagator(network, () => this.trail);
    const { variables, finish } = this.order;
    const lower = new Int32Array(variables);
    const upper = new Int32Array(variables).fill(1);
    for (let task = 0; task < network.tasks; task++) {
      lower[task] = network.earliest[task]!;
      upper[task] = network.latest[task]!;
    }
    lower[finish] = lowerBound;
    upper[finish] = upperBound;
    this.bestFinish = upperBound + 1;
    this.trail = new BoundTrail(lower, upper);
    this.tables = Array.from({ length: network.resources }, (_, r) => new TimeTablePropagator(network, r, this.trail));
    this.tablesOf = Array.from({ length: network.tasks }, (_, task) =>
      this.tables.flatMap((table, r) => (table.tasks.includes(task) ? [r] : [])),
    );
    this.dirty = new Uint8Array(network.resources).fill(1);
    this.clauses = new ClauseStore(this.trail);
    this.activity = new Float64Array(variables);
    this.phase = new Int32Array(variables).fill(-1);
    this.analysis = new ConflictAnalysis(
      this.trail,
      (reason, bound, value, into) => this.explain(reason, bound, value, into),
      (variable) => this.bump(variable),
    );
    if (start !== null) this.remember(start);
  }

  /** The proved lower bound on the finish. Gives up the decisions made so far. */
  provedBound(): number {
    this.backTo(0);
    return Math.min(this.trail.lower(this.order.finish), this.bestFinish);
  }

  *run(limits: SearchLimits): InSlices<SearchEnd> {
    if (!this.rootPropagate()) return "PROVED";
    let restart = 0;
    for (;;) {
      const budget = 100 * luby(restart);
      const end = yield* this.descend(budget, restart % 8 === 7, limits);
      if (end !== "RESTART") return end;
      restart += 1;
      if (this.clauses.live > this.maxClauses) {
        this.trail.backTo(0);
        this.clauses.forgetHalf();
        this.maxClauses = Math.floor(this.maxClauses * 1.1);
      }
    }
  }

  private rootPropagate(): boolean {
    for (let bound = 0; bound < this.trail.value.length; bound++) if (!this.order.propagate(bound)) return false;
    return this.propagate();
  }

  private *descend(budget: number, bottomUp: boolean, limits: SearchLimits): InSlices<SearchEnd | "RESTART"> {
    this.backTo(0);
    let spent = 0;
    for (let turns = 1; ; turns++) {
      if ((turns & 15) === 0) {
        limits.work.step(this.looked / looksInStep);
        this.looked = 0;
        yield;
        if (limits.shouldStop()) return "STOPPED";
      }
      if (!this.propagate()) {
        this.conflicts += 1;
        spent += 1;
        if (!this.learn()) return "PROVED";
        continue;
      }
      if (this.conflicts >= limits.conflictLimit) return "STOPPED";
      if (spent >= budget) return "RESTART";
      if (this.decide(bottomUp)) continue;
      if (!this.accept()) return "PROVED";
    }
  }

  /** Notes the schedule found and asks for a shorter one; false if the root says there is none. */
  private accept(): boolean {
    const { trail, network, order } = this;
    const starts = Int32Array.from({ length: network.tasks }, (_, task) => trail.lower(task));
    this.best = starts;
    this.bestFinish = trail.lower(order.finish);
    for (let variable = 0; variable < order.variables; variable++) this.phase[variable] = trail.lower(variable);
    this.backTo(0);
    return trail.raise(2 * order.finish + 1, 1 - this.bestFinish, noReason);
  }

  private remember(starts: Int32Array): void {
    this.phase.set(starts);
    const { network, order } = this;
    for (let pair = 0; pair < network.pairFirst.length; pair++)
      this.phase[order.firstPair + pair] =
        starts[network.pairFirst[pair]!]! < starts[network.pairSecond[pair]!]! ? 1 : 0;
  }

  private learn(): boolean {
    if (!this.analysis.run()) return false;
    const { learned, backLevel, levels } = this.analysis;
    this.backTo(backLevel);
    const reason = this.clauses.add(learned, levels);
    this.clauses.decay();
    this.increment *= 1.1;
    if (this.increment > 1e100) {
      for (let i = 0; i < this.activity.length; i++) this.activity[i]! *= 1e-100;
      this.increment *= 1e-100;
    }
    return this.trail.raise(learned.bounds[0]!, learned.values[0]!, reason);
  }

  private backTo(level: number): void {
    this.trail.backTo(level);
    this.head = Math.min(this.head, this.trail.size);
  }

  private bump(variable: number): void {
    this.activity[variable]! += this.increment;
  }

  private explain(reason: number, bound: number, value: number, into: LiteralList): void {
    const kind = reason & 3;
    if (kind === reasonKind.clause) this.clauses.explain(reason, into);
    else if (kind === reasonKind.arc) this.order.explainArc(reason, bound, value, into);
    else if (kind === reasonKind.order) this.order.explainOrder(reason, bound, value, into);
    else this.trail.copyList(reason, into);
  }

  private propagate(): boolean {
    const { trail, network } = this;
    for (;;) {
      while (this.head < trail.size) {
        const at = this.head++;
        const bound = trail.bound[at]!;
        const variable = bound >> 1;
        this.looked += 4;
        if (variable < network.tasks) for (const r of this.tablesOf[variable]!) this.dirty[r] = 1;
        if (!this.order.propagate(bound) || !this.clauses.propagate(bound, trail.before[at]!, trail.now[at]!))
          return this.fail();
      }
      for (const wait of network.afterLast) if (!propagateAfterLast(trail, network.durations, wait)) return this.fail();
      for (let r = 0; r < this.dirty.length && this.head === trail.size; r++) {
        if (this.dirty[r] === 0) continue;
        this.dirty[r] = 0;
        this.looked += 8 * this.tables[r]!.tasks.length;
        if (!this.tables[r]!.propagate()) return this.fail();
      }
      if (this.head === trail.size) return true;
    }
  }

  private fail(): boolean {
    this.dirty.fill(0);
    this.head = this.trail.size;
    return false;
  }

  /** Opens a level with one more assumption; false if every task has its start. */
  private decide(bottomUp: boolean): boolean {
    const { trail, order } = this;
    if (bottomUp && trail.level === 0 && !trail.isFixed(order.finish)) {
      trail.openLevel();
      return trail.raise(2 * order.finish + 1, -trail.lower(order.finish), noReason);
    }
    const variable = this.pick();
    if (variable < 0) return false;
    trail.openLevel();
    const wanted = this.phase[variable]!;
    if (variable >= order.firstPair) {
      if (wanted === 1) trail.raise(2 * variable, 1, noReason);
      else trail.raise(2 * variable + 1, 0, noReason);
      return true;
    }
    const earliest = trail.lower(variable);
    trail.raise(2 * variable + 1, -(earliest + ((trail.upper(variable) - earliest) >> 2)), noReason);
    return true;
  }

  private pick(): number {
    const { trail, network, activity } = this;
    let best = -1;
    let score = -1;
    this.looked += activity.length / 4;
    for (let variable = 0; variable < activity.length; variable++) {
      if (variable === network.tasks || activity[variable]! <= score || trail.isFixed(variable)) continue;
      best = variable;
      score = activity[variable]!;
    }
    return best;
  }
}

/** The sequence 1 1 2 1 1 2 4 … of restart lengths. */
function luby(index: number): number {
  let size = 1;
  let power = 0;
  while (size < index + 1) {
    size = 2 * size + 1;
    power += 1;
  }
  let at = index;
  while (size - 1 !== at) {
    size = (size - 1) >> 1;
    power -= 1;
    at %= size;
  }
  return 2 ** power;
}
