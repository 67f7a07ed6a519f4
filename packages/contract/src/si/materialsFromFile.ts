import type { MaterialsInput } from "@lapline/engine";
import type { MaterialsFile, ResinFile } from "../file/MaterialsFile";
import { given } from "./given";
import { resinFromFile } from "./resinFromFile";

export function materialsFromFile(file: MaterialsFile): MaterialsInput {
  return { ...given("resins", file.resins, resinsFromFile) };
}

function resinsFromFile(file: Readonly<Record<string, ResinFile>>): NonNullable<MaterialsInput["resins"]> {
  return Object.fromEntries(Object.entries(file).map(([id, resin]) => [id, resinFromFile(resin)]));
}
