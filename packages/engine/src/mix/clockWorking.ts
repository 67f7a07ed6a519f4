import { CURE_STAGES, type CureStage, type EarlyStage } from "../constants/cureStages";
import { GEL_BAND } from "../constants/gelBand";
import { formatDecimal } from "../foundation/formatDecimal";
import { say } from "../foundation/phrase";
import { duration, fraction, mass, temperature } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import { bandedWorking } from "./bandedWorking";
import { fitGelModel } from "./fitGelModel";
import { findCoat, findCoatResin, findLayupCoat, type MixContext } from "./MixContext";

const CLOCK = "mix.coats[].clock";
const GEL_FORMULA =
  "peroxide: t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)]; two-part: t_ref (m/m_ref)^−p exp[(E/R)(1/T − 1/T_ref)]; ends: t e^±h";

/** The fitted model with the point it is pinned to. */
function model(context: MixContext, id: string | undefined): WorkingInput[] {
  const resin = findCoatResin(context, id);
  const fitted = resin === undefined ? null : fitGelModel(resin);
  if (fitted === null) return [];
  const { reference } = fitted;
  return [
    { name: "t_ref", value: duration(reference.gelS) },
    { name: "T_ref", value: temperature(reference.temperatureK) },
    { name: "c_ref", value: { ...fraction(reference.dose), grain: "fine" } },
    { name: "n", value: formatDecimal(fitted.exponent, 2) },
    { name: "E", value: say`${formatDecimal(fitted.activationEnergyJMol / 1000, 1)} kJ/mol` },
  ];
}

/** Of a cup as planned, at another temperature. */
function cupAt(context: MixContext, [id, place]: readonly string[]): WorkingInput[] {
  const at = findCoat(context.plan, id)?.gelBand[Number(place)];
  if (at === undefined) return [];
  const planned = cup(context, [id ?? ""]).slice(1);
  return [{ name: "resin T", value: temperature(at.temperatureK) }, ...planned];
}

function cup(context: MixContext, [id]: readonly string[]): WorkingInput[] {
  const coat = findCoat(context.plan, id);
  const first = coat?.cups[0];
  if (coat === undefined || first === undefined || coat.hardenerRatio === null) return [];
  return [
    { name: "resin T", value: temperature(coat.resinTemperatureK) },
    { name: "dose c", value: { ...fraction(coat.hardenerRatio), grain: "fine" } },
    { name: "mass m of a cup", value: mass(first.mixedMassKg) },
    ...model(context, id),
  ];
}

/** Film stages: what they are called in the constants, and in a builder's words. */
const STAGES: ReadonlyArray<{
  readonly field: string;
  readonly stage: CureStage | EarlyStage;
  readonly words: string;
}> = [
  {
    field: "pullTape",
    stage: "pullTape",
    words: "the film has gelled and is still soft: pull the rail tape",
  },
  { field: "trimFrom", stage: "trimFrom", words: "the film is leathery: trim from now" },
  {
    field: "trimUntil",
    stage: "trimUntil",
    words: "the first cup's cloth is too hard to cut: trim until then",
  },
  { field: "flip", stage: "flip", words: "the film bears the board's weight: turn it" },
  { field: "recoatFrom", stage: "recoatFrom", words: "the next coat no longer disturbs this one" },
  { field: "sandable", stage: "sandable", words: "hard enough to sand; firm all through for boxes and plug" },
  { field: "full", stage: "full", words: "as hard as it becomes: ready for the water" },
];

function stageInputs(stage: CureStage | EarlyStage): Working<MixContext>["inputs"] {
  return (context, ids) => {
    const resin = findCoatResin(context, ids[0]);
    if (resin === undefined || resin.kind === "sunlight") return [];
    const { filmOverPot, gels } = CURE_STAGES[resin.kind];
    const isBox = findLayupCoat(context.plan, ids[0])?.kind === "box";
    const multiple = gels[stage === "sandable" && isBox ? "firm" : stage];
    const { value, low = value, high = value } = multiple;
    return [
      { name: "film over cup", value: formatDecimal(filmOverPot.value, 1) },
      { name: "gel times of the film", value: say`${value} (${low} to ${high})` },
      { name: "nothing is credited below", value: temperature(resin.leastCureTemperatureK.value) },
      ...pace(context, ids[0]),
      ...model(context, ids[0]),
    ];
  };
}

/** What the record adds: the cups' own time, and the fingertips' word. */
function pace(context: MixContext, id: string | undefined): WorkingInput[] {
  const coat = findCoat(context.plan, id);
  if (coat?.startedAt == null) return [];
  return [
    { name: "last cup's hardener in, as recorded", value: coat.startedAt },
    ...(coat.paceRatio === null
      ? []
      : [{ name: "this film over the model, by fingertip", value: fraction(coat.paceRatio) }]),
  ];
}

const banded = (field: string, working: Working<MixContext>): WorkingTable<MixContext> =>
  bandedWorking(`${CLOCK}.${field}`, "S", working);

function stageWorking(field: string, stage: CureStage | EarlyStage, words: string): WorkingTable<MixContext> {
  return banded(field, {
    words,
    formula:
      "∫ dt / [t_gel(T_air(t)) × film over cup × gel times] = 1; the ends with each factor's range, in squares",
    sources: ["common-practice", "arrhenius"],
    inputs: stageInputs(stage),
  });
}

/** How the clocks of a coat come about, keyed by their path in the plan. */
export const clockWorking: WorkingTable<MixContext> = {
  ...bandedWorking("mix.coats[].pace", "Ratio", {
    words:
      "how many times as long as the model says this film takes, by fingertip tests after the cups that the record has",
    formula:
      "Bayes on ln(pace): the model's band before, each test as past one stage and not yet past the next",
    sources: ["convention", "common-practice"],
    inputs: (context, [id]) => pace(context, id),
  }),
  ...banded("potGel", {
    words:
      "the cup gels; the band is the fit's own with the spread between sheets, of thermometer and of scale, never under 20 %",
    formula: GEL_FORMULA,
    sources: [
      "arrhenius",
      "gel-table-115nt",
      "gel-tables-two-sheets",
      "redox-cure-energy",
      "epoxy-halving",
      "epoxy-memory",
      "student-t",
      "codata-2018",
    ],
    inputs: cup,
  }),
  "mix.coats[].gelBand[].temperatureK": {
    words: "a temperature of the resin, colder or warmer than planned, at which the cup's gel is told",
    formula:
      "even steps over all that the shop's air comes to, and at least 4 K to each side of the cup's own; none where the resin does not set or the fit reaches too far",
    sources: ["convention"],
    inputs: cupAt,
  },
  ...bandedWorking("mix.coats[].gelBand[].gel", "S", {
    words: "when a cup of this dose and mass gels with the resin at that temperature",
    formula: GEL_FORMULA,
    sources: ["arrhenius", "gel-table-115nt", "redox-cure-energy", "epoxy-halving", "epoxy-memory"],
    inputs: cupAt,
  }),
  [`${CLOCK}.spreadByS`]: {
    words: "all of the cup lies spread by then: the early end of its gel, less a margin for the last of it",
    formula: "t_spread-by = t_gel,low × (1 − margin)",
    sources: ["convention"],
    inputs: (context, ids) => {
      const clock = findCoat(context.plan, ids[0])?.clock ?? null;
      return [
        ...(clock === null ? [] : [{ name: "gel, early end t_gel,low", value: duration(clock.potGelLowS) }]),
        { name: "margin", value: fraction(GEL_BAND.spreadMarginShare.value) },
        ...cup(context, ids),
      ];
    },
  },
  ...Object.fromEntries(
    STAGES.flatMap(({ field, stage, words }) => Object.entries(stageWorking(field, stage, words))),
  ),
  ...banded("recoatUntil", {
    words: "after that the next coat only bonds to a sanded surface",
    formula:
      "∫ exp[(E/R)(1/T_ref − 1/T_air(t))] dt = window at T_ref, with the gel's own E; it goes on closing in the cold",
    sources: ["common-practice", "epoxy-memory", "arrhenius"],
    inputs: (context, [id]) => {
      const resin = findCoatResin(context, id);
      if (resin === undefined) return [];
      return [
        { name: "window", value: duration(resin.recoatUntil.durationS.value) },
        { name: "at T_ref", value: temperature(resin.recoatUntil.temperatureK) },
        ...model(context, id).slice(-1),
      ];
    },
  }),
};
