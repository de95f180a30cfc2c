import type { Examples } from "../example.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {};
