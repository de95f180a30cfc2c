import type { Score } from "./score.ts";

/** What the corpus asks of reading and matching, in shares of 1. */
const TARGETS = { rowsRight: 0.99, joinsWrong: 0.002, sureMade: 0.95 } as const;

/** Says which targets a score misses; none where it reaches them all. */
export function missedTargets(sum: Score): string[] {
  const missed: string[] = [];
  const rows = sum.rowsRight / sum.rows;
  if (rows < TARGETS.rowsRight) missed.push(`rows right ${rows.toFixed(4)}, not ${TARGETS.rowsRight}`);
  if (sum.joinsWrongOnPower > 0) missed.push(`${sum.joinsWrongOnPower} wrong joins on power leads, not 0`);
  const wrong = sum.joinsWrong / (sum.joinsMade || 1);
  if (wrong > TARGETS.joinsWrong) missed.push(`joins wrong ${wrong.toFixed(4)}, not ${TARGETS.joinsWrong}`);
  const made = sum.sureMade / sum.joinsSure;
  if (made < TARGETS.sureMade)
    missed.push(`joins right without asking ${made.toFixed(4)}, not ${TARGETS.sureMade}`);
  return missed;
}
