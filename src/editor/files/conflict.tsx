import { Button } from "react-aria-components";
import { FileDialog } from "./file-dialog.tsx";
import { sayWhen } from "./files-model.ts";
import { useFiles, useFilesState } from "./use-files.ts";

/** Two tabs have one harness. Nothing is overwritten until the person has said which is to stand. */
export default function Conflict() {
  const files = useFiles();
  const conflict = useFilesState((state) => state.conflict);
  if (!conflict) {
    return (
      <FileDialog heading="This harness is also open in another tab" onClose={() => files.dismiss()}>
        <p>Work in one of the two. If both are edited, you will be asked which one stands.</p>
        <div className="dialog-buttons">
          <Button className="button" onPress={() => void files.settleConflict("copy")}>
            Continue here as a copy
          </Button>
          <Button className="button" onPress={() => files.dismiss()}>
            Look at it here
          </Button>
        </div>
      </FileDialog>
    );
  }
  return (
    <FileDialog urgent heading="Another tab has changed this harness" onClose={() => files.dismiss()}>
      <p>
        It was changed there at {sayWhen(conflict.theirs.keptAt, Date.now())}. Nothing of yours has been
        written over it.
      </p>
      <div className="dialog-buttons">
        <Button className="button" onPress={() => void files.settleConflict("copy")}>
          Continue here as a copy
        </Button>
        <Button className="button" onPress={() => void files.settleConflict("newest")}>
          Open the newer one here
        </Button>
        <Button className="button" onPress={() => void files.settleConflict("take-over")}>
          Replace it with mine
        </Button>
      </div>
    </FileDialog>
  );
}
