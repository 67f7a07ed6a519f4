/** The surfer's: standing at the tail, facing the nose, deck up. */
export type Side = "left" | "right";

export const SIDES: readonly Side[] = ["left", "right"];
