import type { BoundTrail } from "./bound-trail.js";
import { noReason } from "./bound-trail.js";
import { LiteralList } from "./literal-list.js";

/** Adds literals that together forced `bound >= value`, for the reason given. */
type Explain = (reason: number, bound: number, value: number, into: LiteralList) => void;

/**
 * Learns from a clash: walks back along the trail until one literal of the last decision level is left (the first
 * unique implication point), on bounds instead of propositions; two needs on one bound merge into the stronger.
 */
export class ConflictAnalysis {
  /** The learned clause: the literal to assert first, then the one falsified last. */
  readonly learned = new LiteralList();
  /** The level at which the learned clause asserts. */
  backLevel = 0;
  /** How many decision levels the clause spans. */
  levels = 0;
  private readonly need: Int32Array;
  private readonly at: Int32Array;
  private readonly touched: number[] = [];
  private readonly scratch = new LiteralList();
  private current = 0;
  private open = 0;

  constructor(
    private readonly trail: BoundTrail,
    private readonly explain: Explain,
    private readonly bump: (variable: number) => void,
  ) {
    this.need = new Int32Array(trail.value.length);
    this.at = new Int32Array(trail.value.length).fill(-1);
  }

  /** False: the clash holds at the root, so there is no (better) schedule. */
  run(): boolean {
    const { trail, scratch } = this;
    scratch.clear();
    if (trail.clashBound >= 0) {
      if (trail.clashReason !== noReason) this.explain(trail.clashReason, trail.clashBound, trail.clashValue, scratch);
      scratch.push(trail.clashBound ^ 1, 1 - trail.clashValue);
    } else for (let i = 0; i < trail.clash.size; i++) scratch.push(trail.clash.bounds[i]!, trail.clash.values[i]!);
    this.current = this.deepestLevel();
    if (this.current === 0) return false;
    this.open = 0;
    this.absorb();
    const last = this.resolve();
    this.collect(last);
    return true;
  }

  private deepestLevel(): number {
    let deepest = 0;
    for (let i = 0; i < this.scratch.size; i++) {
      const at = this.trail.riseOf(this.scratch.bounds[i]!, this.scratch.values[i]!);
      if (at >= 0) deepest = Math.max(deepest, this.trail.levelOf[at]!);
    }
    return deepest;
  }

  private absorb(): void {
    const { trail, scratch } = this;
    for (let i = 0; i < scratch.size; i++) {
      const bound = scratch.bounds[i]!;
      const value = scratch.values[i]!;
      const old = this.at[bound]!;
      if (old >= 0 && this.need[bound]! >= value) continue;
      const at = trail.riseOf(bound, value);
      if (at < 0 || trail.levelOf[at] === 0) continue;
      if (old < 0) {
        this.touched.push(bound);
        this.bump(bound >> 1);
      }
      if (trail.levelOf[at] === this.current && (old < 0 || trail.levelOf[old]! < this.current)) this.open += 1;
      this.need[bound] = value;
      this.at[bound] = at;
    }
  }

  /** Replaces literals of the current level by their reasons until one is left; gives its bound. */
  private resolve(): number {
    const { trail, scratch } = this;
    for (let at = trail.size - 1; ; at--) {
      const bound = trail.bound[at]!;
      if (this.at[bound] !== at) continue;
      if (this.open === 1) return bound;
      this.at[bound] = -1;
      this.open -= 1;
      scratch.clear();
      this.explain(trail.reason[at]!, bound, this.need[bound]!, scratch);
      this.absorb();
    }
  }

  private collect(last: number): void {
    const { trail, learned } = this;
    learned.clear();
    learned.push(last ^ 1, 1 - this.need[last]!);
    this.backLevel = 0;
    const levelsSeen = new Set<number>([this.current]);
    for (const bound of new Set(this.touched)) {
      const at = this.at[bound]!;
      if (at < 0 || bound === last || this.impliedByOthers(bound)) continue;
      const level = trail.levelOf[at]!;
      levelsSeen.add(level);
      learned.push(bound ^ 1, 1 - this.need[bound]!);
      if (level <= this.backLevel) continue;
      this.backLevel = level;
      this.swap(1, learned.size - 1);
    }
    this.levels = levelsSeen.size;
    for (const bound of this.touched) this.at[bound] = -1;
    this.touched.length = 0;
  }

  private swap(a: number, b: number): void {
    const { bounds, values } = this.learned;
    [bounds[a], bounds[b]] = [bounds[b]!, bounds[a]!];
    [values[a], values[b]] = [values[b]!, values[a]!];
  }

  /** Whether the rest of the clause already forces this literal, so that it can be left out. */
  private impliedByOthers(bound: number): boolean {
    const { trail, scratch } = this;
    const at = this.at[bound]!;
    if (trail.reason[at] === noReason) return false;
    scratch.clear();
    this.explain(trail.reason[at]!, bound, this.need[bound]!, scratch);
    for (let i = 0; i < scratch.size; i++) {
      const other = scratch.bounds[i]!;
      const value = scratch.values[i]!;
      // Only literals from before it: two that each lean on the other's later rise would otherwise both go.
      if (this.at[other]! >= 0 && this.at[other]! < at && this.need[other]! >= value) continue;
      if (trail.holdsAtRoot(other, value)) continue;
      return false;
    }
    return true;
  }
}
