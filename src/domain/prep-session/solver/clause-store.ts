import type { BoundTrail } from "./bound-trail.js";
import { noReason, reasonKind } from "./bound-trail.js";
import type { LiteralList } from "./literal-list.js";

/** Words before the literals of a clause: how many literals, from how many decision levels, its activity's index. */
const header = 3;

/**
 * The facts learned from dead ends (at least one of the literals "bound >= value" holds) and their propagation by two
 * watched literals. All clauses lie in one array, one after another; a clause is known by where it starts. Watches
 * are filed under the value of the opposite bound that makes the literal false, so that a rise visits only those it breaks.
 */
export class ClauseStore {
  live = 0;
  private words = new Int32Array(1 << 14);
  private used = 0;
  private readonly starts: number[] = [];
  private activities: number[] = [];
  private increment = 1;
  private watches: (number[] | undefined)[][];
  private readonly base: Int32Array;

  constructor(private readonly trail: BoundTrail) {
    this.base = trail.value.slice();
    this.watches = Array.from(trail.value, () => []);
  }

  /**
   * Stores a clause whose first literal is about to be asserted and whose second was falsified last. Returns its
   * reason code.
   */
  add(literals: LiteralList, levels: number): number {
    if (literals.size === 1) return noReason;
    const start = this.used;
    const end = start + header + 2 * literals.size;
    if (end > this.words.length) {
      const larger = new Int32Array(Math.max(end, this.words.length * 2));
      larger.set(this.words);
      this.words = larger;
    }
    this.words[start] = literals.size;
    this.words[start + 1] = levels;
    this.words[start + 2] = this.activities.length;
    for (let i = 0; i < literals.size; i++) {
      this.words[start + header + 2 * i] = literals.bounds[i]!;
      this.words[start + header + 2 * i + 1] = literals.values[i]!;
    }
    this.used = end;
    this.activities.push(this.increment);
    this.starts.push(start);
    this.watch(start, start + header);
    this.watch(start, start + header + 2);
    this.live += 1;
    return start * 4 + reasonKind.clause;
  }

  private watch(clause: number, literal: number): void {
    const opposite = this.words[literal]! ^ 1;
    const slot = 1 - this.words[literal + 1]! - this.base[opposite]!;
    const byValue = this.watches[opposite]!;
    while (byValue.length <= slot) byValue.push(undefined);
    const list = byValue[slot];
    if (list === undefined) byValue[slot] = [clause];
    else list.push(clause);
  }

  /** Every literal of the clause but the asserted one, turned round: together they force it. */
  explain(reason: number, into: LiteralList): void {
    const { words } = this;
    const clause = reason >> 2;
    this.activities[words[clause + 2]!]! += this.increment;
    const end = clause + header + 2 * words[clause]!;
    for (let at = clause + header + 2; at < end; at += 2) into.push(words[at]! ^ 1, 1 - words[at + 1]!);
  }

  /** Called when `bound` has risen from `before` to `now`. False: a clause is broken, the clash is noted. */
  propagate(bound: number, before: number, now: number): boolean {
    const byValue = this.watches[bound]!;
    const base = this.base[bound]!;
    const last = Math.min(now - base, byValue.length - 1);
    for (let slot = before - base + 1; slot <= last; slot++) {
      const list = byValue[slot];
      if (list !== undefined && list.length > 0 && !this.visit(list, bound ^ 1, 1 - slot - base)) return false;
    }
    return true;
  }

  /** The literal (`falseBound`, `falseValue`), watched by every clause of the list, has become false. */
  private visit(list: number[], falseBound: number, falseValue: number): boolean {
    const { words, trail } = this;
    const value = trail.value;
    let kept = 0;
    for (let at = 0; at < list.length; at++) {
      const clause = list[at]!;
      const first = clause + header;
      if (words[first] === falseBound && words[first + 1] === falseValue) {
        words[first] = words[first + 2]!;
        words[first + 1] = words[first + 3]!;
        words[first + 2] = falseBound;
        words[first + 3] = falseValue;
      }
      if (value[words[first]!]! >= words[first + 1]!) {
        list[kept++] = clause;
        continue;
      }
      if (this.movedWatch(clause)) continue;
      list[kept++] = clause;
      if (trail.raise(words[first]!, words[first + 1]!, clause * 4 + reasonKind.clause)) continue;
      for (at += 1; at < list.length; at++) list[kept++] = list[at]!;
      list.length = kept;
      return false;
    }
    list.length = kept;
    return true;
  }

  /** Looks for a literal that is not false to watch in place of the second. */
  private movedWatch(clause: number): boolean {
    const { words } = this;
    const value = this.trail.value;
    const second = clause + header + 2;
    const end = clause + header + 2 * words[clause]!;
    for (let at = second + 2; at < end; at += 2) {
      const bound = words[at]!;
      const wanted = words[at + 1]!;
      if (value[bound ^ 1]! >= 1 - wanted) continue;
      words[at] = words[second]!;
      words[at + 1] = words[second + 1]!;
      words[second] = bound;
      words[second + 1] = wanted;
      this.watch(clause, second);
      return true;
    }
    return false;
  }

  /** Makes what is learned from now on weigh more. */
  decay(): void {
    this.increment *= 1.001;
    if (this.increment < 1e100) return;
    this.activities = this.activities.map((activity) => activity * 1e-100);
    this.increment *= 1e-100;
  }

  /** Forgets the less useful half. Only at the root, where no clause is anybody's reason. */
  forgetHalf(): void {
    const worth = (clause: number) => this.activities[this.words[clause + 2]!]!;
    const candidates = this.starts.filter((clause) => this.words[clause + 1]! > 2).sort((a, b) => worth(a) - worth(b));
    const doomed = new Set(candidates.slice(0, candidates.length >> 1));
    const kept = this.starts.filter((clause) => !doomed.has(clause));
    const activities = kept.map(worth);
    this.watches = Array.from(this.trail.value, () => []);
    this.used = 0;
    this.starts.length = 0;
    kept.forEach((clause, index) => {
      const length = header + 2 * this.words[clause]!;
      this.words.copyWithin(this.used, clause, clause + length);
      this.words[this.used + 2] = index;
      this.starts.push(this.used);
      this.used += length;
    });
    this.activities = activities;
    this.live = kept.length;
    for (const clause of this.starts) this.rewatch(clause);
  }

  /** After compaction the first two literals may be false at the root already; then others must be watched. */
  private rewatch(clause: number): void {
    const { words } = this;
    const value = this.trail.value;
    const first = clause + header;
    const end = first + 2 * words[clause]!;
    let open = first;
    for (let at = first; at < end && open < first + 4; at += 2) {
      if (value[words[at]! ^ 1]! >= 1 - words[at + 1]!) continue;
      const [bound, wanted] = [words[at]!, words[at + 1]!];
      words[at] = words[open]!;
      words[at + 1] = words[open + 1]!;
      words[open] = bound;
      words[open + 1] = wanted;
      open += 2;
    }
    this.watch(clause, first);
    this.watch(clause, first + 2);
  }
}
