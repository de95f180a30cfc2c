import { lazy, Suspense } from "react";
import { useStore } from "zustand";
import { dialogs } from "./dialogs.ts";

const CommandList = lazy(() => import("../palette/command-list.tsx"));
const Help = lazy(() => import("../palette/help.tsx"));
const Find = lazy(() => import("../find/find.tsx"));

/** Whichever dialog stands open. Each is fetched when it is first asked for. */
export function Dialogs() {
  const open = useStore(dialogs, (state) => state.open);
  return (
    <Suspense fallback={null}>
      {open.kind === "commands" && <CommandList />}
      {open.kind === "help" && <Help />}
      {open.kind === "find" && <Find />}
    </Suspense>
  );
}
