import { z } from "zod";
import type { AirReadingFile, PriceFile, RollFile, ShopFile } from "../file/ShopFile";
import { fields } from "./fields";
import { packSize } from "./packSize";
import { quantity } from "./quantity";
import { id, listOf, oneOf, plainNumber, timeOfDay, timeZone, wallTime, wholeNumber } from "./words";

const air = () => quantity("temperature", { least: "-20 C", most: "50 C" });

const dayAndNight = fields("the shop's temperature", { day: air(), night: air() });
const airReading: z.ZodType<AirReadingFile> = fields("a temperature of the shop", {
  at: wallTime(),
  air: air(),
});

export const rollSchema: z.ZodType<RollFile> = fields("a roll", {
  width: quantity("length", { least: "25 mm", most: "3 m" }).exactOptional(),
  price: plainNumber("price", 0, 1_000_000).exactOptional(),
});

export const priceSchema: z.ZodType<PriceFile> = fields("a price", {
  price: plainNumber("price", 0, 1_000_000),
  pack: packSize().exactOptional(),
  pieces: wholeNumber("pieces", 1, 100_000).exactOptional(),
  use: plainNumber("use", 0.001, 100_000).exactOptional(),
});

export const shopSchema: z.ZodType<ShopFile> = fields("the shop", {
  temperature: z
    .union([dayAndNight, listOf(airReading, "temperatures", 1000)], {
      error: 'write an object with "day" and "night", or a list, [ … ], of { "at", "air" }',
    })
    .exactOptional(),
  humidity: quantity("fraction", { least: "2 %", most: "100 %" }).exactOptional(),
  resinTemperature: quantity("temperature", { least: "0 C", most: "60 C" }).exactOptional(),
  start: wallTime().exactOptional(),
  timeZone: timeZone().exactOptional(),
  hours: fields("the shop's hours", { from: timeOfDay(), to: timeOfDay() }).exactOptional(),
  stands: wholeNumber("stands", 1, 50).exactOptional(),
  people: wholeNumber("people", 1, 50).exactOptional(),
  experience: oneOf(["first", "some", "trade"]).exactOptional(),
  dropsPerMl: plainNumber("dropsPerMl", 5, 100).exactOptional(),
  scale: quantity("mass", { least: "0.01 g", most: "200 g" }).exactOptional(),
  prices: z
    .record(id("a material's id", "polyester"), priceSchema, {
      error: 'write an object, { … }, of prices by the material\'s id, such as "polyester"',
    })
    .exactOptional(),
  rolls: z
    .record(id("a cloth's id", "e-136"), rollSchema, {
      error: 'write an object, { … }, of rolls by the cloth\'s id, such as "e-136"',
    })
    .exactOptional(),
});
