import { OWN_SHEET } from "../constants/ownSheet";
import type { PeroxideResin, Resin, SunlightResin, TwoPartResin } from "../constants/Resin";
import { EPOXY, POLYESTER, SUNLIGHT } from "../constants/resins";
import type { Sourced } from "../constants/Sourced";
import type { OwnPeroxideResin, OwnResinInput, OwnSunlightResin, OwnTwoPartResin } from "./OwnResinInput";

/**
 * A resin record from the builder's own sheet: what is given stands with the sheet's own spread, what is left out is that
 * of the generic resin of its kind.
 */
export function makeOwnResin(id: string, input: OwnResinInput): Resin {
  switch (input.kind) {
    case "peroxide":
      return makePeroxide(id, input);
    case "two-part":
      return makeTwoPart(id, input);
    case "sunlight":
      return makeSunlight(id, input);
  }
}

function makePeroxide(id: string, input: OwnPeroxideResin): PeroxideResin {
  return {
    ...POLYESTER,
    ...common(id, input, POLYESTER),
    ...withStyrene(input),
    kind: "peroxide",
    dose: { ...input.dose, source: "own-sheet" },
    promoter: input.promoter ?? POLYESTER.promoter,
    hardenerDensityKgM3: own(input.hardenerDensityKgM3, POLYESTER.hardenerDensityKgM3),
    gel: {
      points: input.gel,
      source: "own-sheet",
      betweenSheetsLogSd: { value: 0, source: "own-sheet" },
    },
  };
}

/** With the ratio by volume alone the parts' densities turn it into one by mass. */
function makeTwoPart(id: string, input: OwnTwoPartResin): TwoPartResin {
  const hardener = own(input.hardenerDensityKgM3, EPOXY.hardenerDensityKgM3);
  const shared = common(id, input, EPOXY);
  const byVolume = input.ratioByVolume;
  const byMass =
    input.ratioByMass ??
    (byVolume === undefined
      ? EPOXY.ratio.value
      : (byVolume * hardener.value) / shared.liquidDensityKgM3.value);
  const spread = OWN_SHEET.potLifeSpreadShare.value;
  const lifeS = input.potLife.durationS;
  return {
    ...EPOXY,
    ...shared,
    kind: "two-part",
    ratio: { value: byMass, source: "own-sheet" },
    ratioByVolume: byVolume ?? null,
    hardenerDensityKgM3: hardener,
    blushes: input.blushes ?? EPOXY.blushes,
    potLife: {
      massKg: input.potLife.massKg,
      temperatureK: input.potLife.temperatureK,
      durationS: { value: lifeS, low: lifeS * (1 - spread), high: lifeS * (1 + spread), source: "own-sheet" },
      massExponent: EPOXY.potLife.massExponent,
    },
  };
}

function makeSunlight(id: string, input: OwnSunlightResin): SunlightResin {
  const { exposure } = input;
  return {
    ...SUNLIGHT,
    ...common(id, input, SUNLIGHT),
    ...withStyrene(input),
    kind: "sunlight",
    exposure:
      exposure === undefined
        ? SUNLIGHT.exposure
        : { uvIndex: exposure.uvIndex, durationS: banded(exposure.durationS) },
  };
}

/** A time of the sheet, with the spread that any time of a sheet is given. */
function banded(durationS: number): Sourced {
  const share = OWN_SHEET.timeSpreadShare.value;
  return {
    value: durationS,
    low: durationS * (1 - share),
    high: durationS * (1 + share),
    source: "own-sheet",
  };
}

function own(value: number | undefined, generic: Sourced): Sourced {
  return value === undefined ? generic : { value, source: "own-sheet" };
}

function common(id: string, input: OwnResinInput, generic: Resin) {
  const window = input.recoatUntil;
  return {
    name: input.name ?? id,
    liquidDensityKgM3: own(input.liquidDensityKgM3, generic.liquidDensityKgM3),
    curedDensityKgM3: own(input.curedDensityKgM3, generic.curedDensityKgM3),
    leastCureTemperatureK: own(input.leastCureTemperatureK, generic.leastCureTemperatureK),
    recoatUntil:
      window === undefined
        ? generic.recoatUntil
        : { temperatureK: window.temperatureK, durationS: banded(window.durationS) },
  };
}

function withStyrene(input: OwnPeroxideResin | OwnSunlightResin) {
  const wax = input.waxVolumeShare;
  return {
    styreneShare: own(input.styreneShare, POLYESTER.styreneShare),
    waxVolumeShare: wax === null ? null : own(wax, POLYESTER.waxVolumeShare),
    dissolvesPolystyrene: true,
  };
}
