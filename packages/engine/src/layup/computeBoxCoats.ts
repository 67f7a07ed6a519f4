import { POCKET_GAP_M } from "../constants/fittings";
import { LEFT_ON_TOOLS_KG } from "../constants/handling";
import type { Sourced } from "../constants/Sourced";
import { computeAroundM3, computeMouthM2 } from "../geometry/bodyVolume";
import { composeCoat } from "./composeCoat";
import type { CoatPlan } from "./LayupPlan";
import type { Schedule } from "./Schedule";
import type { Socket } from "./Socket";

/** Resin around the boxes, and around the leash plug: the gap between body and pocket, filled, once cured; a filler takes its own room. */
export function computeBoxCoats(schedule: Schedule, sockets: readonly Socket[]): CoatPlan[] {
  const boxes = sockets.filter((socket) => socket.kind === "box");
  const plugs = sockets.filter((socket) => socket.kind === "plug");
  return [
    ...(boxes.length > 0 ? [computeBoxCoat(schedule, "boxes", boxes)] : []),
    ...(plugs.length > 0 ? [computeBoxCoat(schedule, "leash-plug", plugs)] : []),
  ];
}

function computeBoxCoat(
  schedule: Schedule,
  id: "boxes" | "leash-plug",
  sockets: readonly Socket[],
): CoatPlan {
  const chosen = schedule.resins.box;
  const { box: filler } = schedule.fillers;
  const fillerM3Kg = filler === null ? 0 : filler.shareByMass.value / filler.densityKgM3.value;
  return composeCoat({
    id,
    kind: "box",
    face: null,
    resin: chosen.id,
    areaM2: sockets.reduce((sumM2, { body }) => sumM2 + computeMouthM2(body), 0),
    drivers: {
      gapM: POCKET_GAP_M,
      densityKgM3: chosen.resin.curedDensityKgM3,
      lossShare: chosen.resin.styreneLossShare,
    },
    filler: schedule.fillers.box,
    toolsKg: times(LEFT_ON_TOOLS_KG.pour, sockets.length),
    terms: ({ gapM, densityKgM3, lossShare }) => {
      const gapM3 = sockets.reduce((sumM3, { body }) => sumM3 + computeAroundM3(body, gapM), 0);
      const keptKg = gapM3 / (1 / densityKgM3 + fillerM3Kg);
      return { "around-boxes": keptKg, "styrene-lost": (keptKg * lossShare) / (1 - lossShare) };
    },
  });
}

function times(
  kg: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly source: Sourced["source"];
  },
  n: number,
): Sourced {
  return { value: n * kg.value, low: n * kg.low, high: n * kg.high, source: kg.source };
}
