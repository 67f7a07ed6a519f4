import type { z } from "zod";
import type { ClothFile, FillerFile, FoamFile, TintRecordFile, WoodFile } from "../file/MaterialsFile";
import { fields } from "./fields";
import { quantity } from "./quantity";
import { oneOf, plainText } from "./words";

const uptake = () => quantity("arealMass", { least: "0 g/m2", most: "1500 g/m2" });

/** A cloth of the builder's own. */
export const clothSchema: z.ZodType<ClothFile> = fields("a cloth", {
  name: plainText("the cloth's name").exactOptional(),
  fibre: oneOf(["e-glass", "s-glass", "carbon", "basalt"]),
  mass: quantity("arealMass", { least: "15 g/m2", most: "1500 g/m2" }),
  weave: oneOf(["plain", "warp-heavy", "one-way"]).exactOptional(),
  warpShare: quantity("fraction", { least: "5 %", most: "100 %" }).exactOptional(),
  width: quantity("length", { least: "10 mm", most: "3 m" }).exactOptional(),
});

/** A foam of the builder's own. */
export const foamSchema: z.ZodType<FoamFile> = fields("a foam", {
  kind: oneOf(["pu", "eps", "xps"]),
  density: quantity("density", { least: "8 kg/m3", most: "200 kg/m3" }),
  name: plainText("the foam's name").exactOptional(),
  uptake: uptake().exactOptional(),
  sealedUptake: uptake().exactOptional(),
});

/** A wood of the builder's own. */
export const woodSchema: z.ZodType<WoodFile> = fields("a wood", {
  name: plainText("the wood's name").exactOptional(),
  density: quantity("density", { least: "60 kg/m3", most: "1300 kg/m3" }),
});

/** A filler of the builder's own. */
export const fillerSchema: z.ZodType<FillerFile> = fields("a filler", {
  name: plainText("the filler's name").exactOptional(),
  density: quantity("density", { least: "20 kg/m3", most: "5000 kg/m3" }),
  share: quantity("fraction", { least: "0.5 %", most: "200 %" }),
});

/** A tint or pigment of the builder's own. */
export const tintSchema: z.ZodType<TintRecordFile> = fields("a tint", {
  name: plainText("the tint's name").exactOptional(),
  most: quantity("fraction", { least: "0.1 %", most: "25 %" }).exactOptional(),
});
