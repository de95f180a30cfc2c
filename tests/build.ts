export { Build, build, type CavityLine, type Rows } from "../src/rules/examples/build.ts";
