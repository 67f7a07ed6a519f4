/** A finger's click comes a moment after the finger is gone, and the field it leaves loses its focus before it; a drag has none. */
const CLICK_COMES_WITHIN_MS = 350;

let isPressed = false;
let giveUp: ReturnType<typeof setTimeout> | undefined;
const waiting: Array<() => void> = [];

/**
 * Runs work once the press that may be under way has come to its click: what moves the page meanwhile would take the pressed button
 * away from under the finger.
 */
export function afterPress(work: () => void): void {
  if (isPressed) waiting.push(work);
  else setTimeout(work, 0);
}

/** Follows whether a press by finger or mouse is under way, to its click; gives what ends it. */
export function followPresses(): () => void {
  const end = new AbortController();
  const options = { capture: true, signal: end.signal };
  const press = () => {
    clearTimeout(giveUp);
    isPressed = true;
  };
  const finish = () => {
    clearTimeout(giveUp);
    isPressed = false;
    for (const work of waiting.splice(0)) setTimeout(work, 0);
  };
  const release = () => {
    clearTimeout(giveUp);
    giveUp = setTimeout(finish, CLICK_COMES_WITHIN_MS);
  };
  window.addEventListener("pointerdown", press, options);
  window.addEventListener("pointerup", release, options);
  window.addEventListener("click", finish, options);
  window.addEventListener("pointercancel", finish, options);
  return () => end.abort();
}
