import { LiteralList } from "./literal-list.js";

/**
 * Every variable has two bounds, `2 * variable` for its least value and `2 * variable + 1` for the negative of its
 * greatest, so that both only ever rise and a fact is always "bound >= value". The opposite of (bound, value) is
 * (bound ^ 1, 1 - value). The trail remembers each rise with its reason, to undo it and to explain it.
 */

/** Reasons are packed as payload * 4 + kind; a decision or a fact of the root has none. */
export const noReason = -1;
export const reasonKind = { clause: 0, arc: 1, order: 2, list: 3 } as const;

const grown = (old: Int32Array): Int32Array<ArrayBuffer> => {
  const larger = new Int32Array(old.length * 2);
  larger.set(old);
  return larger;
};

export class BoundTrail {
  readonly value: Int32Array;
  /** Trail index of the latest rise of each bound; -1: still as at the start. */
  readonly top: Int32Array;
  bound = new Int32Array(1024);
  now = new Int32Array(1024);
  before = new Int32Array(1024);
  below = new Int32Array(1024);
  reason = new Int32Array(1024);
  levelOf = new Int32Array(1024);
  size = 0;
  level = 0;
  /** The contradiction that stopped propagation: literals that cannot all hold. */
  readonly clash = new LiteralList();
  /** Or a rise that met the opposite bound: its bound (-1 if `clash` is complete), value and reason. */
  clashBound = -1;
  clashValue = 0;
  clashReason = noReason;
  private readonly levelStart: number[] = [0];
  private readonly listStart: number[] = [0];
  private lists = new Int32Array(4096);
  private listsSize = 0;
  private openList = 0;

  constructor(lower: Int32Array, upper: Int32Array) {
    this.value = new Int32Array(lower.length * 2);
    this.top = new Int32Array(lower.length * 2).fill(-1);
    for (let variable = 0; variable < lower.length; variable++) {
      this.value[2 * variable] = lower[variable]!;
      this.value[2 * variable + 1] = -upper[variable]!;
    }
  }

  lower(variable: number): number {
    return this.value[2 * variable]!;
  }

  upper(variable: number): number {
    return -this.value[2 * variable + 1]!;
  }

  isFixed(variable: number): boolean {
    return this.value[2 * variable]! + this.value[2 * variable + 1]! === 0;
  }

  /** Raises a bound; false, with the clash noted, if it would pass its opposite. */
  raise(bound: number, value: number, reason: number): boolean {
    const old = this.value[bound]!;
    if (value <= old) return true;
    if (value + this.value[bound ^ 1]! > 0) {
      this.clashBound = bound;
      this.clashValue = value;
      this.clashReason = reason;
      return false;
    }
    const at = this.size;
    if (at === this.bound.length) this.grow();
    this.bound[at] = bound;
    this.now[at] = value;
    this.before[at] = old;
    this.below[at] = this.top[bound]!;
    this.reason[at] = reason;
    this.levelOf[at] = this.level;
    this.value[bound] = value;
    this.top[bound] = at;
    this.size = at + 1;
    return true;
  }

  private grow(): void {
    this.bound = grown(this.bound);
    this.now = grown(this.now);
    this.before = grown(this.before);
    this.below = grown(this.below);
    this.reason = grown(this.reason);
    this.levelOf = grown(this.levelOf);
  }

  /** Trail index of the rise that first made `bound >= value` hold; -1 if it always did. */
  riseOf(bound: number, value: number): number {
    let at = this.top[bound]!;
    while (at >= 0 && this.before[at]! >= value) at = this.below[at]!;
    return at;
  }

  /** Whether the literal holds whatever is decided. */
  holdsAtRoot(bound: number, value: number): boolean {
    const at = this.riseOf(bound, value);
    return at < 0 || this.levelOf[at] === 0;
  }

  openLevel(): void {
    this.levelStart.push(this.size);
    this.listStart.push(this.listsSize);
    this.level += 1;
  }

  backTo(level: number): void {
    if (level >= this.level) return;
    const start = this.levelStart[level + 1]!;
    for (let at = this.size - 1; at >= start; at--) {
      const bound = this.bound[at]!;
      this.value[bound] = this.before[at]!;
      this.top[bound] = this.below[at]!;
    }
    this.size = start;
    this.listsSize = this.listStart[level + 1]!;
    this.levelStart.length = level + 1;
    this.listStart.length = level + 1;
    this.level = level;
  }

  /** Starts a reason given as a list of literals; lists go when their level is undone. */
  beginList(): void {
    this.openList = this.listsSize;
    this.listsSize += 1;
  }

  addToList(bound: number, value: number): void {
    if (this.listsSize + 2 >= this.lists.length) this.lists = grown(this.lists);
    this.lists[this.listsSize] = bound;
    this.lists[this.listsSize + 1] = value;
    this.listsSize += 2;
  }

  /** Closes the list and gives the reason that stands for it. */
  endList(): number {
    if (this.openList >= this.lists.length) this.lists = grown(this.lists);
    this.lists[this.openList] = this.listsSize - this.openList - 1;
    return this.openList * 4 + reasonKind.list;
  }

  copyList(reason: number, into: LiteralList): void {
    const start = (reason >> 2) + 1;
    const end = start + this.lists[start - 1]!;
    for (let at = start; at < end; at += 2) into.push(this.lists[at]!, this.lists[at + 1]!);
  }

  noteClash(): void {
    this.clash.clear();
    this.clashBound = -1;
  }
}
