import type { MadeOn } from "@lapline/present/paper";

/** The moment and, where the person is, its date. */
export function madeOnOf(instant: Date): MadeOn {
  const two = (number: number) => String(number).padStart(2, "0");
  const date = `${instant.getFullYear()}-${two(instant.getMonth() + 1)}-${two(instant.getDate())}`;
  return { instant, date };
}
