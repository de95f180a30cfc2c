/** Enough for several charts; then it is begun anew, so that a long session does not grow. */
const MOST_REMEMBERED = 20_000;

/**
 * Remembers what a pure question was answered: charts repeat themselves, each way of splitting a text asks many of
 * the same, and every pair of leads asks for both its texts.
 */
export function remembering<Answer>(ask: (text: string) => Answer): (text: string) => Answer {
  const known = new Map<string, Answer>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    if (known.size >= MOST_REMEMBERED) known.clear();
    const answer = ask(text);
    known.set(text, answer);
    return answer;
  };
}
