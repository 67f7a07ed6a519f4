/** What is held longer is no press to a button. */
const PRESS_TAKES_AT_MOST_MS = 2000;
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

/** Follows whether a press by finger or mouse is under way, to its click. */
export function followPresses(page: EventTarget): void {
  const finish = () => {
    clearTimeout(giveUp);
    isPressed = false;
    for (const work of waiting.splice(0)) setTimeout(work, 0);
  };
  const finishWithin = (ms: number) => {
    clearTimeout(giveUp);
    giveUp = setTimeout(finish, ms);
  };
  const press = () => {
    isPressed = true;
    finishWithin(PRESS_TAKES_AT_MOST_MS);
  };
  page.addEventListener("pointerdown", press, true);
  page.addEventListener("pointerup", () => finishWithin(CLICK_COMES_WITHIN_MS), true);
  page.addEventListener("click", finish, true);
  page.addEventListener("pointercancel", finish, true);
}
