import { GRITS, type Phrase, say } from "@lapline/engine";
import { z } from "zod/mini";
import type {
  BlankFile,
  FaceLayersFile,
  GlassFile,
  PapersFile,
  PatchFile,
  TintFile,
} from "../file/GlassFile";
import { issueText } from "../reading/issueSays";
import { fields } from "./fields";
import { quantity } from "./quantity";
import { ALONG } from "./surveySchema";
import { id, listOf, oneOf, plainNumber, yesOrNo } from "./words";

const cloth = () => id(say`a cloth's id`, "e-136");
const filler = () => id(say`a filler's id`, "milled-fibre");
const resin = () => id(say`a resin's id`, "polyester");

export const blankSchema: z.ZodMiniType<BlankFile> = fields(say`the blank`, {
  foam: id(say`a foam's id`, "pu-48"),
  stringer: z.exactOptional(
    fields(say`the stringer`, {
      thickness: quantity("length", { least: "0.5 mm", most: "50 mm" }),
      wood: z.exactOptional(id(say`a wood's id`, "basswood")),
      proud: z.exactOptional(quantity("length", { least: "0 mm", most: "2 mm" })),
    }),
  ),
  vent: z.exactOptional(yesOrNo()),
  shapedMass: z.exactOptional(quantity("mass", { least: "100 g", most: "30 kg" })),
});

const lap = () => quantity("length", { least: "0 mm", most: "0.5 m" });

const faceLayers = (what: Phrase): z.ZodMiniType<FaceLayersFile> =>
  fields(what, {
    layers: listOf(cloth(), say`layers`, 20),
    lap: z.exactOptional(lap()),
    laps: z.exactOptional(listOf(lap(), say`laps`, 20)),
  });

const patch: z.ZodMiniType<PatchFile> = fields(say`a patch`, {
  face: oneOf(["deck", "bottom"]),
  cloth: cloth(),
  over: z.exactOptional(oneOf(["tail", "deck", "nose", "fins", "strip"])),
  fromTail: z.exactOptional(quantity("length", ALONG)),
  to: z.exactOptional(quantity("length", ALONG)),
  width: z.exactOptional(quantity("length", { least: "5 mm", most: "1.5 m" })),
  angle: z.exactOptional(quantity("angle", { least: "-90 deg", most: "90 deg" })),
});

const resinByCoat = fields(say`the resins by coat`, {
  laminate: z.exactOptional(resin()),
  fill: z.exactOptional(resin()),
  gloss: z.exactOptional(resin()),
  box: z.exactOptional(resin()),
});

const tintShare = () => quantity("fraction", { least: "0.05 %", most: "15 %" });
const tint: z.ZodMiniType<TintFile> = fields(say`the tint`, {
  of: z.exactOptional(id(say`a tint's id`, "my-blue")),
  laminate: z.exactOptional(tintShare()),
  fill: z.exactOptional(tintShare()),
  gloss: z.exactOptional(tintShare()),
});

const papers: z.ZodMiniType<PapersFile> = fields(say`the papers`, {
  dry: z.exactOptional(listOf(oneOf(GRITS), say`papers`, 20)),
  wet: z.exactOptional(listOf(oneOf(GRITS), say`papers`, 20)),
});

export const glassSchema: z.ZodMiniType<GlassFile> = fields(say`the glass`, {
  resin: z.exactOptional(
    z.union([resin(), resinByCoat], {
      error: issueText(
        say`write a resin's id, such as "polyester", or an object with ids for "laminate", "fill", "gloss", "box"`,
      ),
    }),
  ),
  boxResin: z.exactOptional(resin()),
  resinRatio: z.exactOptional(plainNumber(say`resin to glass`, 0.2, 4)),
  seal: z.exactOptional(yesOrNo()),
  lapKind: z.exactOptional(oneOf(["free", "cut"])),
  cutting: z.exactOptional(oneOf(["rolled", "pattern"])),
  bottom: z.exactOptional(faceLayers(say`the glass of the bottom`)),
  deck: z.exactOptional(faceLayers(say`the glass of the deck`)),
  patches: z.exactOptional(listOf(patch, say`patches`, 50)),
  tint: z.exactOptional(tint),
  fillers: z.exactOptional(
    fields(say`the fillers`, {
      box: z.exactOptional(filler()),
      seal: z.exactOptional(filler()),
    }),
  ),
  logos: z.exactOptional(yesOrNo()),
  pinline: z.exactOptional(yesOrNo()),
  finish: z.exactOptional(oneOf(["sanded", "wet-sanded", "gloss"])),
  papers: z.exactOptional(papers),
});
