import { lazy, Suspense } from "react";
import { useStore } from "zustand";
import { dialogs } from "./dialogs.ts";

const CommandList = lazy(() => import("../palette/command-list.tsx"));
const Help = lazy(() => import("../palette/help.tsx"));
const Find = lazy(() => import("../find/find.tsx"));
const AddConnector = lazy(() => import("../housing/add-connector.tsx"));
const PasteRows = lazy(() => import("../housing/paste-rows.tsx"));
const Print = lazy(() => import("../print/print.tsx"));

/** Whichever dialog stands open. Each is fetched when it is first asked for. */
export function Dialogs() {
  const open = useStore(dialogs, (state) => state.open);
  return (
    <Suspense fallback={null}>
      {open.kind === "commands" && <CommandList />}
      {open.kind === "help" && <Help />}
      {open.kind === "find" && <Find />}
      {open.kind === "print" && <Print />}
      {open.kind === "add-connector" && (
        <AddConnector key={open.side ?? "any"} side={open.side} at={open.at} next={open.next} />
      )}
      {open.kind === "paste-rows" && <PasteRows part={open.part} text={open.text} />}
    </Suspense>
  );
}
