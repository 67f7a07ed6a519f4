import { z } from "zod";
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

const fin = () => id("a fin's name", "front");
const length = (least: string, most: string) => quantity("length", { least, most });
const MOST_READINGS = 200;

const madeFor: z.ZodType<MadeForFile> = fields("what a check was made for", {
  on: oneOf(["foam", "laminate", "fill"]).exactOptional(),
  long: length("0 mm", "1 m").exactOptional(),
  wide: length("0 mm", "0.3 m").exactOptional(),
  deep: length("0 mm", "0.2 m").exactOptional(),
  cant: quantity("angle", { least: "-45 deg", most: "45 deg" }).exactOptional(),
  base: length("0 mm", "1 m").exactOptional(),
});

const checkId = () => id("the id of a check", "bottom-up");
const confirmed: z.ZodType<ConfirmedFile> = fields("a check that was made", {
  check: checkId(),
  madeFor: madeFor.exactOptional(),
});

const string: z.ZodType<StringFile> = fields("a string's reading", {
  fin: fin(),
  side: oneOf(["left", "right"]),
  besideNose: length("-1 m", "1 m"),
});

const diagonal: z.ZodType<DiagonalFile> = fields("a diagonal", {
  fin: fin(),
  from: oneOf(["nose", "tail"]),
  to: oneOf(["trailing", "leading"]),
  left: quantity("length", ALONG),
  right: quantity("length", ALONG),
});

const cantBlock: z.ZodType<CantBlockFile> = fields("a cant block", {
  fin: fin(),
  cant: quantity("angle", { least: "-45 deg", most: "45 deg" }),
});

const depthStop: z.ZodType<DepthStopFile> = fields("a depth stop", {
  fin: fin(),
  depth: length("0 mm", "100 mm"),
  madeFor: madeFor.exactOptional(),
});

const proud: z.ZodType<ProudFile> = fields("a box's height", {
  fin: fin(),
  height: length("-20 mm", "20 mm"),
  madeFor: madeFor.exactOptional(),
});

export const verifySchema: z.ZodType<VerifyFile> = fields("the checks before the router", {
  on: oneOf(["foam", "laminate", "fill"]).exactOptional(),
  confirmed: listOf(z.union([checkId(), confirmed]), "checks confirmed", MOST_READINGS).exactOptional(),
  strings: listOf(string, "readings of strings", MOST_READINGS).exactOptional(),
  diagonals: listOf(diagonal, "diagonals", MOST_READINGS).exactOptional(),
  cantBlocks: listOf(cantBlock, "cant blocks", MOST_READINGS).exactOptional(),
  depthStops: listOf(depthStop, "depth stops", MOST_READINGS).exactOptional(),
  proud: listOf(proud, "heights of boxes", MOST_READINGS).exactOptional(),
});
