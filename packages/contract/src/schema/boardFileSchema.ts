import { say } from "@lapline/engine";
import { z } from "zod/mini";
import type { BoardFile } from "../file/BoardFile";
import { missingOr } from "../reading/choicePhrase";
import { issueText } from "../reading/issueSays";
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
export const boardFileSchema: z.ZodMiniType<BoardFile> = fields(say`a board file`, {
  format: z.literal(BOARD_FORMAT, {
    error: ({ input }) =>
      issueText(missingOr(say`write "${BOARD_FORMAT}", the form that is read here`, input)),
  }),
  name: plainText(say`the board's name`),
  order: z.exactOptional(
    fields(say`the order`, {
      rider: z.exactOptional(plainText(say`the rider`)),
      riderMass: z.exactOptional(quantity("mass", { least: "10 kg", most: "250 kg" })),
      serial: z.exactOptional(plainText(say`the serial`)),
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
