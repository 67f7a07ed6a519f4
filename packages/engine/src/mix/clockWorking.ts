import { CURE_STAGES, type CureStage } from "../constants/cureStages";
import { RESINS } from "../constants/resins";
import { formatDecimal } from "../foundation/formatDecimal";
import { duration, fraction, mass, temperature } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import { fitGelModel } from "./fitGelModel";
import { findCoat, findLayupCoat, type MixContext } from "./MixContext";

const CLOCK = "mix.coats[].clock";

/** The fitted model with the point it is pinned to. */
function model(context: MixContext, id: string | undefined): WorkingInput[] {
  const resin = RESINS[findCoat(context.plan, id)?.resin ?? ""];
  const fitted = resin === undefined ? null : fitGelModel(resin);
  if (fitted === null) return [];
  const { reference } = fitted;
  return [
    { name: "t_ref", value: duration(reference.gelS) },
    { name: "T_ref", value: temperature(reference.temperatureK) },
    { name: "c_ref", value: { ...fraction(reference.dose), grain: "fine" } },
    { name: "n", value: formatDecimal(fitted.exponent, 2) },
    { name: "E", value: `${formatDecimal(fitted.activationEnergyJMol / 1000, 1)} kJ/mol` },
  ];
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
const STAGES: ReadonlyArray<{ readonly field: string; readonly stage: CureStage; readonly words: string }> = [
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

function stageInputs(stage: CureStage): Working<MixContext>["inputs"] {
  return (context, ids) => {
    const resin = RESINS[findCoat(context.plan, ids[0])?.resin ?? ""];
    if (resin === undefined || resin.kind === "sunlight") return [];
    const { filmOverPot, gels } = CURE_STAGES[resin.kind];
    const isBox = findLayupCoat(context.plan, ids[0])?.kind === "box";
    const multiple = gels[stage === "sandable" && isBox ? "firm" : stage];
    const { value, low = value, high = value } = multiple;
    return [
      { name: "film over cup", value: formatDecimal(filmOverPot.value, 1) },
      { name: "gel times of the film", value: `${value} (${low} to ${high})` },
      { name: "nothing is credited below", value: temperature(resin.leastCureTemperatureK.value) },
      ...model(context, ids[0]),
    ];
  };
}

/** One working for a time and for both ends of its band. */
function banded(field: string, working: Working<MixContext>): WorkingTable<MixContext> {
  const end = (which: string): Working<MixContext> => ({
    ...working,
    words: `${which} of about 90 %: ${working.words}`,
  });
  return {
    [`${CLOCK}.${field}S`]: working,
    [`${CLOCK}.${field}LowS`]: end("early end of a band"),
    [`${CLOCK}.${field}HighS`]: end("late end of a band"),
  };
}

function stageWorking(field: string, stage: CureStage, words: string): WorkingTable<MixContext> {
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
  ...banded("potGel", {
    words:
      "the cup gels; the band is the fit's own with the spread between sheets, of thermometer and of scale, never under 20 %",
    formula:
      "peroxide: t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)]; two-part: t_ref (m/m_ref)^−p exp[(E/R)(1/T − 1/T_ref)]; ends: t e^±h",
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
  [`${CLOCK}.spreadByS`]: {
    words: "all of the cup lies spread by then: the early end of its gel",
    formula: "t_spread-by = t_gel,low",
    sources: ["convention"],
    inputs: cup,
  },
  ...Object.fromEntries(
    STAGES.flatMap(({ field, stage, words }) => Object.entries(stageWorking(field, stage, words))),
  ),
  ...banded("recoatUntil", {
    words: "after that the next coat only bonds to a sanded surface",
    formula: "∫ exp[(E/R)(1/T_ref − 1/T_air(t))] dt = window at T_ref; it goes on closing in the cold",
    sources: ["common-practice", "epoxy-memory", "arrhenius"],
    inputs: (context, [id]) => {
      const resin = RESINS[findCoat(context.plan, id)?.resin ?? ""];
      if (resin === undefined) return [];
      return [
        { name: "window", value: duration(resin.recoatUntil.durationS.value) },
        { name: "at T_ref", value: temperature(resin.recoatUntil.temperatureK) },
        { name: "E", value: `${formatDecimal(resin.activationEnergyJMol.value / 1000, 1)} kJ/mol` },
      ];
    },
  }),
};
