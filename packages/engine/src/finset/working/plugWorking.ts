import type { WorkingTable } from "../../foundation/stage";
import type { LeashPlugPlan } from "../FinsetPlan";
import { type Explained, explain, type FinsetContext, lengthIn, massIn, textIn } from "./FinsetContext";

const ofPlug = (explained: Explained<LeashPlugPlan>) =>
  explain(({ plan }) => plan.finset?.leashPlug, explained);

/** How the leash plug's numbers come about. */
export const plugWorking: WorkingTable<FinsetContext> = {
  "finset.leashPlug.fromTailM": ofPlug({
    words: "The leash plug up from the tail tips, straight, read as the fins' distances are.",
    formula: "stated distance, turned straight",
    inputs: (_plug, { board }) => [lengthIn("stated", board.fins?.leashPlug?.fromTailM)],
  }),
  "finset.leashPlug.fromTailTapeM": ofPlug({
    words: "The leash plug by tape.",
    formula: "length of the bottom's curve",
    inputs: (plug) => [lengthIn("straight", plug.fromTailM)],
  }),
  "finset.leashPlug.fromCrotchTapeM": ofPlug({
    words: "The leash plug as a tape from the crotch of the swallow tail reads it.",
    formula: "tape to the plug − tape to the crotch",
    inputs: (plug, { plan }) => [
      lengthIn("tape to the plug", plug.fromTailTapeM),
      lengthIn("crotch, straight", plan.finset?.line.crotchFromTailM),
    ],
  }),
  "finset.leashPlug.fromCentrelineM": ofPlug({
    words: "The leash plug out from the line the set is laid out about.",
    formula: "as stated in the board file",
    sources: ["convention"],
    inputs: (plug) => [lengthIn("stated", plug.fromCentrelineM)],
  }),
  "finset.leashPlug.toRailM": ofPlug({
    words: "From the plug's edge to the nearest point of the outline.",
    formula: "shortest distance from its middle − half its diameter",
    inputs: (plug) => [lengthIn("diameter", plug.diameterM)],
  }),
  "finset.leashPlug.toStringerM": ofPlug({
    words: "From the plug's edge to the middle of the stringer.",
    formula: "|y| − half its diameter",
    inputs: (plug) => [lengthIn("out", plug.fromCentrelineM), lengthIn("diameter", plug.diameterM)],
  }),
  "finset.leashPlug.diameterM": ofPlug({
    words: "Diameter of the plug.",
    formula: "as stated in the board file",
    sources: ["convention"],
    inputs: (plug) => [lengthIn("stated", plug.diameterM)],
  }),
  "finset.leashPlug.depthM": ofPlug({
    words: "Depth of the plug.",
    formula: "as stated in the board file",
    sources: ["convention"],
    inputs: (plug) => [lengthIn("stated", plug.depthM)],
  }),
  "finset.leashPlug.foamUnderM": ofPlug({
    words: "Least foam between the plug's floor and the bottom.",
    formula: "deck − bottom − depth, least over the middle and the rim",
    inputs: (plug) => [lengthIn("depth", plug.depthM)],
  }),
  "finset.leashPlug.toBoxM": ofPlug({
    words: "Gap to the nearest fin box: in plan, or through the foam where it lies beneath the plug.",
    formula: "distance in plan − half the diameter; beneath: thickness − plug depth − box depth",
    inputs: (plug) => [textIn("nearest", plug.box)],
  }),
  "finset.leashPlug.foamToBoxM": ofPlug({
    words: "Foam between the plug's floor and the floor of the box beneath it.",
    formula: "deck − bottom − plug depth − box depth",
    inputs: (plug) => [textIn("box beneath", plug.boxBeneath), lengthIn("plug depth", plug.depthM)],
  }),
  "finset.leashPlug.mostDepthM": ofPlug({
    words: "The deepest plug that still leaves the usual foam to the bottom and to a box beneath.",
    formula: "least of: deck − bottom − usual foam; deck − bottom − box depth − usual gap",
    sources: ["geometry", "common-practice"],
    inputs: (plug) => [textIn("box beneath", plug.boxBeneath)],
  }),
  "finset.leashPlug.patchDiameterM": ofPlug({
    words: "Across the cloth over the plug.",
    formula: "diameter + 2 × overlap",
    sources: ["common-practice"],
    inputs: (plug) => [lengthIn("diameter", plug.diameterM)],
  }),
  "finset.leashPlug.cureBeforeLoadS": ofPlug({
    words: "How long the plug is left alone; the resin's sheet goes before it where that asks for longer.",
    formula: "a day",
    sources: ["common-practice"],
    inputs: () => [],
  }),
  "finset.leashPlug.pullTestN": ofPlug({
    words:
      "The pull of the plug's test, straight up, once it is cured: if the plug moves, it is set again. In newtons; a declared convention, no published figure behind it.",
    formula: "F = m g, g = 9.80665 m/s²",
    sources: ["convention", "nist-811"],
    inputs: (plug) => [massIn("m, mass whose weight it is", plug.pullTestMassKg)],
  }),
  "finset.leashPlug.pullTestMassKg": ofPlug({
    words:
      "The mass whose weight the test's pull is, as a hanging scale shows it. A declared convention: about what one person pulls with both hands; no published figure behind it.",
    formula: "as declared",
    sources: ["convention"],
    inputs: () => [],
  }),
};
