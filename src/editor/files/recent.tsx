import { useEffect, useState } from "react";
import { Button } from "react-aria-components";
import { FileDialog } from "./file-dialog.tsx";
import { type Kept, type Recent, sayWhen } from "./files-model.ts";
import { listRecent, putBack, remove } from "./shelf.ts";
import { useFiles, useFilesState } from "./use-files.ts";

type Removed = { readonly record: Kept; readonly recent: Recent };

/** The harnesses that this browser keeps, newest first. */
export default function RecentDialog() {
  const files = useFiles();
  const openId = useFilesState((state) => state.id);
  const [list, setList] = useState<readonly Recent[] | null>(null);
  const [removed, setRemoved] = useState<Removed | null>(null);
  const [trouble, setTrouble] = useState("");
  const refresh = () => listRecent().then(setList, (error: Error) => setTrouble(error.message));
  // biome-ignore lint/correctness/useExhaustiveDependencies: the list is read once when the dialog opens
  useEffect(() => void refresh(), []);
  const takeAway = async (recent: Recent) => {
    const record = await remove(recent.id);
    setRemoved(record ? { record, recent } : null);
    await refresh();
  };
  const restore = async () => {
    if (removed) await putBack(removed.record, removed.recent);
    setRemoved(null);
    await refresh();
  };
  const open = async (id: string) => {
    if (await files.openKept(id)) files.dismiss();
  };
  return (
    <FileDialog heading="Recent harnesses" onClose={() => files.dismiss()}>
      {trouble && <p>The browser's storage cannot be read: {trouble}</p>}
      {list?.length === 0 && <p>None yet. Every harness you work on is kept here by this browser.</p>}
      <ul className="dialog-list">
        {list?.map((recent) => (
          <li key={recent.id}>
            <Button
              className="dialog-choice"
              autoFocus={recent === list[0]}
              onPress={() => void open(recent.id)}
            >
              {recent.name}
              <small>
                {sayWhen(recent.keptAt, Date.now())} · {recent.partCount} parts, {recent.wireCount} wires
                {recent.id === openId && " · open now"}
              </small>
            </Button>
            {recent.id !== openId && (
              <Button
                className="button"
                aria-label={`Remove ${recent.name} from this browser`}
                onPress={() => void takeAway(recent)}
              >
                Remove
              </Button>
            )}
          </li>
        ))}
      </ul>
      <div className="dialog-buttons">
        {removed && (
          <Button className="button" onPress={() => void restore()}>
            Put back {removed.recent.name}
          </Button>
        )}
        <Button className="button" onPress={() => files.dismiss()}>
          Close
        </Button>
      </div>
    </FileDialog>
  );
}
