import { SEA_WATER_KG_M3 } from "../constants/seaWater";
import { density, mass, volume } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { bandWorking } from "../layup/bandWorking";
import type { WeightContext } from "./WeightContext";

const WATER: WorkingInput = { name: "sea water", value: density(SEA_WATER_KG_M3.value) };

function listVolume({ plan: { shape } }: WeightContext): WorkingInput[] {
  return shape === null ? [] : [{ name: "volume as shaped", value: volume(shape.volumeM3) }];
}

function listBoard({ plan: { weight } }: WeightContext): WorkingInput[] {
  return weight === null ? [] : [{ name: "finished board", value: mass(weight.finishedKg) }];
}

function listRider({ board }: WeightContext): WorkingInput[] {
  const riderKg = board.order?.riderMassKg;
  return riderKg === undefined ? [] : [{ name: "rider", value: mass(riderKg) }];
}

/** How the float check comes about. */
export const floatWorking: WorkingTable<WeightContext> = {
  "weight.float.waterDensityKgM3": {
    words: "density of sea water",
    formula: "salinity 35, 20 °C",
    sources: [SEA_WATER_KG_M3.source],
    inputs: () => [WATER],
  },
  ...bandWorking<WeightContext>("weight.float.displaces", "Kg", {
    words: "sea water that the shaped volume pushes aside when it is just under",
    formula: "ρ V",
    sources: ["archimedes", SEA_WATER_KG_M3.source],
    inputs: (context) => [WATER, ...listVolume(context)],
  }),
  ...bandWorking<WeightContext>("weight.float.carries", "Kg", {
    words: "what the board carries beside itself before it goes under",
    formula: "ρ V − finished board",
    sources: ["archimedes", SEA_WATER_KG_M3.source],
    inputs: (context) => [WATER, ...listVolume(context), ...listBoard(context)],
  }),
  "weight.float.riderKg": {
    words: "the rider, as the order gives it",
    formula: "as given",
    sources: ["convention"],
    inputs: listRider,
  },
  ...bandWorking<WeightContext>("weight.float.reserve", "Kg", {
    words:
      "what the board still carries under the rider; below nought the rider's own body must float the rest",
    formula: "ρ V − finished board − rider",
    sources: ["archimedes", SEA_WATER_KG_M3.source],
    inputs: (context) => [WATER, ...listVolume(context), ...listBoard(context), ...listRider(context)],
  }),
};
