import { Button } from "react-aria-components";
import { SAMPLES } from "../../../samples/index.ts";
import { FileDialog } from "./file-dialog.tsx";
import { openSample } from "./start.ts";
import { useFiles } from "./use-files.ts";

/** The samples. Opening one makes a copy: what was open stays among the recent harnesses. */
export default function SamplesDialog() {
  const files = useFiles();
  return (
    <FileDialog heading="Samples" onClose={() => files.dismiss()}>
      <p>From the workshop of the Thistledown county mobile library. Each opens as a copy of your own.</p>
      <ul className="dialog-list">
        {SAMPLES.map((sample, index) => (
          <li key={sample.id}>
            <Button
              className="dialog-choice"
              autoFocus={index === 0}
              onPress={() => void openSample(files, sample.id).then(() => files.dismiss())}
            >
              {sample.title}
              <small>{sample.summary}</small>
            </Button>
          </li>
        ))}
      </ul>
      <div className="dialog-buttons">
        <Button className="button" onPress={() => files.dismiss()}>
          Close
        </Button>
      </div>
    </FileDialog>
  );
}
