let isPressed = false;
const waiting: Array<() => void> = [];

/**
 * Runs work once the press that may be under way has come to its click: what moves the page meanwhile would take the pressed button
 * away from under the finger.
 */
export function afterPress(work: () => void): void {
  if (isPressed) waiting.push(work);
  else setTimeout(work, 0);
}

/** Follows whether a finger or a mouse is down; gives what ends it. */
export function followPresses(): () => void {
  const end = new AbortController();
  const options = { capture: true, signal: end.signal };
  const press = () => {
    isPressed = true;
  };
  const release = () => {
    isPressed = false;
    for (const work of waiting.splice(0)) setTimeout(work, 0);
  };
  window.addEventListener("pointerdown", press, options);
  window.addEventListener("pointerup", release, options);
  window.addEventListener("pointercancel", release, options);
  return () => end.abort();
}
