import { say } from "@lapline/engine";
import { z } from "zod/mini";
import type { ClothFile, FillerFile, FoamFile, TintRecordFile, WoodFile } from "../file/MaterialsFile";
import { fields } from "./fields";
import { quantity } from "./quantity";
import { oneOf, plainText } from "./words";

const uptake = () => quantity("arealMass", { least: "0 g/m2", most: "1500 g/m2" });

/** A cloth of the builder's own. */
export const clothSchema: z.ZodMiniType<ClothFile> = fields(say`a cloth`, {
  name: z.exactOptional(plainText(say`the cloth's name`)),
  fibre: oneOf(["e-glass", "s-glass", "carbon", "basalt"]),
  mass: quantity("arealMass", { least: "15 g/m2", most: "1500 g/m2" }),
  weave: z.exactOptional(oneOf(["plain", "warp-heavy", "one-way"])),
  warpShare: z.exactOptional(quantity("fraction", { least: "5 %", most: "100 %" })),
  width: z.exactOptional(quantity("length", { least: "10 mm", most: "3 m" })),
});

/** A foam of the builder's own. */
export const foamSchema: z.ZodMiniType<FoamFile> = fields(say`a foam`, {
  kind: oneOf(["pu", "eps", "xps"]),
  density: quantity("density", { least: "8 kg/m3", most: "200 kg/m3" }),
  name: z.exactOptional(plainText(say`the foam's name`)),
  uptake: z.exactOptional(uptake()),
  sealedUptake: z.exactOptional(uptake()),
});

/** A wood of the builder's own. */
export const woodSchema: z.ZodMiniType<WoodFile> = fields(say`a wood`, {
  name: z.exactOptional(plainText(say`the wood's name`)),
  density: quantity("density", { least: "60 kg/m3", most: "1300 kg/m3" }),
});

/** A filler of the builder's own. */
export const fillerSchema: z.ZodMiniType<FillerFile> = fields(say`a filler`, {
  name: z.exactOptional(plainText(say`the filler's name`)),
  density: quantity("density", { least: "20 kg/m3", most: "5000 kg/m3" }),
  share: quantity("fraction", { least: "0.5 %", most: "200 %" }),
});

/** A tint or pigment of the builder's own. */
export const tintSchema: z.ZodMiniType<TintRecordFile> = fields(say`a tint`, {
  name: z.exactOptional(plainText(say`the tint's name`)),
  most: z.exactOptional(quantity("fraction", { least: "0.1 %", most: "25 %" })),
});
