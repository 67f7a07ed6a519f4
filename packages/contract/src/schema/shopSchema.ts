import { say } from "@lapline/engine";
import { z } from "zod/mini";
import type { AirReadingFile, PriceFile, RollFile, ShopFile } from "../file/ShopFile";
import { issueText } from "../reading/issueSays";
import { fields } from "./fields";
import { packSize } from "./packSize";
import { quantity } from "./quantity";
import { id, listOf, oneOf, plainNumber, timeOfDay, timeZone, wallTime, wholeNumber } from "./words";

const air = () => quantity("temperature", { least: "-20 C", most: "50 C" });

const dayAndNight = fields(say`the shop's temperature`, { day: air(), night: air() });
const airReading: z.ZodMiniType<AirReadingFile> = fields(say`a temperature of the shop`, {
  at: wallTime(),
  air: air(),
});

export const rollSchema: z.ZodMiniType<RollFile> = fields(say`a roll`, {
  width: z.exactOptional(quantity("length", { least: "25 mm", most: "3 m" })),
  price: z.exactOptional(plainNumber(say`price`, 0, 1_000_000)),
});

export const priceSchema: z.ZodMiniType<PriceFile> = fields(say`a price`, {
  price: plainNumber(say`price`, 0, 1_000_000),
  pack: z.exactOptional(packSize()),
  pieces: z.exactOptional(wholeNumber(say`pieces`, 1, 100_000)),
  use: z.exactOptional(plainNumber(say`use`, 0.001, 100_000)),
});

export const shopSchema: z.ZodMiniType<ShopFile> = fields(say`the shop`, {
  temperature: z.exactOptional(
    z.union([dayAndNight, listOf(airReading, say`temperatures`, 1000)], {
      error: issueText(say`write an object with "day" and "night", or a list, [ … ], of { "at", "air" }`),
    }),
  ),
  humidity: z.exactOptional(quantity("fraction", { least: "2 %", most: "100 %" })),
  resinTemperature: z.exactOptional(quantity("temperature", { least: "0 C", most: "60 C" })),
  start: z.exactOptional(wallTime()),
  timeZone: z.exactOptional(timeZone()),
  hours: z.exactOptional(fields(say`the shop's hours`, { from: timeOfDay(), to: timeOfDay() })),
  stands: z.exactOptional(wholeNumber(say`stands`, 1, 50)),
  people: z.exactOptional(wholeNumber(say`people`, 1, 50)),
  experience: z.exactOptional(oneOf(["first", "some", "trade"])),
  dropsPerMl: z.exactOptional(plainNumber(say`drops in a millilitre`, 5, 100)),
  scale: z.exactOptional(quantity("mass", { least: "0.01 g", most: "200 g" })),
  prices: z.exactOptional(
    z.record(id(say`a material's id`, "polyester"), priceSchema, {
      error: issueText(say`write an object, { … }, of prices by the material's id, such as "polyester"`),
    }),
  ),
  rolls: z.exactOptional(
    z.record(id(say`a cloth's id`, "e-136"), rollSchema, {
      error: issueText(say`write an object, { … }, of rolls by the cloth's id, such as "e-136"`),
    }),
  ),
});
