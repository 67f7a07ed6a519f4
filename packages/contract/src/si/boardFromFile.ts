import type { Board } from "@lapline/engine";
import type { BoardFile, OrderFile } from "../file/BoardFile";
import { finsFromFile } from "./finsFromFile";
import { asIs, given, massKg } from "./given";
import { blankFromFile, glassFromFile } from "./glassFromFile";
import { materialsFromFile } from "./materialsFromFile";
import { entryFromFile } from "./recordFromFile";
import { shopFromFile } from "./shopFromFile";
import { surveyFromFile } from "./surveyFromFile";

/**
 * The board in SI from a board file that the schema has accepted. What the file leaves out stays out.
 * @throws RangeError where a quantity cannot be read; `readBoardFile` tells such a file's faults instead
 */
export function boardFromFile(file: BoardFile): Board {
  return {
    name: file.name,
    ...given("order", file.order, orderFromFile),
    survey: surveyFromFile(file.survey),
    ...given("blank", file.blank, blankFromFile),
    ...given("glass", file.glass, glassFromFile),
    ...given("fins", file.fins, finsFromFile),
    ...given("shop", file.shop, (shop) =>
      shopFromFile(
        shop,
        file.record?.flatMap(({ at }) => at ?? []),
      ),
    ),
    ...given("materials", file.materials, materialsFromFile),
    ...given("record", file.record, (record) => record.map(entryFromFile)),
  };
}

function orderFromFile(file: OrderFile): NonNullable<Board["order"]> {
  return {
    ...given("rider", file.rider, asIs),
    ...given("riderMassKg", file.riderMass, massKg),
    ...given("serial", file.serial, asIs),
  };
}
