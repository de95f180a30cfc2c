import { lazy, Suspense } from "react";
import { useFilesState } from "./use-files.ts";

const Unreadable = lazy(() => import("./unreadable.tsx"));
const Conflict = lazy(() => import("./conflict.tsx"));
const NewerOnDisk = lazy(() => import("./newer-on-disk.tsx"));
const Recent = lazy(() => import("./recent.tsx"));
const Samples = lazy(() => import("./samples.tsx"));

/** Whichever dialog the files ask for; one at a time, the most pressing first. */
export function FileDialogs() {
  const unreadable = useFilesState((state) => state.unreadable);
  const conflict = useFilesState((state) => state.conflict !== null || state.alsoOpen);
  const newerOnDisk = useFilesState((state) => state.newerOnDisk);
  const dialog = useFilesState((state) => state.dialog);
  return (
    <Suspense fallback={null}>
      {unreadable ? (
        <Unreadable fileName={unreadable.fileName} problems={unreadable.problems} />
      ) : conflict ? (
        <Conflict />
      ) : newerOnDisk ? (
        <NewerOnDisk />
      ) : dialog === "recent" ? (
        <Recent />
      ) : dialog === "samples" ? (
        <Samples />
      ) : null}
    </Suspense>
  );
}
