import { z } from "zod";
import type { BoardFile } from "../file/BoardFile";
import { fields } from "./fields";
import { finsSchema } from "./finsSchema";
import { blankSchema, glassSchema } from "./glassSchema";
import { materialsSchema } from "./materialsSchema";
import { quantity } from "./quantity";
import { recordSchema } from "./recordSchema";
import { shopSchema } from "./shopSchema";
import { surveySchema } from "./surveySchema";
import { plainText } from "./words";

export const BOARD_FORMAT = "lapline-board/1";

/** The board file's fields, types and ranges. What holds between fields is checked by `checkBoardFile`. */
export const boardFileSchema: z.ZodType<BoardFile> = fields("a board file", {
  format: z.literal(BOARD_FORMAT, {
    error: ({ input }) =>
      `${input === undefined ? "missing: " : ""}write "${BOARD_FORMAT}", the form that is read here`,
  }),
  name: plainText("the board's name"),
  order: fields("the order", {
    rider: plainText("the rider").exactOptional(),
    riderMass: quantity("mass", { least: "10 kg", most: "250 kg" }).exactOptional(),
    serial: plainText("the serial").exactOptional(),
  }).exactOptional(),
  survey: surveySchema,
  blank: blankSchema.exactOptional(),
  glass: glassSchema.exactOptional(),
  fins: finsSchema.exactOptional(),
  shop: shopSchema.exactOptional(),
  materials: materialsSchema.exactOptional(),
  record: recordSchema.exactOptional(),
});
