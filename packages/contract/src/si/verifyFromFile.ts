import type { FinsInput } from "@lapline/engine";
import type { VerifyFile } from "../file/VerifyFile";
import { angleRad, asIs, given, lengthM } from "./given";

export function verifyFromFile(file: VerifyFile): NonNullable<FinsInput["verify"]> {
  return {
    ...given("on", file.on, asIs),
    ...given("confirmed", file.confirmed, asIs),
    ...given("strings", file.strings, (list) =>
      list.map(({ fin, side, besideNose }) => ({ fin, side, besideNoseM: lengthM(besideNose) })),
    ),
    ...given("diagonals", file.diagonals, (list) =>
      list.map(({ fin, from, to, left, right }) => ({
        fin,
        from,
        to,
        leftM: lengthM(left),
        rightM: lengthM(right),
      })),
    ),
    ...given("cantBlocks", file.cantBlocks, (list) =>
      list.map(({ fin, cant }) => ({ fin, cantRad: angleRad(cant) })),
    ),
    ...given("depthStops", file.depthStops, (list) =>
      list.map(({ fin, depth }) => ({ fin, depthM: lengthM(depth) })),
    ),
    ...given("proud", file.proud, (list) =>
      list.map(({ fin, height }) => ({ fin, heightM: lengthM(height) })),
    ),
  };
}
