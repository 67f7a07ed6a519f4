import { Quaternion, Vector3 } from "three";

export const SOLID_VIEWS = ["whole", "deck", "bottom", "side"] as const;
export type SolidView = (typeof SOLID_VIEWS)[number];

/** Nearer than this the facets show. */
export const MOST_TIMES = 12;

const AIR = 1.08;
/** How far each view is rolled about the board's length from looking straight down on the deck. */
const ROLL_RAD: Readonly<Record<SolidView, number>> = {
  whole: -Math.PI / 4,
  deck: 0,
  bottom: Math.PI,
  side: -Math.PI / 2,
};

/** How the board is turned: its nose to the right, or up where it stands on a narrow screen; left stays left of the nose. */
export function turnOf(view: SolidView, stands: boolean): Quaternion {
  const roll = new Quaternion().setFromAxisAngle(new Vector3(1, 0, 0), ROLL_RAD[view]);
  const rise = new Quaternion().setFromAxisAngle(new Vector3(0, 0, 1), stands ? Math.PI / 2 : 0);
  return rise.multiply(roll);
}

/** Pixels to a metre at which the whole board fits in, however it is rolled. */
export function fitScale(
  room: { readonly x: number; readonly y: number },
  size: { readonly x: number; readonly y: number; readonly z: number },
  stands: boolean,
): number {
  const [alongPx, acrossPx] = stands ? [room.y, room.x] : [room.x, room.y];
  return Math.min(alongPx / (size.x * AIR), acrossPx / (Math.max(size.y, size.z) * AIR));
}
