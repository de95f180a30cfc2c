import { useSyncExternalStore } from "react";

const query = "(max-width: 640px)";

/** True where the page is as narrow as a phone: one thing is shown at a time. */
export function useNarrow(): boolean {
  return useSyncExternalStore(
    (changed) => {
      const media = window.matchMedia(query);
      media.addEventListener("change", changed);
      return () => media.removeEventListener("change", changed);
    },
    () => window.matchMedia(query).matches,
  );
}

export function isNarrow(): boolean {
  return window.matchMedia(query).matches;
}
