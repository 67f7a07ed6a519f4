import type { MaterialsInput } from "@lapline/engine";
import type { ClothFile, FillerFile, FoamFile, TintRecordFile, WoodFile } from "../file/MaterialsFile";
import { arealMassKgM2, asIs, densityKgM3, given, lengthM, share } from "./given";

type OwnOf<Kind extends keyof MaterialsInput> = NonNullable<MaterialsInput[Kind]>[string];

export function clothFromFile(file: ClothFile): OwnOf<"cloths"> {
  return {
    fibre: file.fibre,
    arealMassKgM2: arealMassKgM2(file.mass),
    ...given("name", file.name, asIs),
    ...given("weave", file.weave, asIs),
    ...given("warpShare", file.warpShare, share),
    ...given("rollWidthM", file.width, lengthM),
  };
}

export function foamFromFile(file: FoamFile): OwnOf<"foams"> {
  return {
    kind: file.kind,
    densityKgM3: densityKgM3(file.density),
    ...given("name", file.name, asIs),
    ...given("uptakeKgM2", file.uptake, arealMassKgM2),
    ...given("sealedUptakeKgM2", file.sealedUptake, arealMassKgM2),
  };
}

export function woodFromFile(file: WoodFile): OwnOf<"woods"> {
  return { densityKgM3: densityKgM3(file.density), ...given("name", file.name, asIs) };
}

export function fillerFromFile(file: FillerFile): OwnOf<"fillers"> {
  return {
    densityKgM3: densityKgM3(file.density),
    shareByMass: share(file.share),
    ...given("name", file.name, asIs),
  };
}

export function tintRecordFromFile(file: TintRecordFile): OwnOf<"tints"> {
  return { ...given("name", file.name, asIs), ...given("mostShare", file.most, share) };
}
