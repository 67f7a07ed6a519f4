import { z } from "zod/mini";
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
export const boardFileSchema: z.ZodMiniType<BoardFile> = fields("a board file", {
  format: z.literal(BOARD_FORMAT, {
    error: ({ input }) =>
      `${input === undefined ? "missing: " : ""}write "${BOARD_FORMAT}", the form that is read here`,
  }),
  name: plainText("the board's name"),
  order: z.exactOptional(
    fields("the order", {
      rider: z.exactOptional(plainText("the rider")),
      riderMass: z.exactOptional(quantity("mass", { least: "10 kg", most: "250 kg" })),
      serial: z.exactOptional(plainText("the serial")),
    }),
  ),
  survey: surveySchema,
  blank: z.exactOptional(blankSchema),
  glass: z.exactOptional(glassSchema),
  fins: z.exactOptional(finsSchema),
  shop: z.exactOptional(shopSchema),
  materials: z.exactOptional(materialsSchema),
  record: z.exactOptional(recordSchema),
});
