import type { Plan } from "@lapline/engine";

type Zone = NonNullable<Plan["layup"]>["zones"][number];

/** The whole skin of a zone. */
export function skinOf({ laminateThicknessM, fillThicknessM, glossThicknessM }: Zone): number {
  return laminateThicknessM + fillThicknessM + glossThicknessM;
}
