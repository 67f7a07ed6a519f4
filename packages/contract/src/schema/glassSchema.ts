import { GRITS } from "@lapline/engine";
import { z } from "zod";
import type {
  BlankFile,
  FaceLayersFile,
  GlassFile,
  PapersFile,
  PatchFile,
  TintFile,
} from "../file/GlassFile";
import { fields } from "./fields";
import { quantity } from "./quantity";
import { ALONG } from "./surveySchema";
import { id, listOf, oneOf, plainNumber, yesOrNo } from "./words";

const cloth = () => id("a cloth's id", "e-136");
const filler = () => id("a filler's id", "milled-fibre");
const resin = () => id("a resin's id", "polyester");

export const blankSchema: z.ZodType<BlankFile> = fields("the blank", {
  foam: id("a foam's id", "pu-48"),
  stringer: fields("the stringer", {
    thickness: quantity("length", { least: "0.5 mm", most: "50 mm" }),
    wood: id("a wood's id", "basswood").exactOptional(),
    proud: quantity("length", { least: "0 mm", most: "2 mm" }).exactOptional(),
  }).exactOptional(),
  vent: yesOrNo().exactOptional(),
  shapedMass: quantity("mass", { least: "100 g", most: "30 kg" }).exactOptional(),
});

const lap = () => quantity("length", { least: "0 mm", most: "0.5 m" });

const faceLayers = (face: string): z.ZodType<FaceLayersFile> =>
  fields(`the glass of the ${face}`, {
    layers: listOf(cloth(), "layers", 20),
    lap: lap().exactOptional(),
    laps: listOf(lap(), "laps", 20).exactOptional(),
  });

const patch: z.ZodType<PatchFile> = fields("a patch", {
  face: oneOf(["deck", "bottom"]),
  cloth: cloth(),
  over: oneOf(["tail", "deck", "nose", "fins", "strip"]).exactOptional(),
  fromTail: quantity("length", ALONG).exactOptional(),
  to: quantity("length", ALONG).exactOptional(),
  width: quantity("length", { least: "5 mm", most: "1.5 m" }).exactOptional(),
  angle: quantity("angle", { least: "-90 deg", most: "90 deg" }).exactOptional(),
});

const resinByCoat = fields("the resins by coat", {
  laminate: resin().exactOptional(),
  fill: resin().exactOptional(),
  gloss: resin().exactOptional(),
  box: resin().exactOptional(),
});

const tintShare = () => quantity("fraction", { least: "0.05 %", most: "15 %" });
const tint: z.ZodType<TintFile> = fields("the tint", {
  of: id("a tint's id", "my-blue").exactOptional(),
  laminate: tintShare().exactOptional(),
  fill: tintShare().exactOptional(),
  gloss: tintShare().exactOptional(),
});

const papers: z.ZodType<PapersFile> = fields("the papers", {
  dry: listOf(oneOf(GRITS), "papers", 20).exactOptional(),
  wet: listOf(oneOf(GRITS), "papers", 20).exactOptional(),
});

export const glassSchema: z.ZodType<GlassFile> = fields("the glass", {
  resin: z
    .union([resin(), resinByCoat], {
      error:
        'write a resin\'s id, such as "polyester", or an object with ids for "laminate", "fill", "gloss", "box"',
    })
    .exactOptional(),
  boxResin: resin().exactOptional(),
  resinRatio: plainNumber("resinRatio", 0.2, 4).exactOptional(),
  seal: yesOrNo().exactOptional(),
  lapKind: oneOf(["free", "cut"]).exactOptional(),
  cutting: oneOf(["rolled", "pattern"]).exactOptional(),
  bottom: faceLayers("bottom").exactOptional(),
  deck: faceLayers("deck").exactOptional(),
  patches: listOf(patch, "patches", 50).exactOptional(),
  tint: tint.exactOptional(),
  fillers: fields("the fillers", {
    box: filler().exactOptional(),
    seal: filler().exactOptional(),
  }).exactOptional(),
  logos: yesOrNo().exactOptional(),
  pinline: yesOrNo().exactOptional(),
  finish: oneOf(["sanded", "wet-sanded", "gloss"]).exactOptional(),
  papers: papers.exactOptional(),
});
