/** Which circles are near enough to touch soon; made anew only when one has moved far enough to matter. */
export class Pairs {
  first = new Int32Array(64);
  second = new Int32Array(64);
  count = 0;
  readonly #r: Float64Array;
  readonly #skin: number;
  #madeAt: Float64Array | null = null;

  constructor(r: Float64Array) {
    this.#r = r;
    let sum = 0;
    for (const one of r) sum += one;
    this.#skin = (0.7 * sum) / Math.max(1, r.length);
  }

  /** @param at centres: n times x, then n times y */
  near(at: Float64Array): this {
    if (!this.#madeAt || this.#moved(at)) this.#make(at);
    return this;
  }

  #moved(at: Float64Array): boolean {
    const n = this.#r.length;
    const limit = (this.#skin / 2) ** 2;
    const made = this.#madeAt!;
    for (let i = 0; i < n; i++) {
      const dx = at[i]! - made[i]!;
      const dy = at[n + i]! - made[n + i]!;
      if (dx * dx + dy * dy > limit) return true;
    }
    return false;
  }

  #make(at: Float64Array): void {
    const n = this.#r.length;
    this.count = 0;
    for (let i = 1; i < n; i++) {
      const x = at[i]!;
      const y = at[n + i]!;
      const room = this.#r[i]! + this.#skin;
      for (let j = 0; j < i; j++) {
        const dx = x - at[j]!;
        const dy = y - at[n + j]!;
        const sum = room + this.#r[j]!;
        if (dx * dx + dy * dy < sum * sum) this.#push(i, j);
      }
    }
    this.#madeAt = at.slice();
  }

  #push(i: number, j: number): void {
    if (this.count === this.first.length) {
      this.first = doubled(this.first);
      this.second = doubled(this.second);
    }
    this.first[this.count] = i;
    this.second[this.count] = j;
    this.count++;
  }
}

function doubled(list: Int32Array): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(list.length * 2);
  larger.set(list);
  return larger;
}
