import { useMemo, useState } from "react";
import { showOnCanvas } from "../canvas/show.ts";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog } from "../shell/dialogs.ts";
import { PickList } from "../shell/pick-list.tsx";
import { desk } from "../shell/preferences.ts";
import { Swatch } from "../shell/swatch.tsx";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { findInHarness } from "./find-model.ts";

/** Finds a part, a contact or a wire and goes there. */
export default function Find() {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const [typed, setTyped] = useState("");
  // Not deferred: Enter straight after the last letter must go to what that letter found.
  const hits = useMemo(() => findInHarness(harness, typed), [harness, typed]);
  const go = (key: string) => {
    const hit = hits.find((one) => one.key === key);
    closeDialog();
    if (!hit) return;
    desk.setState({ phoneView: "drawing" });
    setTimeout(() => showOnCanvas(editor, [hit.about]), 0);
  };
  return (
    <Dialog heading="Find a part or a wire" onClose={closeDialog} quietHeading>
      <PickList
        label="What to find"
        hint="X1, W12, illumination, blue/white…"
        none={typed.trim() === "" ? "By designation, function, colour or wire number." : "Nothing fits that."}
        typed={typed}
        onType={setTyped}
        onPick={go}
        picks={hits.map(({ key, name, words, colour }) => ({
          id: key,
          content: (
            <>
              <strong>{name}</strong>
              <span>{words}</span>
              {colour && (
                <span className="picker-more">
                  <Swatch colour={colour} />
                </span>
              )}
            </>
          ),
        }))}
      />
    </Dialog>
  );
}
