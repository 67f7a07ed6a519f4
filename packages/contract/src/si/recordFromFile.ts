import type { RecordEntry } from "@lapline/engine";
import type { RecordEntryFile } from "../file/RecordEntryFile";
import { asIs, given, lengthM, massKg, temperatureK } from "./given";

export function entryFromFile(file: RecordEntryFile): RecordEntry {
  const base = { id: file.id, ...given("at", file.at, asIs), ...given("corrects", file.corrects, asIs) };
  switch (file.kind) {
    case "done":
      return { ...base, kind: "done", step: file.step };
    case "weighed":
      return { ...base, kind: "weighed", after: file.after, massKg: massKg(file.mass) };
    case "mixed":
      return {
        ...base,
        kind: "mixed",
        coat: file.coat,
        baseKg: massKg(file.base),
        hardenerKg: massKg(file.hardener),
        ...given("resinTemperatureK", file.resinTemperature, temperatureK),
      };
    case "touched":
      return { ...base, kind: "touched", coat: file.coat, feels: file.feels };
    case "sand-through":
      return {
        ...base,
        kind: "sand-through",
        face: file.face,
        side: file.side,
        fromTailM: lengthM(file.fromTail),
        fromCentrelineM: lengthM(file.fromCentreline),
        sizeM: lengthM(file.size),
        shows: file.shows,
      };
    case "film":
      return {
        ...base,
        kind: "film",
        zone: file.zone,
        filmM: lengthM(file.film),
        ...given("after", file.after, asIs),
      };
    case "dust":
      return { ...base, kind: "dust", face: file.face, massKg: massKg(file.mass), after: file.after };
    case "struck":
      return { ...base, kind: "struck" };
  }
}
