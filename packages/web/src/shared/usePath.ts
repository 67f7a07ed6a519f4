import { useSyncExternalStore } from "react";

const MOVED = "lapline:moved";

/** The address's path; changes when the reader goes back, forward or along one of the page's own links. */
export function usePath(): string {
  return useSyncExternalStore(subscribe, () => window.location.pathname);
}

function subscribe(onMove: () => void): () => void {
  window.addEventListener("popstate", onMove);
  window.addEventListener(MOVED, onMove);
  return () => {
    window.removeEventListener("popstate", onMove);
    window.removeEventListener(MOVED, onMove);
  };
}

/** Goes to one of the app's own pages without loading it anew. */
export function moveTo(path: string): void {
  window.history.pushState(null, "", path);
  window.scrollTo(0, 0);
  window.dispatchEvent(new Event(MOVED));
}
