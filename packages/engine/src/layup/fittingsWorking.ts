import { POCKET_GAP_M } from "../constants/fittings";
import { length, volume } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { bandWorking } from "./bandWorking";
import { byId, fromLayup, type LayupContext } from "./LayupContext";

/** How the volumes of boxes and plug, and of the pockets cut for them, come about. */
export const fittingsWorking: WorkingTable<LayupContext> = {
  "layup.fittings[].bodyVolumeM3": {
    words: "the box's outer block, or the plug's cylinder",
    formula: "length × width × depth, or π/4 × diameter² × depth",
    sources: ["geometry"],
    inputs: ({ board: { fins } }, [id]) => listSize(fins, id),
  },
  ...bandWorking<LayupContext>("layup.fittings[].pocketVolume", "M3", {
    words: "what is cut out of the board: the body with a gap for resin beside and beneath it",
    formula: "(length + 2 g)(width + 2 g)(depth + g), or π/4 (diameter + 2 g)² (depth + g)",
    sources: ["geometry", POCKET_GAP_M.source],
    inputs: fromLayup((layup, [id]) =>
      byId(layup.fittings, id, ({ bodyVolumeM3 }) => [
        { name: "body", value: volume(bodyVolumeM3) },
        { name: "gap g", value: length(POCKET_GAP_M.value) },
      ]),
    ),
  }),
};

function listSize(fins: LayupContext["board"]["fins"], id: string | undefined): WorkingInput[] {
  if (id === "leash-plug") {
    const { diameterM, depthM } = fins?.leashPlug ?? {};
    return [show("diameter", diameterM), show("depth", depthM)];
  }
  const box = fins?.set.find(({ fin }) => id === fin || id === `${fin}-left` || id === `${fin}-right`)?.box;
  return [show("length", box?.lengthM), show("width", box?.widthM), show("depth", box?.depthM)];
}

function show(name: string, sizeM: number | undefined): WorkingInput {
  return { name, value: sizeM === undefined ? "not given, a generic size is taken" : length(sizeM) };
}
