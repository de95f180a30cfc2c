import { lazy, Suspense, useEffect } from "react";
import { useStore } from "zustand";
import { dialogs } from "./dialogs.ts";

const commandList = () => import("../palette/command-list.tsx");
const find = () => import("../find/find.tsx");
const CommandList = lazy(commandList);
const Help = lazy(() => import("../palette/help.tsx"));
const Find = lazy(find);
const AddConnector = lazy(() => import("../housing/add-connector.tsx"));
const KeepConnector = lazy(() => import("../housing/keep-connector.tsx"));
const PasteRows = lazy(() => import("../housing/paste-rows.tsx"));
const Charts = lazy(() => import("../charts/charts-screen.tsx"));
const ProfileDialog = lazy(() => import("../rules/profile-dialog.tsx"));
const RuleBook = lazy(() => import("../rules/rule-book.tsx"));
const Print = lazy(() => import("../print/print.tsx"));

/** The two that a person opens by a key and types into at once are fetched when the page has come to rest. */
const AT_REST_MS = 2500;

/** Whichever dialog stands open. Each is fetched when it is first asked for. */
export function Dialogs() {
  const open = useStore(dialogs, (state) => state.open);
  useEffect(() => {
    const rest = setTimeout(() => void Promise.allSettled([commandList(), find()]), AT_REST_MS);
    return () => clearTimeout(rest);
  }, []);
  return (
    <Suspense fallback={null}>
      {open.kind === "commands" && <CommandList />}
      {open.kind === "help" && <Help />}
      {open.kind === "find" && <Find />}
      {open.kind === "print" && <Print />}
      {open.kind === "charts" && <Charts />}
      {open.kind === "profile" && <ProfileDialog />}
      {open.kind === "rules" && <RuleBook key={open.rule ?? "all"} rule={open.rule} />}
      {open.kind === "add-connector" && (
        <AddConnector
          key={open.side ?? "any"}
          side={open.side}
          at={open.at}
          next={open.next}
          file={open.file ?? null}
        />
      )}
      {open.kind === "keep-connector" && <KeepConnector part={open.part} />}
      {open.kind === "paste-rows" && <PasteRows part={open.part} text={open.text} />}
    </Suspense>
  );
}
