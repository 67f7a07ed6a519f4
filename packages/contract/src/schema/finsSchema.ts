import {
  ARRANGEMENTS,
  BOX_TIMINGS,
  formatQuantity,
  MOST_CANT,
  type Phrase,
  SIDES_RULES,
  say,
} from "@lapline/engine";
import { z } from "zod/mini";
import type { AsSetFile, BoxFile, FinFile, FinsFile, LeashPlugFile, ToeFile } from "../file/FinsFile";
import { quotedNames } from "../reading/choicePhrase";
import { issueText } from "../reading/issueSays";
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
const fin = () => id(say`a fin's name`, "front");

const TOE = {
  aimBesideNose: z.exactOptional(length("-1 m", "1 m")),
  aimBeyondNose: z.exactOptional(length("0 mm", "100 m")),
  overBase: z.exactOptional(length("-50 mm", "50 mm")),
  angle: z.exactOptional(angle("-30 deg", "30 deg")),
  meets: z.exactOptional(fin()),
};

/** Exactly one way: two could contradict each other. */
const toe: z.ZodMiniType<ToeFile> = fields(say`toe`, TOE)
  .check(
    z.refine((value) => Object.keys(value).length === 1, {
      error: issueText(say`state toe in one way: one of ${quotedNames(Object.keys(TOE))}`),
    }),
  )
  .register(z.globalRegistry, { minProperties: 1, maxProperties: 1 });

const box: z.ZodMiniType<BoxFile> = fields(say`a box`, {
  length: length("10 mm", "0.6 m"),
  width: length("3 mm", "100 mm"),
  depth: length("2 mm", "100 mm"),
  behindTrailing: z.exactOptional(length("-0.3 m", "0.3 m")),
});

const finInSet: z.ZodMiniType<FinFile> = fields(say`a fin`, {
  fin: fin(),
  fromTail: along(),
  fromRail: z.exactOptional(across()),
  fromRailBy: z.exactOptional(oneOf(["square-to-centreline", "square-to-rail"])),
  base: length("10 mm", "0.6 m"),
  toe: z.exactOptional(toe),
  cant: z.exactOptional(cant()),
  depth: z.exactOptional(length("5 mm", "0.5 m")),
  sweep: z.exactOptional(angle("-45 deg", "80 deg")),
  foil: z.exactOptional(
    fields(say`a foil`, {
      kind: oneOf(["flat-inside", "symmetric"]),
      thickness: z.exactOptional(quantity("fraction", { least: "1 %", most: "30 %" })),
    }),
  ),
  box: z.exactOptional(box),
});

const leashPlug: z.ZodMiniType<LeashPlugFile> = fields(say`the leash plug`, {
  fromTail: length("0 mm", "1 m"),
  fromCentreline: length("0 mm", "0.4 m"),
  side: z.exactOptional(oneOf(["left", "right"])),
  diameter: z.exactOptional(length("5 mm", "80 mm")),
  depth: z.exactOptional(length("3 mm", "80 mm")),
});

const place = (what: Phrase) =>
  fields(what, { fromTail: z.exactOptional(along()), fromCentreline: z.exactOptional(across()) });

const asSet: z.ZodMiniType<AsSetFile> = fields(say`a fin as set`, {
  fin: fin(),
  side: z.exactOptional(oneOf(["left", "right"])),
  on: z.exactOptional(oneOf(["foam", "laminate", "fill"])),
  trailing: z.exactOptional(place(say`the trailing end as set`)),
  leading: z.exactOptional(place(say`the leading end as set`)),
  // As it was read: what is set wrong has to be said.
  cant: z.exactOptional(angle("-45 deg", "45 deg")),
});

export const finsSchema: z.ZodMiniType<FinsFile> = fields(say`the fins`, {
  arrangement: oneOf(ARRANGEMENTS),
  sides: z.exactOptional(oneOf(SIDES_RULES)),
  boxes: z.exactOptional(oneOf(BOX_TIMINGS)),
  fromTailBy: z.exactOptional(oneOf(["tape", "straight"])),
  fromTailOf: z.exactOptional(oneOf(["tips", "crotch"])),
  tolerance: z.exactOptional(length("0.1 mm", "20 mm")),
  set: listOf(finInSet, say`fins of the set`, 12),
  leashPlug: z.exactOptional(leashPlug),
  asSet: z.exactOptional(listOf(asSet, say`fins as set`, 100)),
  verify: z.exactOptional(verifySchema),
});
