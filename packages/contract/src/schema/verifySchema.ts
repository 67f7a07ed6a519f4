import { say } from "@lapline/engine";
import { z } from "zod/mini";
import type {
  CantBlockFile,
  ConfirmedFile,
  DepthStopFile,
  DiagonalFile,
  MadeForFile,
  ProudFile,
  StringFile,
  VerifyFile,
} from "../file/VerifyFile";
import { fields } from "./fields";
import { quantity } from "./quantity";
import { ALONG } from "./surveySchema";
import { id, listOf, oneOf } from "./words";

const fin = () => id(say`a fin's name`, "front");
const length = (least: string, most: string) => quantity("length", { least, most });
const MOST_READINGS = 200;

const madeFor: z.ZodMiniType<MadeForFile> = fields(say`what a check was made for`, {
  on: z.exactOptional(oneOf(["foam", "laminate", "fill"])),
  long: z.exactOptional(length("0 mm", "1 m")),
  wide: z.exactOptional(length("0 mm", "0.3 m")),
  deep: z.exactOptional(length("0 mm", "0.2 m")),
  cant: z.exactOptional(quantity("angle", { least: "-45 deg", most: "45 deg" })),
  base: z.exactOptional(length("0 mm", "1 m")),
});

const checkId = () => id(say`the id of a check`, "bottom-up");
const confirmed: z.ZodMiniType<ConfirmedFile> = fields(say`a check that was made`, {
  check: checkId(),
  madeFor: z.exactOptional(madeFor),
});

const string: z.ZodMiniType<StringFile> = fields(say`a string's reading`, {
  fin: fin(),
  side: oneOf(["left", "right"]),
  besideNose: length("-1 m", "1 m"),
});

const diagonal: z.ZodMiniType<DiagonalFile> = fields(say`a diagonal`, {
  fin: fin(),
  from: oneOf(["nose", "tail"]),
  to: oneOf(["trailing", "leading"]),
  left: quantity("length", ALONG),
  right: quantity("length", ALONG),
});

const cantBlock: z.ZodMiniType<CantBlockFile> = fields(say`a cant block`, {
  fin: fin(),
  cant: quantity("angle", { least: "-45 deg", most: "45 deg" }),
});

const depthStop: z.ZodMiniType<DepthStopFile> = fields(say`a depth stop`, {
  fin: fin(),
  depth: length("0 mm", "100 mm"),
  madeFor: z.exactOptional(madeFor),
});

const proud: z.ZodMiniType<ProudFile> = fields(say`a box's height`, {
  fin: fin(),
  height: length("-20 mm", "20 mm"),
  madeFor: z.exactOptional(madeFor),
});

export const verifySchema: z.ZodMiniType<VerifyFile> = fields(say`the checks before the router`, {
  on: z.exactOptional(oneOf(["foam", "laminate", "fill"])),
  confirmed: z.exactOptional(listOf(z.union([checkId(), confirmed]), say`checks confirmed`, MOST_READINGS)),
  strings: z.exactOptional(listOf(string, say`readings of strings`, MOST_READINGS)),
  diagonals: z.exactOptional(listOf(diagonal, say`diagonals`, MOST_READINGS)),
  cantBlocks: z.exactOptional(listOf(cantBlock, say`cant blocks`, MOST_READINGS)),
  depthStops: z.exactOptional(listOf(depthStop, say`depth stops`, MOST_READINGS)),
  proud: z.exactOptional(listOf(proud, say`heights of boxes`, MOST_READINGS)),
});
