import { z } from "zod/mini";
import type { AirReadingFile, PriceFile, RollFile, ShopFile } from "../file/ShopFile";
import { fields } from "./fields";
import { packSize } from "./packSize";
import { quantity } from "./quantity";
import { id, listOf, oneOf, plainNumber, timeOfDay, timeZone, wallTime, wholeNumber } from "./words";

const air = () => quantity("temperature", { least: "-20 C", most: "50 C" });

const dayAndNight = fields("the shop's temperature", { day: air(), night: air() });
const airReading: z.ZodMiniType<AirReadingFile> = fields("a temperature of the shop", {
  at: wallTime(),
  air: air(),
});

export const rollSchema: z.ZodMiniType<RollFile> = fields("a roll", {
  width: z.exactOptional(quantity("length", { least: "25 mm", most: "3 m" })),
  price: z.exactOptional(plainNumber("price", 0, 1_000_000)),
});

export const priceSchema: z.ZodMiniType<PriceFile> = fields("a price", {
  price: plainNumber("price", 0, 1_000_000),
  pack: z.exactOptional(packSize()),
  pieces: z.exactOptional(wholeNumber("pieces", 1, 100_000)),
  use: z.exactOptional(plainNumber("use", 0.001, 100_000)),
});

export const shopSchema: z.ZodMiniType<ShopFile> = fields("the shop", {
  temperature: z.exactOptional(
    z.union([dayAndNight, listOf(airReading, "temperatures", 1000)], {
      error: 'write an object with "day" and "night", or a list, [ … ], of { "at", "air" }',
    }),
  ),
  humidity: z.exactOptional(quantity("fraction", { least: "2 %", most: "100 %" })),
  resinTemperature: z.exactOptional(quantity("temperature", { least: "0 C", most: "60 C" })),
  start: z.exactOptional(wallTime()),
  timeZone: z.exactOptional(timeZone()),
  hours: z.exactOptional(fields("the shop's hours", { from: timeOfDay(), to: timeOfDay() })),
  stands: z.exactOptional(wholeNumber("stands", 1, 50)),
  people: z.exactOptional(wholeNumber("people", 1, 50)),
  experience: z.exactOptional(oneOf(["first", "some", "trade"])),
  dropsPerMl: z.exactOptional(plainNumber("dropsPerMl", 5, 100)),
  scale: z.exactOptional(quantity("mass", { least: "0.01 g", most: "200 g" })),
  prices: z.exactOptional(
    z.record(id("a material's id", "polyester"), priceSchema, {
      error: 'write an object, { … }, of prices by the material\'s id, such as "polyester"',
    }),
  ),
  rolls: z.exactOptional(
    z.record(id("a cloth's id", "e-136"), rollSchema, {
      error: 'write an object, { … }, of rolls by the cloth\'s id, such as "e-136"',
    }),
  ),
});
