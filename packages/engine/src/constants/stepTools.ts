import type { SourceId } from "../sources/sources";
import type { SpreadKind, WorkId } from "./workTimes";

interface Tool {
  readonly title: string;
  readonly source: SourceId;
}

/** What is taken into the hand, in the order in which it lies ready; the blades and papers on it belong to the materials. */
export const TOOLS = {
  goggles: { title: "goggles", source: "common-practice" },
  gloves: { title: "nitrile gloves, several pairs", source: "common-practice" },
  vapourMask: { title: "mask with organic-vapour cartridges", source: "common-practice" },
  dustMask: { title: "mask with particle filters", source: "common-practice" },
  extraction: { title: "dust extraction at the tool", source: "common-practice" },
  scale: { title: "scale that reads a tenth of a gram", source: "common-practice" },
  timer: { title: "timer", source: "common-practice" },
  thermometer: { title: "thermometer", source: "common-practice" },
  spreader: { title: "plastic spreader", source: "common-practice" },
  brush: { title: "wide soft brush", source: "common-practice" },
  smallBrush: { title: "small brush", source: "common-practice" },
  scissors: { title: "scissors for cloth", source: "common-practice" },
  knife: { title: "knife with a new blade", source: "common-practice" },
  block: { title: "sanding block", source: "common-practice" },
  sander: { title: "sander with hard and soft pads", source: "common-practice" },
  wetBlock: { title: "rubber block, bucket and sponge", source: "common-practice" },
  polisher: { title: "polisher with a clean pad", source: "common-practice" },
  pencil: { title: "soft pencil", source: "common-practice" },
  straightedge: { title: "straightedge and tape", source: "common-practice" },
  square: { title: "square and cant gauge", source: "common-practice" },
  string: { title: "check string", source: "common-practice" },
  router: { title: "router with its frame and depth stop", source: "common-practice" },
  holeSaw: { title: "hole cutter with a depth stop", source: "common-practice" },
  syringe: { title: "syringe or small cup for the pour", source: "common-practice" },
  fanDry: { title: "dry warm room, moving air", source: "common-practice" },
  pullScale: { title: "pull scale for the leash plug", source: "common-practice" },
} as const satisfies Record<string, Tool>;

type ToolId = keyof typeof TOOLS;

const RESIN: readonly ToolId[] = ["goggles", "gloves", "vapourMask", "scale", "timer", "thermometer"];
const DUST: readonly ToolId[] = ["goggles", "dustMask", "extraction"];

/** Tools by the kind of resin work. */
export const SPREAD_TOOLS: Readonly<Record<SpreadKind, readonly ToolId[]>> = {
  seal: [...RESIN, "spreader"],
  laminate: [...RESIN, "scissors", "spreader", "smallBrush"],
  fill: [...RESIN, "brush"],
  gloss: [...RESIN, "brush"],
  box: [...RESIN, "syringe"],
  repair: [...RESIN, "scissors", "smallBrush"],
  "repair-fill": [...RESIN, "smallBrush"],
};

/** Tools by the kind of other work. */
export const WORK_TOOLS: Readonly<Record<WorkId, readonly ToolId[]>> = {
  prep: [...DUST, "block"],
  marking: ["pencil", "straightedge", "square", "string"],
  trim: ["gloves", "knife"],
  masking: ["straightedge", "knife"],
  logos: [...RESIN, "smallBrush"],
  pinline: ["gloves", "knife", "smallBrush"],
  vent: [...DUST, "holeSaw"],
  laps: [...DUST, "block"],
  routing: [...DUST, "router", "straightedge", "string"],
  tacking: ["gloves", "square", "string", "syringe"],
  plug: [...DUST, "holeSaw"],
  sanding: [...DUST, "sander", "block"],
  wetSanding: ["gloves", "wetBlock"],
  polishing: ["goggles", "polisher"],
  repairDry: ["fanDry"],
  repairFeather: [...DUST, "block"],
  repairSand: [...DUST, "block"],
  rest: [],
  lastLook: ["pullScale", "scale"],
};
