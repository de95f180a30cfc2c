/** Whole numbers in one typed array that doubles when it is full. */
export class Numbers {
  private values: Int32Array;
  length = 0;

  constructor(expected = 16) {
    this.values = new Int32Array(Math.max(16, expected));
  }

  push(value: number): void {
    if (this.length === this.values.length) {
      const wider = new Int32Array(this.length * 2);
      wider.set(this.values);
      this.values = wider;
    }
    this.values[this.length++] = value;
  }

  at(index: number): number {
    return this.values[index]!;
  }

  toArray(): Int32Array {
    return this.values.slice(0, this.length);
  }
}
