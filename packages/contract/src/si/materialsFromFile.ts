import type { MaterialsInput } from "@lapline/engine";
import type { MaterialsFile } from "../file/MaterialsFile";
import {
  clothFromFile,
  fillerFromFile,
  foamFromFile,
  tintRecordFromFile,
  woodFromFile,
} from "./clothFromFile";
import { given } from "./given";
import { resinFromFile } from "./resinFromFile";

export function materialsFromFile(file: MaterialsFile): MaterialsInput {
  return {
    ...given("resins", file.resins, (resins) => mapRecord(resins, resinFromFile)),
    ...given("cloths", file.cloths, (cloths) => mapRecord(cloths, clothFromFile)),
    ...given("foams", file.foams, (foams) => mapRecord(foams, foamFromFile)),
    ...given("woods", file.woods, (woods) => mapRecord(woods, woodFromFile)),
    ...given("fillers", file.fillers, (fillers) => mapRecord(fillers, fillerFromFile)),
    ...given("tints", file.tints, (tints) => mapRecord(tints, tintRecordFromFile)),
  };
}

function mapRecord<From, To>(
  records: Readonly<Record<string, From>>,
  read: (record: From) => To,
): Readonly<Record<string, To>> {
  return Object.fromEntries(Object.entries(records).map(([id, record]) => [id, read(record)]));
}
