/** What keys can do to a solid. */
export interface Turned {
  turn(rightRad: number, downRad: number): void;
  move(rightPx: number, downPx: number): void;
  zoom(factor: number): void;
  show(view: "whole"): void;
}

const TURN_RAD = Math.PI / 12;
const MOVE_PX = 40;
const ZOOM = 1.25;
const ARROWS: Readonly<Record<string, readonly [right: number, down: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Turns, moves or zooms by a key; says whether it was one of ours. */
export function keyAct(solid: Turned, key: string, withShift: boolean): boolean {
  const arrow = ARROWS[key];
  if (arrow !== undefined) {
    const [right, down] = arrow;
    if (withShift) solid.move(right * MOVE_PX, down * MOVE_PX);
    else solid.turn(right * TURN_RAD, down * TURN_RAD);
    return true;
  }
  if (key === "+" || key === "=") solid.zoom(ZOOM);
  else if (key === "-") solid.zoom(1 / ZOOM);
  else if (key === "0" || key === "Home") solid.show("whole");
  else return false;
  return true;
}
