/** In CSS pixels from a drawing's top left corner. */
export interface HandPlace {
  readonly x: number;
  readonly y: number;
}

/** What a hand on a drawing does; places in CSS pixels from its top left corner. */
export interface Hand {
  /** By one finger, or a pointer with its button. */
  drag(rightPx: number, downPx: number): void;
  /** By two fingers, or with Shift held. */
  move(rightPx: number, downPx: number): void;
  /** About the place that lies between the fingers before they move on, or under the pointer. */
  zoom(factor: number, about: HandPlace): void;
  /** A second finger came down, or one of two was lifted: what lies between is one movement. */
  pinch?(isBegun: boolean): void;
  /** The place under a finger, or under the pointer that only passes over. */
  touch?(xPx: number, yPx: number): void;
}

/**
 * One finger drags, two fingers spread and move; a pointer does the same with its button, moves with Shift held, and zooms by the wheel
 * with Ctrl held (so that the wheel alone still rolls the page). What lies under it is told.
 * @returns the way to let go
 */
export function followHand(element: HTMLElement, hand: Hand): () => void {
  const fingers = new Map<number, HandPlace>();
  const ended = new AbortController();
  const on = <K extends keyof HTMLElementEventMap>(
    kind: K,
    act: (event: HTMLElementEventMap[K]) => void,
    passive = true,
  ): void => element.addEventListener(kind, act, { signal: ended.signal, passive });
  const placeOf = ({ clientX, clientY }: MouseEvent): HandPlace => {
    const { left, top } = element.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  };
  on("pointerdown", (event) => {
    const place = placeOf(event);
    fingers.set(event.pointerId, place);
    if (fingers.size === 1) hand.touch?.(place.x, place.y);
    else hand.pinch?.(true);
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
      const apart = (at: HandPlace): number => Math.max(Math.hypot(at.x - other.x, at.y - other.y), 1);
      const between = { x: (before.x + other.x) / 2, y: (before.y + other.y) / 2 };
      hand.zoom(apart(place) / apart(before), between);
      hand.move(right / 2, down / 2);
    } else if (event.shiftKey) hand.move(right, down);
    else hand.drag(right, down);
  });
  const lift = (event: PointerEvent): void => {
    if (fingers.size > 1) hand.pinch?.(false);
    fingers.delete(event.pointerId);
  };
  on("pointerup", lift);
  on("pointercancel", lift);
  on(
    "wheel",
    (event) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      hand.zoom(Math.exp(-event.deltaY / 200), placeOf(event));
    },
    false,
  );
  return () => ended.abort();
}
