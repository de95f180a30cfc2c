import type { recheck } from "../../rules/check.ts";
import type { fixAll, tryFix } from "../../rules/fix-all.ts";
import type { whyOf } from "../../rules/why/why.ts";

/** The rule book as the editor uses it. It is larger than all else on the page, and is fetched after it stands. */
export type Book = {
  readonly recheck: typeof recheck;
  readonly fixAll: typeof fixAll;
  readonly tryFix: typeof tryFix;
  readonly whyOf: typeof whyOf;
};

let fetched: Promise<Book> | null = null;

/** Fetches the book; asked again, the same one. */
export function fetchBook(): Promise<Book> {
  fetched ??= import("./whole-book.ts").then(({ BOOK }) => BOOK);
  return fetched;
}
