import { ARRANGEMENTS, BOX_TIMINGS, formatQuantity, MOST_CANT, SIDES_RULES } from "@lapline/engine";
import type { z } from "zod";
import type { AsSetFile, BoxFile, FinFile, FinsFile, LeashPlugFile, ToeFile } from "../file/FinsFile";
import { fields } from "./fields";
import { quantity } from "./quantity";
import { ALONG } from "./surveySchema";
import { verifySchema } from "./verifySchema";
import { id, listOf, oneOf } from "./words";

const length = (least: string, most: string) => quantity("length", { least, most });
const angle = (least: string, most: string) => quantity("angle", { least, most });
const along = () => quantity("length", ALONG);
const across = () => length("0 mm", "0.75 m");
/** The engine's own limit, so that there is one. */
const MOST_CANT_TEXT = formatQuantity({ dimension: "angle", value: MOST_CANT.rad, grain: "coarse" }, "mm");
const cant = () => angle(`-${MOST_CANT_TEXT}`, MOST_CANT_TEXT);
const fin = () => id("a fin's name", "front");

const TOE = {
  aimBesideNose: length("-1 m", "1 m").exactOptional(),
  aimBeyondNose: length("0 mm", "100 m").exactOptional(),
  overBase: length("-50 mm", "50 mm").exactOptional(),
  angle: angle("-30 deg", "30 deg").exactOptional(),
  meets: fin().exactOptional(),
};

/** Exactly one way: two could contradict each other. */
const toe: z.ZodType<ToeFile> = fields("toe", TOE)
  .refine((value) => Object.keys(value).length === 1, {
    error: `state toe in one way: one of ${Object.keys(TOE)
      .map((key) => `"${key}"`)
      .join(", ")}`,
  })
  .meta({ minProperties: 1, maxProperties: 1 });

const box: z.ZodType<BoxFile> = fields("a box", {
  length: length("10 mm", "0.6 m"),
  width: length("3 mm", "100 mm"),
  depth: length("2 mm", "100 mm"),
  behindTrailing: length("-0.3 m", "0.3 m").exactOptional(),
});

const finInSet: z.ZodType<FinFile> = fields("a fin", {
  fin: fin(),
  fromTail: along(),
  fromRail: across().exactOptional(),
  fromRailBy: oneOf(["square-to-centreline", "square-to-rail"]).exactOptional(),
  base: length("10 mm", "0.6 m"),
  toe: toe.exactOptional(),
  cant: cant().exactOptional(),
  depth: length("5 mm", "0.5 m").exactOptional(),
  sweep: angle("-45 deg", "80 deg").exactOptional(),
  foil: fields("a foil", {
    kind: oneOf(["flat-inside", "symmetric"]),
    thickness: quantity("fraction", { least: "1 %", most: "30 %" }).exactOptional(),
  }).exactOptional(),
  box: box.exactOptional(),
});

const leashPlug: z.ZodType<LeashPlugFile> = fields("the leash plug", {
  fromTail: length("0 mm", "1 m"),
  fromCentreline: length("0 mm", "0.4 m"),
  side: oneOf(["left", "right"]).exactOptional(),
  diameter: length("5 mm", "80 mm").exactOptional(),
  depth: length("3 mm", "80 mm").exactOptional(),
});

const place = (what: string) =>
  fields(what, { fromTail: along().exactOptional(), fromCentreline: across().exactOptional() });

const asSet: z.ZodType<AsSetFile> = fields("a fin as set", {
  fin: fin(),
  side: oneOf(["left", "right"]).exactOptional(),
  on: oneOf(["foam", "laminate", "fill"]).exactOptional(),
  trailing: place("the trailing end as set").exactOptional(),
  leading: place("the leading end as set").exactOptional(),
  // As it was read: what is set wrong has to be said.
  cant: angle("-45 deg", "45 deg").exactOptional(),
});

export const finsSchema: z.ZodType<FinsFile> = fields("the fins", {
  arrangement: oneOf(ARRANGEMENTS),
  sides: oneOf(SIDES_RULES).exactOptional(),
  boxes: oneOf(BOX_TIMINGS).exactOptional(),
  fromTailBy: oneOf(["tape", "straight"]).exactOptional(),
  fromTailOf: oneOf(["tips", "crotch"]).exactOptional(),
  tolerance: length("0.1 mm", "20 mm").exactOptional(),
  set: listOf(finInSet, "fins of the set", 12),
  leashPlug: leashPlug.exactOptional(),
  asSet: listOf(asSet, "fins as set", 100).exactOptional(),
  verify: verifySchema.exactOptional(),
});
