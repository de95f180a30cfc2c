/** A small generator of numbers from 0 to 1 (xorshift, 32 bits): the same seed gives the same row on any machine. */
export function seeded(seed: number): () => number {
  let state = seed | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 4294967296;
  };
}
