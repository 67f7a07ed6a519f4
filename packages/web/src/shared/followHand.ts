/** What a hand on a drawing does; places in CSS pixels from its top left corner. */
export interface Hand {
  /** By one finger, or a pointer with its button. */
  drag(rightPx: number, downPx: number): void;
  /** By two fingers, or with Shift held. */
  move(rightPx: number, downPx: number): void;
  zoom(factor: number): void;
  /** The place under a finger, or under the pointer that only passes over. */
  touch?(xPx: number, yPx: number): void;
}

/**
 * One finger drags, two fingers spread and move; a pointer does the same with its button, moves with Shift held, and zooms by the wheel
 * with Ctrl held (so that the wheel alone still rolls the page). What lies under it is told.
 * @returns the way to let go
 */
export function followHand(element: HTMLElement, hand: Hand): () => void {
  const fingers = new Map<number, { readonly x: number; readonly y: number }>();
  const ended = new AbortController();
  const on = <K extends keyof HTMLElementEventMap>(
    kind: K,
    act: (event: HTMLElementEventMap[K]) => void,
    passive = true,
  ): void => element.addEventListener(kind, act, { signal: ended.signal, passive });
  const placeOf = ({ clientX, clientY }: MouseEvent) => {
    const { left, top } = element.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  };
  on("pointerdown", (event) => {
    const place = placeOf(event);
    fingers.set(event.pointerId, place);
    if (fingers.size === 1) hand.touch?.(place.x, place.y);
  });
  on("pointermove", (event) => {
    const place = placeOf(event);
    const before = fingers.get(event.pointerId);
    if (before === undefined) {
      if (event.pointerType === "mouse") hand.touch?.(place.x, place.y);
      return;
    }
    if (!element.hasPointerCapture(event.pointerId)) element.setPointerCapture(event.pointerId);
    const [right, down] = [place.x - before.x, place.y - before.y];
    const [other] = [...fingers].filter(([id]) => id !== event.pointerId).map(([, at]) => at);
    fingers.set(event.pointerId, place);
    if (other !== undefined) {
      const apart = (at: { readonly x: number; readonly y: number }): number =>
        Math.max(Math.hypot(at.x - other.x, at.y - other.y), 1);
      hand.zoom(apart(place) / apart(before));
      hand.move(right / 2, down / 2);
    } else if (event.shiftKey) hand.move(right, down);
    else hand.drag(right, down);
  });
  const lift = (event: PointerEvent): void => void fingers.delete(event.pointerId);
  on("pointerup", lift);
  on("pointercancel", lift);
  on(
    "wheel",
    (event) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      hand.zoom(Math.exp(-event.deltaY / 200));
    },
    false,
  );
  return () => ended.abort();
}
