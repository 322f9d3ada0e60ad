/** A growing list of literals `bound >= value`, reused so that the search does not allocate. */
export class LiteralList {
  bounds = new Int32Array(64);
  values = new Int32Array(64);
  size = 0;

  clear(): void {
    this.size = 0;
  }

  push(bound: number, value: number): void {
    if (this.size === this.bounds.length) {
      const bounds = new Int32Array(this.size * 2);
      const values = new Int32Array(this.size * 2);
      bounds.set(this.bounds);
      values.set(this.values);
      this.bounds = bounds;
      this.values = values;
    }
    this.bounds[this.size] = bound;
    this.values[this.size] = value;
    this.size += 1;
  }
}
