import { useSyncExternalStore } from "react";

const MOVED = "lapline:moved";

/** The address's path; changes when the reader goes back, forward or along one of the page's own links. */
export function usePath(): string {
  return useSyncExternalStore(subscribe, () => window.location.pathname);
}

function subscribe(onMove: () => void): () => void {
  window.addEventListener("popstate", onMove);
  window.addEventListener("hashchange", onMove);
  window.addEventListener(MOVED, onMove);
  return () => {
    window.removeEventListener("popstate", onMove);
    window.removeEventListener("hashchange", onMove);
    window.removeEventListener(MOVED, onMove);
  };
}

/** Goes to one of the app's own pages without loading it anew. */
export function moveTo(path: string): void {
  window.history.pushState(null, "", path);
  window.scrollTo(0, 0);
  window.dispatchEvent(new Event(MOVED));
}

/** Goes to one of the app's own pages in place of this one, so that the way back does not lead through it. */
export function replaceWith(path: string): void {
  window.history.replaceState(null, "", path);
  window.dispatchEvent(new Event(MOVED));
}

/** The address's place on its page, without the #; changes as the path does. */
export function useHash(): string {
  return useSyncExternalStore(subscribe, () => decodeURIComponent(window.location.hash.slice(1)));
}
