/**
 * Runs work once the press that may be under way has come to its click: what moves the page meanwhile would take the pressed button
 * away from under the finger.
 */
export function afterPress(work: () => void): void {
  if (!isPressed) setTimeout(work, 0);
  else window.addEventListener("pointerup", () => setTimeout(work, 0), { once: true, capture: true });
}

let isPressed = false;

/** Follows whether a finger or a mouse is down; gives what ends it. */
export function followPresses(): () => void {
  const end = new AbortController();
  const listen = (kind: string, pressed: boolean) =>
    window.addEventListener(
      kind,
      () => {
        isPressed = pressed;
      },
      { capture: true, signal: end.signal },
    );
  listen("pointerdown", true);
  listen("pointerup", false);
  listen("pointercancel", false);
  return () => end.abort();
}
