import type { Harness } from "../../graph/harness.ts";
import type { GroupId } from "../groups.ts";
import type { Build } from "./build.ts";

/** What the page of a rule shows besides what the rule says of itself. */
export type RuleExample = {
  /** Two to five sentences for a beginner: what is meant, how it comes about, how one finds it. */
  readonly page: readonly string[];
  /** The smallest harness that trips it, made when the page is opened. */
  readonly trips: () => Harness;
  /** What looks like it and is right. */
  readonly quiet: () => Harness;
  /** Why that one is right, one sentence. */
  readonly quietBecause: string;
};

type Given = Omit<RuleExample, "trips" | "quiet"> & {
  readonly trips: () => Build;
  readonly quiet: () => Build;
};

export function defineExample(given: Given): RuleExample {
  return { ...given, trips: () => given.trips().harness, quiet: () => given.quiet().harness };
}

export type Examples = Readonly<Record<string, RuleExample>>;
export type ExampleGroup = Exclude<GroupId, "own">;
