import { angle, length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";

type Correction = NonNullable<Plan["finset"]>["asSet"][number]["correction"];

/** The smallest move that brings a fin back, as it is to be done: `trailing end 1.6 mm inward; lean it 2.0° outward`. */
export function correctionWords(correction: Correction, reader: Reader): string {
  const t = tell(reader);
  const { end, alongM, trailingAcrossM, leadingAcrossM, cantRad } = correction;
  if (end === "unknown") return t`measure both marks`;
  const show = (valueM: number): string => showQuantity(length(Math.abs(valueM), "fine"), reader);
  const way = (valueM: number): string => (valueM > 0 ? "outward" : "inward");
  const moves = [
    ...(alongM === 0
      ? []
      : [alongM > 0 ? t`${show(alongM)} towards the nose` : t`${show(alongM)} towards the tail`]),
    ...(trailingAcrossM === 0 ? [] : [t`trailing end ${show(trailingAcrossM)} ${way(trailingAcrossM)}`]),
    ...(leadingAcrossM === 0 ? [] : [t`leading end ${show(leadingAcrossM)} ${way(leadingAcrossM)}`]),
    ...(cantRad === 0 ? [] : [t`lean it ${angle(Math.abs(cantRad))} ${way(cantRad)}`]),
  ];
  return moves.join("; ");
}
