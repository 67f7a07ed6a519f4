import type { ShopInput } from "@lapline/engine";
import type { PriceFile, RollFile, ShopFile } from "../file/ShopFile";
import { readPack } from "../schema/packSize";
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
    ...given("prices", file.prices, pricesFromFile),
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

const PACK_KEYS = { mass: "packKg", volume: "packM3", length: "packM" } as const;

function pricesFromFile(file: Readonly<Record<string, PriceFile>>): NonNullable<ShopInput["prices"]> {
  const prices = Object.entries(file).map(([id, { price, pack, pieces, use }]) => {
    const read = pack === undefined ? null : readPack(pack);
    return [
      id,
      {
        price,
        ...(read === null ? {} : { [PACK_KEYS[read.dimension]]: read.valueSi }),
        ...given("pieces", pieces, asIs),
        ...given("use", use, asIs),
      },
    ];
  });
  return Object.fromEntries(prices);
}
