import { useCallback } from "react";
import { useStore } from "zustand";
import { useEditorStore } from "../state/use-editor.ts";
import { canvasOf } from "./canvas-store.ts";
import { FieldInput } from "./field-input.tsx";
import { handOf } from "./hand.ts";
import { LEAD_ENDS, menuItems } from "./menu-model.ts";
import { PopupMenu } from "./popup-menu.tsx";
import type { Sight } from "./sight.ts";

/** What stands over the drawing for a moment: the menu, the question what a lead ends in, a text being edited. */
export function Popups({ sight }: { readonly sight: Sight }) {
  const editor = useEditorStore();
  const canvas = canvasOf(editor);
  const menu = useStore(canvas, (state) => state.menu);
  const choosing = useStore(canvas, (state) => state.choosing);
  const field = useStore(canvas, (state) => state.field);
  const arranging = useStore(canvas, (state) => state.arranging);
  const close = useCallback(() => {
    canvas.setState({ menu: null, choosing: null });
    sight.focus();
  }, [canvas, sight]);
  return (
    <>
      {menu && (
        <PopupMenu name="What can be done here" at={menu.screen} items={menuItems(editor)} onClose={close} />
      )}
      {choosing && (
        <PopupMenu
          name="What the lead ends in"
          at={choosing.screen}
          onClose={close}
          items={LEAD_ENDS.filter(({ kind }) => kind !== "loose" || "contact" in choosing.from).map(
            ({ kind, name }) => ({
              id: kind,
              name,
              first: kind === "loose",
              run: () => handOf(editor)?.lead.endIn(choosing.from, kind, choosing.spot),
            }),
          )}
        />
      )}
      {field && <FieldInput key={JSON.stringify(field.at)} field={field} sight={sight} />}
      {arranging?.shown && (
        <div className="arranging" role="status">
          <span>Arranging the drawing.</span>
          <button type="button" className="button" onClick={arranging.cancel}>
            Cancel
          </button>
        </div>
      )}
    </>
  );
}
