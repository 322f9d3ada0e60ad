/** A binary heap of numbered labels: the least first key leaves first, then the least second, then the oldest. */
// @ts-nocheck

export class LabelQueue {
  private readonly labels: number[] = [];
  private readonly firsts: number[] = [];
  private readonly seconds: number[] = [];

  push(label: number, first: number, second: number): void {
    let at = this.labels.length;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!this.comesBefore(first, second, label, above)) break;
      this.move(above, at);
      at = above;
    }
    this.put(at, label, first, second);
  }

  /** null when empty. */
  pop(): number | null {
    const top = this.labels[0];
    if (top === undefined) return null;
    const label = this.labels.pop()!;
    const [first, second] = [this.firsts.pop()!, this.seconds.pop()!];
    const size = this.labels.length;
    if (size === 0) return top;
    let at = 0;
    for (let below = 1; below < size; below = 2 * at + 1) {
      if (below + 1 < size && this.before(below + 1, below)) below += 1;
      if (this.comesBefore(first, second, label, below)) break;
      this.move(below, at);
      at = below;
    }
    this.put(at, label, first, second);
    return top;
  }

  private before(a: number, b: number): boolean {
    return this.comesBefore(this.firsts[a]!, this.seconds[a]!, this.labels[a]!, b);
  }

  private comesBefore(first: number, second: number, label: number, other: number): boolean {
    const [otherFirst, otherSecond] = [this.firsts[other]!, this.seconds[other]!];
    if (first !== otherFirst) return first < otherFirst;
    return second !== otherSecond ? second < otherSecond : label < this.labels[other]!;
  }

  private move(from: number, to: number): void {
    this.put(to, this.labels[from]!, this.firsts[from]!, this.seconds[from]!);
  }

  private put(at: number, label: number, first: number, second: number): void {
    this.labels[at] = label;
    this.firsts[at] = first;
    this.seconds[at] = second;
  }
}
