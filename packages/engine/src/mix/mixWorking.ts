import { MAGNUS } from "../constants/dewPoint";
import { say } from "../foundation/phrase";
import { duration, fraction, temperature } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import { clockWorking } from "./clockWorking";
import { cupWorking } from "./cupWorking";
import { heatWorking } from "./heatWorking";
import { findCoat, findCoatResin, type MixContext } from "./MixContext";
import { resinWorking } from "./resinWorking";
import { vapourWorking } from "./vapourWorking";

const air = ({ board, plan }: MixContext, id: string | undefined): WorkingInput[] => {
  const coat = findCoat(plan, id);
  const given = board.shop?.temperature === undefined ? "not given, assumed" : "as given";
  return coat === undefined
    ? []
    : [{ name: say`shop's air, ${given}`, value: temperature(coat.temperatureK) }];
};

function doseRange(context: MixContext, id: string | undefined): WorkingInput[] {
  const resin = findCoatResin(context, id);
  if (resin?.kind === "two-part") return [{ name: "ratio of the sheet", value: fraction(resin.ratio.value) }];
  if (resin?.kind !== "peroxide") return [];
  return [
    { name: "least dose", value: fraction(resin.dose.least) },
    { name: "most dose", value: fraction(resin.dose.most) },
  ];
}

const airEnd = (words: string): Working<MixContext> => ({
  words,
  formula: "least and most of the shop's temperatures, as given",
  sources: ["convention"],
  inputs: ({ board }) => {
    const given = board.shop?.temperature;
    if (given === undefined) return [];
    if ("dayK" in given)
      return [
        { name: "shop's air by day", value: temperature(given.dayK) },
        { name: "shop's air by night", value: temperature(given.nightK) },
      ];
    return given.map(({ at, airK }) => ({ name: at, value: temperature(airK) }));
  },
});

/** How each number of the mix comes about, keyed by its path in the plan. */
export const mixWorking: WorkingTable<MixContext> = {
  "mix.dewPointK": {
    words: "where the shop's damp settles on anything colder",
    formula: "γ = ln(h) + aT/(b + T); T_dew = bγ/(a − γ); T in °C",
    sources: ["alduchov-1996"],
    inputs: ({ board, plan }) => [
      ...(board.shop?.humidity === undefined
        ? []
        : [{ name: "humidity h", value: fraction(board.shop.humidity) }]),
      ...(plan.mix?.coats
        .slice(0, 1)
        .map((coat) => ({ name: "air T", value: temperature(coat.temperatureK) })) ?? []),
      { name: "a", value: String(MAGNUS.a) },
      { name: "b, °C", value: String(MAGNUS.bC) },
    ],
  },
  "mix.airLowK": airEnd("the coldest that the shop's air comes to, as far as it is known"),
  "mix.airHighK": airEnd("the warmest that the shop's air comes to, as far as it is known"),
  "mix.coats[].temperatureK": {
    words: "the shop's air at the hour the coat goes on",
    formula:
      "day's temperature; of a list the air at the calendar's hour, or in the first working hour warm enough for the resin",
    sources: ["convention"],
    inputs: (context, [id]) => air(context, id),
  },
  "mix.coats[].resinTemperatureK": {
    words: "the resin before the hardener goes in",
    formula: "as given, else the shop's air at that hour",
    sources: ["convention"],
    inputs: (context, [id]) => {
      const given = context.board.shop?.resinTemperatureK;
      return given === undefined
        ? air(context, id)
        : [{ name: "resin, as given", value: temperature(given) }];
    },
  },
  "mix.coats[].hardenerRatio": {
    words:
      "peroxide: the strongest dose in the range whose early gel still leaves the time to spread a cup; two-part: the sheet's ratio",
    formula:
      "c so that t_gel,low(c, T) × (1 − margin) = t_spread, c_least ≤ c ≤ c_most; none where that cannot be",
    sources: ["peroxide-sheets", "epoxy-memory", "arrhenius", "convention"],
    inputs: (context, [id]) => [
      ...doseRange(context, id),
      ...air(context, id),
      ...(findCoat(context.plan, id)
        ?.cups.slice(0, 1)
        .map((cup) => ({
          name: "time to spread a cup",
          value: duration(cup.spreadS),
        })) ?? []),
    ],
  },
  ...resinWorking,
  ...clockWorking,
  ...cupWorking,
  ...heatWorking,
  ...vapourWorking,
};
