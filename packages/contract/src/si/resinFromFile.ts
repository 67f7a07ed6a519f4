import type { MaterialsInput } from "@lapline/engine";
import type { RecoatFile, ResinFile } from "../file/MaterialsFile";
import { readRatio } from "../reading/readRatio";
import { asIs, densityKgM3, durationS, given, massKg, share, temperatureK } from "./given";

type OwnResin = NonNullable<MaterialsInput["resins"]>[string];

export function resinFromFile(file: ResinFile): OwnResin {
  const common = {
    ...given("name", file.name, asIs),
    ...given("liquidDensityKgM3", file.density, densityKgM3),
    ...given("curedDensityKgM3", file.curedDensity, densityKgM3),
    ...given("leastCureTemperatureK", file.leastTemperature, temperatureK),
    ...given("recoatUntil", file.recoat, recoatFromFile),
  };
  switch (file.kind) {
    case "peroxide":
      return {
        ...common,
        kind: "peroxide",
        dose: { least: share(file.dose.least), most: share(file.dose.most) },
        gel: file.gel.map((line) => ({
          temperatureK: temperatureK(line.temperature),
          dose: share(line.dose),
          gelS: durationS(line.gels),
        })),
        ...given("promoter", file.promoter, (promoter) =>
          promoter === "to-add" ? "to be added" : "in the resin",
        ),
        ...given("styreneShare", file.styrene, share),
        ...given("waxVolumeShare", file.wax, waxFromFile),
        ...given("hardenerDensityKgM3", file.hardenerDensity, densityKgM3),
      };
    case "two-part":
      return {
        ...common,
        kind: "two-part",
        ...given("ratioByMass", file.ratioByMass, ratioFromFile),
        ...given("ratioByVolume", file.ratioByVolume, ratioFromFile),
        potLife: {
          massKg: massKg(file.potLife.mass),
          temperatureK: temperatureK(file.potLife.temperature),
          durationS: durationS(file.potLife.lasts),
        },
        ...given("hardenerDensityKgM3", file.hardenerDensity, densityKgM3),
        ...given("blushes", file.blushes, asIs),
      };
    case "sunlight":
      return {
        ...common,
        kind: "sunlight",
        ...given("exposure", file.exposure, ({ uvIndex, takes }) => ({
          uvIndex,
          durationS: durationS(takes),
        })),
        ...given("styreneShare", file.styrene, share),
        ...given("waxVolumeShare", file.wax, waxFromFile),
      };
  }
}

function recoatFromFile(file: RecoatFile) {
  return { temperatureK: temperatureK(file.at), durationS: durationS(file.until) };
}

const waxFromFile = (text: string): number | null => (text === "none" ? null : share(text));

/** Hardener over base. */
function ratioFromFile(text: string): number {
  const read = readRatio(text);
  if (read === null) throw new RangeError(`${text} is no ratio`);
  return read.hardener / read.base;
}
