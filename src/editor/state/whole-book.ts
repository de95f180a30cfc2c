import { recheck } from "../../rules/check.ts";
import { fixAll, tryFix } from "../../rules/fix-all.ts";
import { whyOf } from "../../rules/why/why.ts";
import type { Book } from "./book.ts";

export const BOOK: Book = { recheck, fixAll, tryFix, whyOf };
