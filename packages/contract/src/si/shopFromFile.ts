import type { ShopInput } from "@lapline/engine";
import type { RollFile, ShopFile } from "../file/ShopFile";
import { clockChangesOf } from "../zone/clockChangesOf";
import { asIs, given, lengthM, massKg, share, temperatureK } from "./given";

/** @param recorded wall times of the record: the clocks' changes about them are needed too */
export function shopFromFile(file: ShopFile, recorded: readonly string[] = []): ShopInput {
  return {
    ...given("temperature", file.temperature, temperatureFromFile),
    ...given("humidity", file.humidity, share),
    ...given("resinTemperatureK", file.resinTemperature, temperatureK),
    ...given("start", file.start, asIs),
    ...given("clockChanges", file.timeZone, (zone) => clockChangesOf(zone, [...timesOf(file), ...recorded])),
    ...given("hours", file.hours, asIs),
    ...given("stands", file.stands, asIs),
    ...given("people", file.people, asIs),
    ...given("experience", file.experience, asIs),
    ...given("dropsPerMl", file.dropsPerMl, asIs),
    ...given("scaleStepKg", file.scale, massKg),
    ...given("rolls", file.rolls, rollsFromFile),
  };
}

function timesOf({ start, temperature }: ShopFile): string[] {
  const read = temperature === undefined || "day" in temperature ? [] : temperature.map(({ at }) => at);
  return start === undefined ? read : [start, ...read];
}

function temperatureFromFile(
  file: NonNullable<ShopFile["temperature"]>,
): NonNullable<ShopInput["temperature"]> {
  if ("day" in file) return { dayK: temperatureK(file.day), nightK: temperatureK(file.night) };
  return file.map(({ at, air }) => ({ at, airK: temperatureK(air) }));
}

function rollsFromFile(file: Readonly<Record<string, RollFile>>): NonNullable<ShopInput["rolls"]> {
  const rolls = Object.entries(file).map(([cloth, roll]) => [
    cloth,
    { ...given("widthM", roll.width, lengthM), ...given("price", roll.price, asIs) },
  ]);
  return Object.fromEntries(rolls);
}
