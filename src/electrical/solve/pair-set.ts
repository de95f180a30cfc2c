/** A set of pairs of small whole numbers, by open addressing: the joined pairs of a graph that grows. */
export class PairSet {
  private keys: Float64Array;
  private mask: number;
  private count = 0;

  constructor(expected: number) {
    const size = 2 ** Math.ceil(Math.log2(Math.max(16, expected * 2)));
    this.keys = new Float64Array(size).fill(-1);
    this.mask = size - 1;
  }

  /** Adds the pair, in either order. @returns whether it was new */
  add(one: number, other: number): boolean {
    const low = Math.min(one, other);
    const high = Math.max(one, other);
    // Exact up to 2^53: room for sixty million nodes.
    const key = low * 0x8000000 + high;
    const slot = this.find(low, high, key);
    if (this.keys[slot] === key) return false;
    this.keys[slot] = key;
    if (++this.count * 2 > this.mask) this.grow();
    return true;
  }

  private find(low: number, high: number, key: number): number {
    let hash = Math.imul(low, 0x9e3779b1) ^ Math.imul(high, 0x85ebca6b);
    hash ^= hash >>> 15;
    let slot = hash & this.mask;
    while (this.keys[slot] !== -1 && this.keys[slot] !== key) slot = (slot + 1) & this.mask;
    return slot;
  }

  private grow(): void {
    const old = this.keys;
    this.keys = new Float64Array(old.length * 2).fill(-1);
    this.mask = this.keys.length - 1;
    for (const key of old) {
      if (key === -1) continue;
      const high = key % 0x8000000;
      this.keys[this.find((key - high) / 0x8000000, high, key)] = key;
    }
  }
}
