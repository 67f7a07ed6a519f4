import type { Plan } from "@lapline/engine";

/** How wide the strip along the rail is on each face: the other face's lap lies there. */
export function lapsOf({ faces }: NonNullable<Plan["layup"]>): Readonly<Record<"deck" | "bottom", number>> {
  const lapOf = (id: string): number => faces.find((face) => face.id === id)?.lapM ?? 0;
  return { deck: lapOf("bottom"), bottom: lapOf("deck") };
}
