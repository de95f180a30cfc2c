import { registerSW } from "virtual:pwa-register";
import { register } from "../commands/command.ts";
import type { Editor } from "../state/store.ts";

/** Keeps the whole editor in the browser, so that it opens where there is no signal. */
export function startOffline(editor: Editor): void {
  if (!("serviceWorker" in navigator) || import.meta.env.DEV) return;
  const update = registerSW({
    onOfflineReady: () => editor.getState().say("Pigtail now opens without a network."),
    onNeedRefresh: () => {
      register({
        id: "help-update",
        name: "Use the newer Pigtail",
        group: "help",
        keys: [],
        run: () => update(true),
      });
      editor
        .getState()
        .say("A newer Pigtail is here. It is used from the next start, or now by its command.");
    },
  });
}
