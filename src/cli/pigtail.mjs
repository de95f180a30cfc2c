#!/usr/bin/env node
import { register } from "tsx/esm/api";

// The command line is TypeScript like the rest; tsx reads it as it is.
register();
await import("./main.ts");
