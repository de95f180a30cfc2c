import { openDialog } from "../shell/dialogs.ts";
import { register } from "./command.ts";

/** Two charts are joined: those of a new job, or those of connectors that stand in the harness. */
export function registerChartCommands(): void {
  register({
    id: "join-charts",
    name: "Join two charts…",
    group: "add",
    keys: ["Alt+j"],
    run: () => openDialog({ kind: "charts" }),
  });
}
