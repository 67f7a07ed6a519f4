import { kelvinFromCelsius, S_PER_HOUR, S_PER_MINUTE } from "../foundation/units";
import type { PeroxideResin, Resin, SunlightResin, TwoPartResin } from "./Resin";
import type { Sourced } from "./Sourced";

/** Orthophthalic, for laminating, promoter in the resin. */
export const POLYESTER: PeroxideResin & { readonly waxVolumeShare: Sourced } = {
  kind: "peroxide",
  name: "laminating polyester",
  dissolvesPolystyrene: true,
  liquidDensityKgM3: { value: 1115, low: 1080, high: 1150, source: "polyester-sheets" },
  curedDensityKgM3: { value: 1200, low: 1180, high: 1220, source: "polyester-sheets" },
  styreneShare: { value: 0.4, low: 0.35, high: 0.45, source: "polyester-memory" },
  styreneLossShare: { value: 0.05, low: 0.04, high: 0.06, source: "common-practice" },
  leastCureTemperatureK: { value: kelvinFromCelsius(15), source: "peroxide-sheets" },
  activationEnergyJMol: { value: 55_000, low: 40_000, high: 65_000, source: "redox-cure-energy" },
  recoatUntil: {
    temperatureK: kelvinFromCelsius(20),
    durationS: {
      value: 48 * S_PER_HOUR,
      low: 24 * S_PER_HOUR,
      high: 72 * S_PER_HOUR,
      source: "common-practice",
    },
  },
  promoter: "in the resin",
  dose: { least: 0.01, most: 0.02, source: "peroxide-sheets" },
  hardenerDensityKgM3: { value: 1140, low: 1100, high: 1180, source: "peroxide-density" },
  // Middle of the two sheets' exponents, 0.6 and 1.4.
  doseExponent: { value: 1, low: 0.6, high: 1.4, source: "gel-tables-two-sheets" },
  gel: {
    points: [
      { temperatureK: kelvinFromCelsius(15), dose: 0.01, gelS: 74 * S_PER_MINUTE },
      { temperatureK: kelvinFromCelsius(15), dose: 0.02, gelS: 28 * S_PER_MINUTE },
      { temperatureK: kelvinFromCelsius(20), dose: 0.01, gelS: 48 * S_PER_MINUTE },
      { temperatureK: kelvinFromCelsius(20), dose: 0.02, gelS: 19 * S_PER_MINUTE },
    ],
    source: "gel-table-115nt",
    // Root mean square of ln(62/74) and ln(41/28), the other sheet's times over this one's at 15 °C: 0.297.
    betweenSheetsLogSd: { value: 0.3, source: "gel-tables-two-sheets" },
  },
  waxVolumeShare: { value: 0.0235, low: 0.016, high: 0.031, source: "wax-supplier" },
};

/** Room-temperature laminating epoxy with a medium hardener. */
export const EPOXY: TwoPartResin = {
  kind: "two-part",
  name: "laminating epoxy",
  dissolvesPolystyrene: false,
  liquidDensityKgM3: { value: 1155, low: 1150, high: 1160, source: "epoxy-sheets" },
  curedDensityKgM3: { value: 1165, low: 1150, high: 1180, source: "epoxy-memory" },
  styreneShare: { value: 0, source: "epoxy-memory" },
  styreneLossShare: { value: 0, source: "epoxy-memory" },
  leastCureTemperatureK: {
    value: kelvinFromCelsius(15),
    low: kelvinFromCelsius(10),
    high: kelvinFromCelsius(18),
    source: "epoxy-memory",
  },
  activationEnergyJMol: { value: 51_000, low: 40_000, high: 65_000, source: "epoxy-halving" },
  recoatUntil: {
    temperatureK: kelvinFromCelsius(20),
    durationS: {
      value: 24 * S_PER_HOUR,
      low: 12 * S_PER_HOUR,
      high: 48 * S_PER_HOUR,
      source: "epoxy-memory",
    },
  },
  ratio: { value: 0.45, low: 0.4, high: 0.5, source: "epoxy-memory" },
  ratioByVolume: null,
  blushes: true,
  hardenerDensityKgM3: { value: 1000, low: 950, high: 1050, source: "epoxy-memory" },
  potLife: {
    massKg: 0.1,
    temperatureK: kelvinFromCelsius(20),
    durationS: {
      value: 40 * S_PER_MINUTE,
      low: 27 * S_PER_MINUTE,
      high: 60 * S_PER_MINUTE,
      source: "epoxy-memory",
    },
    massExponent: { value: 0.3, low: 0.15, high: 0.5, source: "epoxy-memory" },
  },
};

/** The same polyester with a photo-initiator instead of peroxide. */
export const SUNLIGHT: SunlightResin = {
  kind: "sunlight",
  name: "sunlight-cured polyester",
  dissolvesPolystyrene: true,
  liquidDensityKgM3: POLYESTER.liquidDensityKgM3,
  curedDensityKgM3: POLYESTER.curedDensityKgM3,
  styreneShare: POLYESTER.styreneShare,
  styreneLossShare: POLYESTER.styreneLossShare,
  leastCureTemperatureK: POLYESTER.leastCureTemperatureK,
  activationEnergyJMol: POLYESTER.activationEnergyJMol,
  recoatUntil: POLYESTER.recoatUntil,
  exposure: {
    uvIndex: 6,
    durationS: {
      value: 8 * S_PER_MINUTE,
      low: 4 * S_PER_MINUTE,
      high: 15 * S_PER_MINUTE,
      source: "sunlight-memory",
    },
  },
  waxVolumeShare: POLYESTER.waxVolumeShare,
};

/**
 * The resins that a board file can name. Generic stand-ins with wide bands: a builder's own sheet and cups are always
 * better.
 */
export const RESINS: Readonly<Record<string, Resin>> = {
  polyester: POLYESTER,
  epoxy: EPOXY,
  sunlight: SUNLIGHT,
};
