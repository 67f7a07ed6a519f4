import type { FinsInput } from "@lapline/engine";
import type { MadeForFile, VerifyFile } from "../file/VerifyFile";
import { angleRad, asIs, given, lengthM } from "./given";

export function verifyFromFile(file: VerifyFile): NonNullable<FinsInput["verify"]> {
  return {
    ...given("on", file.on, asIs),
    ...given("confirmed", file.confirmed, (list) =>
      list.map((entry) =>
        typeof entry === "string"
          ? { check: entry }
          : { check: entry.check, ...given("madeFor", entry.madeFor, madeForFromFile) },
      ),
    ),
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
      list.map(({ fin, depth, madeFor }) => ({
        fin,
        depthM: lengthM(depth),
        ...given("madeFor", madeFor, madeForFromFile),
      })),
    ),
    ...given("proud", file.proud, (list) =>
      list.map(({ fin, height, madeFor }) => ({
        fin,
        heightM: lengthM(height),
        ...given("madeFor", madeFor, madeForFromFile),
      })),
    ),
  };
}

function madeForFromFile(file: MadeForFile) {
  return {
    ...given("on", file.on, asIs),
    ...given("lengthM", file.long, lengthM),
    ...given("widthM", file.wide, lengthM),
    ...given("depthM", file.deep, lengthM),
    ...given("cantRad", file.cant, angleRad),
    ...given("baseM", file.base, lengthM),
  };
}
