import { angle, formatQuantity, length, type Plan, type Units } from "@lapline/engine";

type Correction = NonNullable<Plan["finset"]>["asSet"][number]["correction"];

/** The smallest move that brings a fin back, as it is to be done: `trailing end 1.6 mm inward; lean it 2.0° outward`. */
export function correctionWords(correction: Correction, units: Units): string {
  const { end, alongM, trailingAcrossM, leadingAcrossM, cantRad } = correction;
  if (end === "unknown") return "measure both marks";
  const show = (valueM: number): string => formatQuantity(length(Math.abs(valueM), "fine"), units);
  const across = (name: string, valueM: number): readonly string[] =>
    valueM === 0 ? [] : [`${name} end ${show(valueM)} ${valueM > 0 ? "outward" : "inward"}`];
  const moves = [
    ...(alongM === 0 ? [] : [`${show(alongM)} towards the ${alongM > 0 ? "nose" : "tail"}`]),
    ...across("trailing", trailingAcrossM),
    ...across("leading", leadingAcrossM),
    ...(cantRad === 0
      ? []
      : [`lean it ${formatQuantity(angle(Math.abs(cantRad)), units)} ${cantRad > 0 ? "outward" : "inward"}`]),
  ];
  return moves.join("; ");
}
