import type { BoardFile } from "@lapline/contract";
import { placesOnly } from "./startingFile";

/**
 * A new board like an old one: shape, lay-up, fins and shop are kept; what happened to the old one, who it was for, what it
 * weighed, what was read of its fins and when it was begun are not. Its readings are only kept where they are asked for, because
 * they were taken off another blank.
 */
export function copyOfBoard(
  old: BoardFile,
  { name, readings }: { name: string; readings: boolean },
): BoardFile {
  const { record: _record, order: _order, blank, fins, shop, survey, ...kept } = old;
  return {
    ...kept,
    name: name.trim(),
    survey: readings ? survey : withoutReadings(survey),
    ...(blank === undefined ? {} : { blank: withoutMass(blank) }),
    ...(fins === undefined ? {} : { fins: withoutRead(fins) }),
    ...(shop === undefined ? {} : { shop: withoutStart(shop) }),
  };
}

function withoutReadings({ twist: _twist, ...survey }: BoardFile["survey"]): BoardFile["survey"] {
  return { ...survey, stations: placesOnly(survey.stations) };
}

function withoutMass({ shapedMass: _mass, ...blank }: NonNullable<BoardFile["blank"]>) {
  return blank;
}

function withoutRead({ asSet: _set, verify: _read, ...fins }: NonNullable<BoardFile["fins"]>) {
  return fins;
}

/** A list of temperatures tells of the old board's days. */
function withoutStart({ start: _start, temperature, ...shop }: NonNullable<BoardFile["shop"]>) {
  return temperature === undefined || Array.isArray(temperature) ? shop : { ...shop, temperature };
}
