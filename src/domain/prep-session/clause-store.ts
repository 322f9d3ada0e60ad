import type { BoundTrail } from "./bound-trail.js";
import { noReason, reasonKind } from "./bound-trail.js";
import type { LiteralList } from "./literal-list.js";

/** At least one of the literals `bounds[i] >= values[i]` holds. The first two are watched. */
interface Clause {
  readonly bounds: Int32Array;
  readonly values: Int32Array;
  activity: number;
  /** Decision levels its literals came from: the fewer, the more it is worth keeping. */
  readonly levels: number;
  dead: boolean;
}

interface WatchList {
  clauses: number[];
  /** The watched literal is false once the opposite bound reaches this. */
  thresholds: number[];
}

/** The facts learned from dead ends, and their propagation by two watched literals. */
export class ClauseStore {
  private readonly clauses: Clause[] = [];
  private readonly free: number[] = [];
  private readonly watches: WatchList[];
  private increment = 1;
  live = 0;

  constructor(private readonly trail: BoundTrail) {
    this.watches = Array.from(trail.value, () => ({ clauses: [], thresholds: [] }));
  }

  /**
   * Stores a clause whose first literal is about to be asserted and whose second was falsified last. Returns its
   * reason code.
   */
  add(literals: LiteralList, levels: number): number {
    if (literals.size === 1) return noReason;
    const clause: Clause = {
      bounds: literals.bounds.slice(0, literals.size),
      values: literals.values.slice(0, literals.size),
      activity: this.increment,
      levels,
      dead: false,
    };
    const id = this.free.pop() ?? this.clauses.length;
    this.clauses[id] = clause;
    this.watch(id, clause.bounds[0]!, clause.values[0]!);
    this.watch(id, clause.bounds[1]!, clause.values[1]!);
    this.live += 1;
    return id * 4 + reasonKind.clause;
  }

  private watch(id: number, bound: number, value: number): void {
    const list = this.watches[bound ^ 1]!;
    list.clauses.push(id);
    list.thresholds.push(1 - value);
  }

  /** Every literal of the clause but the asserted one, turned round: together they force it. */
  explain(reason: number, into: LiteralList): void {
    const clause = this.clauses[reason >> 2]!;
    clause.activity += this.increment;
    for (let i = 1; i < clause.bounds.length; i++) into.push(clause.bounds[i]! ^ 1, 1 - clause.values[i]!);
  }

  /** Called once `bound` has risen: moves watches or asserts. False: a clause is broken, the clash is noted. */
  propagate(bound: number): boolean {
    const { trail } = this;
    const list = this.watches[bound]!;
    const { clauses, thresholds } = list;
    const now = trail.value[bound]!;
    let kept = 0;
    for (let at = 0; at < clauses.length; at++) {
      const threshold = thresholds[at]!;
      const id = clauses[at]!;
      if (threshold > now) {
        clauses[kept] = id;
        thresholds[kept++] = threshold;
        continue;
      }
      const clause = this.clauses[id]!;
      if (clause.dead) continue;
      if (this.movedWatch(clause, id, bound, threshold)) continue;
      clauses[kept] = id;
      thresholds[kept++] = threshold;
      if (trail.value[clause.bounds[0]!]! >= clause.values[0]!) continue;
      if (trail.raise(clause.bounds[0]!, clause.values[0]!, id * 4 + reasonKind.clause)) continue;
      for (at += 1; at < clauses.length; at++) {
        clauses[kept] = clauses[at]!;
        thresholds[kept++] = thresholds[at]!;
      }
      clauses.length = kept;
      thresholds.length = kept;
      return false;
    }
    clauses.length = kept;
    thresholds.length = kept;
    return true;
  }

  /** Puts the false literal second and looks for another that is not false. True: this watch moved away. */
  private movedWatch(clause: Clause, id: number, bound: number, threshold: number): boolean {
    const { bounds, values } = clause;
    const value = this.trail.value;
    const falseBound = bound ^ 1;
    const falseValue = 1 - threshold;
    if (bounds[0] === falseBound && values[0] === falseValue) {
      bounds[0] = bounds[1]!;
      values[0] = values[1]!;
      bounds[1] = falseBound;
      values[1] = falseValue;
    }
    if (value[bounds[0]!]! >= values[0]!) return false;
    for (let i = 2; i < bounds.length; i++) {
      if (value[bounds[i]! ^ 1]! >= 1 - values[i]!) continue;
      bounds[1] = bounds[i]!;
      values[1] = values[i]!;
      bounds[i] = falseBound;
      values[i] = falseValue;
      this.watch(id, bounds[1]!, values[1]!);
      return true;
    }
    return false;
  }

  /** Makes what is learned from now on weigh more. */
  decay(): void {
    this.increment *= 1.001;
    if (this.increment < 1e100) return;
    for (const clause of this.clauses) clause.activity *= 1e-100;
    this.increment *= 1e-100;
  }

  /** Forgets the less useful half. Only at the root, where no clause is anybody's reason. */
  forgetHalf(): void {
    const candidates = this.clauses
      .map((clause, id) => ({ clause, id }))
      .filter(({ clause }) => !clause.dead && clause.levels > 2)
      .sort((a, b) => a.clause.activity - b.clause.activity);
    for (const { clause } of candidates.slice(0, candidates.length >> 1)) {
      clause.dead = true;
      this.live -= 1;
    }
    this.sweep();
  }

  private sweep(): void {
    for (const list of this.watches) {
      const { clauses, thresholds } = list;
      let kept = 0;
      for (let at = 0; at < clauses.length; at++) {
        if (this.clauses[clauses[at]!]!.dead) continue;
        clauses[kept] = clauses[at]!;
        thresholds[kept++] = thresholds[at]!;
      }
      clauses.length = kept;
      thresholds.length = kept;
    }
    this.free.length = 0;
    this.clauses.forEach((clause, id) => {
      if (clause.dead) this.free.push(id);
    });
  }
}
