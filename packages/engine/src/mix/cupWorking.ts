import { EXPERIENCE, MOST_IN_CUP_KG, SPREAD_TIMES, TWO_PEOPLE_SPREAD } from "../constants/workTimes";
import { say } from "../foundation/phrase";
import { density, duration, fraction, mass } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import { crewOf } from "./crewOf";
import { findCoat, findCoatResin, findLayupCoat, type MixContext } from "./MixContext";

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

function spreading(context: MixContext, ids: readonly string[]): WorkingInput[] {
  const kind = findLayupCoat(context.plan, ids[0])?.kind;
  if (kind === undefined) return [];
  const crew = crewOf(context.board.shop);
  return [
    ...cupMass(context, ids),
    { name: "mixing and pouring, trade hand", value: duration(SPREAD_TIMES[kind].cupS.value) },
    { name: "spreading one kilogram, trade hand", value: duration(SPREAD_TIMES[kind].perKgS.value) },
    { name: say`practice: ${crew.experience}, times`, value: String(EXPERIENCE[crew.experience].work.value) },
    { name: "hands, as one", value: String(crew.people >= 2 ? TWO_PEOPLE_SPREAD.value : 1) },
  ];
}

function tint({ board, plan }: MixContext, id: string | undefined): WorkingInput[] {
  const kind = findLayupCoat(plan, id)?.kind;
  const isTinted = kind === "laminate" || kind === "fill" || kind === "gloss";
  const share = isTinted ? board.glass?.tint?.[kind] : undefined;
  return share === undefined
    ? []
    : [{ name: "tint, as given", value: { ...fraction(share), grain: "fine" } }];
}

const place: Working<MixContext> = {
  words:
    "the stretch of the board that this cup covers, along the outline: equal shares of the face, the nose first",
  formula: "∫ width dx over the stretch = face / number of cups",
  sources: ["convention", "geometry"],
  inputs: (context, [id]) => [{ name: "cups", value: String(findCoat(context.plan, id)?.cups.length ?? 0) }],
};

/** How each number of a cup comes about. */
export const cupWorking: WorkingTable<MixContext> = {
  "mix.coats[].cups[].mixedMassKg": {
    words:
      "the coat's resin in equal cups: a laminate in as few as can each be spread in time, any other coat in one",
    formula: "m = coat / number of cups",
    sources: ["mass-balance", "common-practice"],
    inputs: (context, [id]) => {
      const coat = findCoat(context.plan, id);
      const kind = findCoatResin(context, id)?.kind;
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
    sources: ["mass-balance"],
    sourcesOf: (context, ids) => {
      const resin = findCoatResin(context, ids[0]);
      return resin === undefined || resin.kind === "sunlight" ? [] : [resin.hardenerDensityKgM3.source];
    },
    inputs: (context, ids) => {
      const resin = findCoatResin(context, ids[0]);
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
      const resin = findCoatResin(context, ids[0]);
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
  "mix.coats[].cups[].hardenerDrops": {
    words: "the same hardener in drops of your own bottle; a drop is your own count, and a scale is better",
    formula: "drops = V × drops in a millilitre",
    sources: ["own-sheet"],
    inputs: (context, ids) => [
      ...cupMass(context, ids),
      {
        name: "drops in a millilitre, as given",
        value: String(context.board.shop?.dropsPerMl ?? "not given"),
      },
    ],
  },
  "mix.coats[].cups[].tintMassKg": {
    words: "tint that is in the cup's resin, from the master batch",
    formula: "tint = share × base; nought without",
    sources: ["mass-balance"],
    inputs: (context, ids) => [...cupMass(context, ids), ...tint(context, ids[0])],
  },
  "mix.coats[].cups[].tintedBaseKg": {
    words: "what is weighed into the cup from the master batch: its resin with the tint in it",
    formula: "base + tint",
    sources: ["mass-balance"],
    inputs: (context, ids) => [...cupMass(context, ids), ...tint(context, ids[0])],
  },
  "mix.coats[].masterBatch.baseMassKg": {
    words: "resin of all the cups, coloured at once so that they match",
    formula: "base of one cup × number of cups",
    sources: ["mass-balance"],
    inputs: (context, [id]) => coatMass(context, id),
  },
  "mix.coats[].masterBatch.tintMassKg": {
    words: "tint stirred into the master batch before any cup is dosed",
    formula: "share × base of the master batch",
    sources: ["mass-balance"],
    inputs: (context, [id]) => [...coatMass(context, id), ...tint(context, id)],
  },
  "mix.coats[].cups[].fromTailM": place,
  "mix.coats[].cups[].toM": place,
};
