import type { FinFile } from "@lapline/contract";
import { angle, formatQuantity, length, type Units } from "@lapline/engine";
import { formatTapeLength } from "@lapline/present";
import type { FinMark } from "./FinsForm";

/** The forms in which toe is typed; by meeting another fin's line it is chosen. */
export const TOE_FORMS = [
  {
    id: "aimBesideNose",
    label: "string, beside nose",
    stated: "the string beside the nose",
    dimension: "length",
  },
  {
    id: "aimBeyondNose",
    label: "string, beyond nose",
    stated: "the string beyond the nose",
    dimension: "length",
  },
  { id: "overBase", label: "in over base", stated: "the distance over the base", dimension: "length" },
  { id: "angle", label: "degrees", stated: "degrees", dimension: "angle" },
] as const;

export type ToeForm = (typeof TOE_FORMS)[number]["id"];

/** One toe in all its forms: as it was typed where it was stated, and by the plan in the others; empty where it has no such form. */
export function toeTexts(
  toe: FinFile["toe"],
  mark: FinMark | undefined,
  units: Units,
): Readonly<Record<ToeForm, string>> {
  const show: Readonly<Record<ToeForm, (mark: FinMark) => string>> = {
    aimBesideNose: ({ aimBesideNoseM }) => formatTapeLength(aimBesideNoseM, { units, language: "en" }),
    aimBeyondNose: ({ aimBeyondNoseM }) =>
      aimBeyondNoseM === null ? "" : formatTapeLength(aimBeyondNoseM, { units, language: "en" }),
    overBase: ({ toeOverBaseM }) => formatQuantity(length(toeOverBaseM, "fine"), units),
    angle: ({ toeRad }) => formatQuantity(angle(toeRad, "fine"), units),
  };
  const text = (form: ToeForm): string => toe?.[form] ?? (mark === undefined ? "" : show[form](mark));
  return {
    aimBesideNose: text("aimBesideNose"),
    aimBeyondNose: text("aimBeyondNose"),
    overBase: text("overBase"),
    angle: text("angle"),
  };
}
