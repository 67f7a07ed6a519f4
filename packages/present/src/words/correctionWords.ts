import { angle, length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";

type Correction = NonNullable<Plan["finset"]>["asSet"][number]["correction"];

/** The smallest move that brings a fin back, as it is to be done: `trailing end 1.6 mm inward; lean it 2.0° outward`. */
export function correctionWords(correction: Correction, reader: Reader): string {
  const { end, alongM, trailingAcrossM, leadingAcrossM, cantRad } = correction;
  if (end === "unknown") return "measure both marks";
  const show = (valueM: number): string => showQuantity(length(Math.abs(valueM), "fine"), reader);
  const across = (name: string, valueM: number): readonly string[] =>
    valueM === 0 ? [] : [`${name} end ${show(valueM)} ${valueM > 0 ? "outward" : "inward"}`];
  const moves = [
    ...(alongM === 0 ? [] : [`${show(alongM)} towards the ${alongM > 0 ? "nose" : "tail"}`]),
    ...across("trailing", trailingAcrossM),
    ...across("leading", leadingAcrossM),
    ...(cantRad === 0
      ? []
      : [`lean it ${showQuantity(angle(Math.abs(cantRad)), reader)} ${cantRad > 0 ? "outward" : "inward"}`]),
  ];
  return moves.join("; ");
}
