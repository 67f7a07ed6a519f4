import { MAGNUS } from "../constants/dewPoint";
import { RESINS } from "../constants/resins";
import { EXPERIENCE, MOST_IN_CUP_KG, SPREAD_TIMES, TWO_PEOPLE_SPREAD } from "../constants/workTimes";
import { density, duration, fraction, mass, temperature } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { clockWorking } from "./clockWorking";
import { crewOf } from "./crewOf";
import { findCoat, findLayupCoat, type MixContext } from "./MixContext";

const air = ({ board, plan }: MixContext, id: string | undefined): WorkingInput[] => {
  const coat = findCoat(plan, id);
  const given = board.shop?.temperature === undefined ? "not given, assumed" : "as given";
  return coat === undefined ? [] : [{ name: `shop's air, ${given}`, value: temperature(coat.temperatureK) }];
};

const ratioOf = (context: MixContext, id: string | undefined): WorkingInput[] => {
  const ratio = findCoat(context.plan, id)?.hardenerRatio ?? null;
  return ratio === null ? [] : [{ name: "hardener over base", value: { ...fraction(ratio), grain: "fine" } }];
};

const coatMass = (context: MixContext, id: string | undefined): WorkingInput[] => {
  const coat = findLayupCoat(context.plan, id);
  return coat === undefined ? [] : [{ name: "resin of the coat", value: mass(coat.resinMassKg) }];
};

const cupMass = (context: MixContext, [id, cup]: readonly string[]): WorkingInput[] => {
  const found = findCoat(context.plan, id)?.cups[Number(cup)];
  return found === undefined ? [] : [{ name: "mixed in the cup", value: mass(found.mixedMassKg) }];
};

function doseRange(context: MixContext, id: string | undefined): WorkingInput[] {
  const resin = RESINS[findCoat(context.plan, id)?.resin ?? ""];
  if (resin?.kind === "two-part") return [{ name: "ratio of the sheet", value: fraction(resin.ratio.value) }];
  if (resin?.kind !== "peroxide") return [];
  return [
    { name: "least dose", value: fraction(resin.dose.least) },
    { name: "most dose", value: fraction(resin.dose.most) },
  ];
}

function spreading(context: MixContext, ids: readonly string[]): WorkingInput[] {
  const kind = findLayupCoat(context.plan, ids[0])?.kind;
  if (kind === undefined) return [];
  const crew = crewOf(context.board.shop);
  return [
    ...cupMass(context, ids),
    { name: "mixing and pouring, trade hand", value: duration(SPREAD_TIMES[kind].cupS.value) },
    { name: "spreading one kilogram, trade hand", value: duration(SPREAD_TIMES[kind].perKgS.value) },
    { name: `practice: ${crew.experience}, times`, value: String(EXPERIENCE[crew.experience].work.value) },
    { name: "hands, as one", value: String(crew.people >= 2 ? TWO_PEOPLE_SPREAD.value : 1) },
  ];
}

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
  "mix.coats[].temperatureK": {
    words: "the shop's air in the working hours",
    formula: "day's temperature, or the mean of the list over the hours",
    sources: ["convention"],
    inputs: (context, [id]) => air(context, id),
  },
  "mix.coats[].resinTemperatureK": {
    words: "the resin before the hardener goes in",
    formula: "as given, else the shop's air",
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
    formula: "c so that t_gel,low(c, T) = t_spread, c_least ≤ c ≤ c_most; none where that cannot be",
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
  ...clockWorking,
  "mix.coats[].cups[].mixedMassKg": {
    words:
      "the coat's resin in equal cups: a laminate in as few as can each be spread in time, any other coat in one",
    formula: "m = coat / number of cups",
    sources: ["mass-balance", "common-practice"],
    inputs: (context, [id]) => {
      const coat = findCoat(context.plan, id);
      const kind = RESINS[coat?.resin ?? ""]?.kind;
      return [
        ...coatMass(context, id),
        { name: "cups", value: String(coat?.cups.length ?? 0) },
        ...(kind === undefined ? [] : [{ name: "most in one cup", value: mass(MOST_IN_CUP_KG[kind].value) }]),
      ];
    },
  },
  "mix.coats[].cups[].baseMassKg": {
    words: "resin to weigh into the cup",
    formula: "base = mixed / (1 + ratio)",
    sources: ["mass-balance"],
    inputs: (context, ids) => [...cupMass(context, ids), ...ratioOf(context, ids[0])],
  },
  "mix.coats[].cups[].hardenerMassKg": {
    words: "hardener to weigh in",
    formula: "hardener = mixed − base = ratio × base",
    sources: ["mass-balance"],
    inputs: (context, ids) => [...cupMass(context, ids), ...ratioOf(context, ids[0])],
  },
  "mix.coats[].cups[].hardenerVolumeM3": {
    words: "the same hardener by volume; weigh it where you can",
    formula: "V = hardener / ρ",
    sources: ["mass-balance", "peroxide-density", "epoxy-memory"],
    inputs: (context, ids) => {
      const resin = RESINS[findCoat(context.plan, ids[0])?.resin ?? ""];
      const rho = resin === undefined || resin.kind === "sunlight" ? null : resin.hardenerDensityKgM3.value;
      return [
        ...cupMass(context, ids),
        ...(rho === null ? [] : [{ name: "hardener's density", value: density(rho) }]),
      ];
    },
  },
  "mix.coats[].cups[].waxVolumeM3": {
    words: "wax solution on top, for a coat that is to be sanded; the middle of the supplier's range",
    formula: "V = share × base / ρ_resin; nought for laminates, boxes and epoxy",
    sources: ["wax-supplier"],
    inputs: (context, ids) => {
      const resin = RESINS[findCoat(context.plan, ids[0])?.resin ?? ""];
      const share = resin === undefined || resin.kind === "two-part" ? null : resin.waxVolumeShare;
      return [
        ...cupMass(context, ids),
        ...(share === null ? [] : [{ name: "share by volume", value: fraction(share.value) }]),
      ];
    },
  },
  "mix.coats[].cups[].mixAtS": {
    words: "when this cup's hardener goes in, from the first cup's: once the one before lies spread",
    formula: "t = number of cups before × time to spread one",
    sources: ["convention"],
    inputs: spreading,
  },
  "mix.coats[].cups[].spreadS": {
    words: "mixing, pouring and spreading one cup",
    formula: "t = practice × (cup + per kg × mass / hands)",
    sources: ["common-practice"],
    inputs: spreading,
  },
};
