import { Button } from "react-aria-components";
import { type Problem, sayProblem } from "../../graph/parse/problem.ts";
import { FileDialog } from "./file-dialog.tsx";
import { useFiles } from "./use-files.ts";

/** What is wrong with a file that could not be opened, place by place. The open harness is untouched. */
export default function Unreadable(props: {
  readonly fileName: string;
  readonly problems: readonly Problem[];
}) {
  const files = useFiles();
  const { fileName, problems } = props;
  const close = () => files.dismiss();
  const copy = () =>
    void navigator.clipboard?.writeText(problems.map((problem) => sayProblem(problem, fileName)).join("\n"));
  return (
    <FileDialog heading={`${fileName} cannot be opened`} onClose={close}>
      <p>
        {problems.length === 1 ? "One thing is" : `${problems.length} things are`} wrong with it. What you had
        open is still there.
      </p>
      <ul className="problem-list">
        {problems.map((problem) => (
          <li key={sayProblem(problem)}>
            <div className="problem-place">
              {problem.line !== null && `Line ${problem.line}, column ${problem.column}`}
              {problem.line !== null && problem.where && " · "}
              {problem.where}
            </div>
            <div>
              Found {problem.found}; expected {problem.expected}.
            </div>
            <div>{problem.next}</div>
          </li>
        ))}
      </ul>
      <div className="dialog-buttons">
        <Button className="button" onPress={close}>
          Close
        </Button>
        <Button className="button" onPress={copy}>
          Copy the list
        </Button>
      </div>
    </FileDialog>
  );
}
