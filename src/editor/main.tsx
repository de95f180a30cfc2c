import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "./typeface.css";
import "./theme.css";
import "./shell/controls.css";
import "./shell/header.css";
import "./app.css";
import { App } from "./app.tsx";
import { registerAddCommands } from "./commands/add-commands.ts";
import { registerArrangeCommands } from "./commands/arrange-commands.ts";
import { registerCanvasCommands } from "./commands/canvas-commands.ts";
import { registerChartCommands } from "./commands/chart-commands.ts";
import { registerEditCommands } from "./commands/edit-commands.ts";
import { registerFiguresCommands } from "./commands/figures-commands.ts";
import { registerFindingsCommands } from "./commands/findings-commands.ts";
import { registerHelpCommands } from "./commands/help-commands.ts";
import { registerPrintCommands } from "./commands/print-commands.ts";
import { registerReadingsCommands } from "./commands/readings-commands.ts";
import { registerViewCommands } from "./commands/view-commands.ts";
import { startFiles } from "./files/start.ts";
import { FilesContext } from "./files/use-files.ts";
import { startOffline } from "./offline/offline.ts";
import { listenForKeys } from "./shell/keys.ts";
import { rememberPreferences } from "./shell/preferences.ts";
import { fetchBook } from "./state/book.ts";
import { createEditor } from "./state/store.ts";
import { EditorContext } from "./state/use-editor.ts";

const page = document.getElementById("page");
if (!page) throw new Error("index.html has no element with the id page");

const editor = createEditor();
rememberPreferences(editor);
registerEditCommands();
registerChartCommands();
registerAddCommands();
registerCanvasCommands();
registerArrangeCommands();
registerViewCommands();
registerReadingsCommands();
registerPrintCommands();
registerFiguresCommands();
registerFindingsCommands();
registerHelpCommands();
listenForKeys(editor);
const files = startFiles(editor);
startOffline(editor);
fetchBook().then(
  (book) => editor.getState().takeBook(book),
  () =>
    editor
      .getState()
      .say("The rules could not be fetched: nothing is checked. Load the page again.", "refused"),
);

createRoot(page).render(
  <StrictMode>
    <EditorContext value={editor}>
      <FilesContext value={files}>
        <App />
      </FilesContext>
    </EditorContext>
  </StrictMode>,
);
