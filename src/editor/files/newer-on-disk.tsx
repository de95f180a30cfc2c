import { Button } from "react-aria-components";
import { FileDialog } from "./file-dialog.tsx";
import { useFiles, useFilesState } from "./use-files.ts";

/** The file on disk was changed by something else since it was opened here. */
export default function NewerOnDisk() {
  const files = useFiles();
  const fileName = useFilesState((state) => state.fileName);
  return (
    <FileDialog urgent heading={`${fileName} has changed on disk`} onClose={() => files.dismiss()}>
      <p>Something else has written it since you opened it. Saving now would lose that.</p>
      <div className="dialog-buttons">
        <Button className="button" onPress={() => void files.save({ as: true })}>
          Save under another name…
        </Button>
        <Button className="button" onPress={() => void files.save({ over: true })}>
          Replace it with mine
        </Button>
        <Button className="button" onPress={() => files.dismiss()}>
          Do not save
        </Button>
      </div>
    </FileDialog>
  );
}
