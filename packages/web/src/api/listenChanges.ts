/** What the shop's computer tells of everything that is kept. */
export interface HeardChange {
  readonly kind: string;
  readonly boardId: string | null;
  /** What is kept of it since; null where it has none. */
  readonly revision: string | null;
  readonly at: string;
  readonly device: string;
}

interface Listeners {
  changed(change: HeardChange): void;
  /** Connected, anew or after something was missed: all may have changed. */
  connected(): void;
}

const AGAIN_MS = 3000;

/**
 * Hears what is kept as long as the page is seen. A browser opens few connections to one computer, so that tabs in the background
 * leave theirs to others.
 */
export function listenChanges(listeners: Listeners): void {
  let source: EventSource | null = null;
  let again: ReturnType<typeof setTimeout> | undefined;
  const open = () => {
    clearTimeout(again);
    if (source !== null || document.visibilityState === "hidden") return;
    const opened = new EventSource("/api/changes");
    source = opened;
    opened.addEventListener("open", listeners.connected);
    opened.addEventListener("reload", listeners.connected);
    opened.addEventListener("change", ({ data }: MessageEvent<string>) =>
      listeners.changed(JSON.parse(data) as HeardChange),
    );
    opened.addEventListener("error", () => {
      // The browser tries again by itself, but for an answer that it takes as final.
      if (opened.readyState !== EventSource.CLOSED) return;
      close();
      again = setTimeout(open, AGAIN_MS);
    });
  };
  const close = () => {
    source?.close();
    source = null;
  };
  document.addEventListener("visibilitychange", () =>
    document.visibilityState === "hidden" ? close() : open(),
  );
  open();
}
