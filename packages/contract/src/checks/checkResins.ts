import { parseQuantity, say } from "@lapline/engine";
import { valueAt } from "../reading/describeRead";
import type { Fault, Step } from "../reading/Fault";
import { readRatio } from "../reading/readRatio";
import { countAt, textAt } from "./readings";

/** Hardener is at most so much lighter or heavier than its base; a ratio by mass and one by volume differ by no more. */
const DENSITY_RATIO = { least: 0.75, most: 1.15 };

/** What must hold between the numbers of a resin of the builder's own, and between those of a cup that was mixed. */
export function checkResins(document: unknown): Fault[] {
  return [
    ...resinIds(document).flatMap((id) => {
      const at: Step[] = ["materials", "resins", id];
      return [...checkDoseRange(document, at), ...checkRatios(document, at)];
    }),
    ...checkMixed(document),
  ];
}

function resinIds(document: unknown): readonly string[] {
  const resins = valueAt(document, ["materials", "resins"]);
  return typeof resins === "object" && resins !== null ? Object.keys(resins) : [];
}

function checkDoseRange(document: unknown, at: readonly Step[]): Fault[] {
  const [least, most] = ["least", "most"].map((end) => readAt(document, [...at, "dose", end], "fraction"));
  if (least == null || most == null || least < most) return [];
  return [{ steps: [...at, "dose", "most"], says: say`the most is not above the least: are they swapped?` }];
}

function checkRatios(document: unknown, at: readonly Step[]): Fault[] {
  const kind = textAt(document, [...at, "kind"]);
  if (kind !== "two-part") return [];
  const texts = ["ratioByMass", "ratioByVolume"].map((field) => textAt(document, [...at, field]));
  if (texts.every((text) => text === null)) {
    const says = say`missing: write "ratioByMass" or "ratioByVolume", base to hardener, such as "100:45"`;
    return [{ steps: at, says }];
  }
  const [mass, volume] = texts.map((text) => (text === null ? null : readRatio(text)));
  if (mass == null || volume == null) return [];
  const densities = (mass.hardener / mass.base) * (volume.base / volume.hardener);
  if (densities >= DENSITY_RATIO.least && densities <= DENSITY_RATIO.most) return [];
  const says = say`the ratios by mass and by volume do not belong together: read both off the sheet again, base first`;
  return [{ steps: [...at, "ratioByVolume"], says }];
}

/** More hardener than base was never mixed: the two scales' readings are swapped. */
function checkMixed(document: unknown): Fault[] {
  return Array.from({ length: countAt(document, ["record"]) }, (_, i): Fault[] => {
    const [base, hardener] = ["base", "hardener"].map((part) =>
      readAt(document, ["record", i, part], "mass"),
    );
    if (base == null || hardener == null || hardener <= base) return [];
    return [{ steps: ["record", i, "hardener"], says: say`more hardener than base: are the two swapped?` }];
  }).flat();
}

function readAt(document: unknown, steps: readonly Step[], dimension: "fraction" | "mass"): number | null {
  const text = textAt(document, steps);
  const parsed = text === null ? null : parseQuantity(text, dimension);
  return parsed?.ok === true ? parsed.value : null;
}
