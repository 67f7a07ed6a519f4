import { count, fraction, length, mass, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";

type Weighins = NonNullable<Plan["weighins"]>;
type Weighin = Weighins["entries"][number];

/** What one weighing tells of the coats before it, in sentences; none where the scale cannot tell. */
export function weighinSentences(entry: Weighin, reader: Reader): readonly string[] {
  const t = tell(reader);
  const {
    keptKg,
    keptLowKg,
    keptHighKg,
    keptRatio,
    glassRatio,
    filmM,
    filmLowM,
    filmHighM,
    lossKg,
    mixedKg,
  } = entry;
  if (keptKg === null || keptLowKg === null || keptHighKg === null || keptRatio === null) return [];
  const names = entry.coats.map((id) => tellText(id, reader)).join(", ");
  return [
    t`${names}: ${mass(keptKg)} of resin stayed on (${mass(keptLowKg)} to ${mass(keptHighKg)}), ${fraction(keptRatio)} of the plan.`,
    ...(glassRatio === null ? [] : [t`That is ${count(glassRatio)} of resin to one of glass.`]),
    ...(filmM === null || filmLowM === null || filmHighM === null
      ? []
      : [t`The film is ${length(filmM)} (${length(filmLowM)} to ${length(filmHighM)}), even over the face.`]),
    ...(lossKg === null || mixedKg === null
      ? []
      : [t`Of ${mass(mixedKg)} mixed, ${mass(lossKg)} went elsewhere.`]),
  ];
}

/** What the weighings say of the coats still to come. */
export function aheadSentences({ ahead }: Weighins, reader: Reader): readonly string[] {
  const t = tell(reader);
  return ahead.map(
    ({ id, resinMassKg, resinMassLowKg, resinMassHighKg, plannedMassKg }) =>
      t`At this rate ${tellText(id, reader)} takes ${mass(resinMassKg)} mixed (${mass(resinMassLowKg)} to ${mass(resinMassHighKg)}); the plan has ${mass(plannedMassKg)}.`,
  );
}
