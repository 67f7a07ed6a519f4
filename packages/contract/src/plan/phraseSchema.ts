import type { Phrase } from "@lapline/engine";
import { z } from "zod";

const quantity = z.object({
  dimension: z.enum([
    "length",
    "area",
    "volume",
    "mass",
    "arealMass",
    "density",
    "temperature",
    "angle",
    "duration",
    "flow",
    "fraction",
    "count",
  ]),
  value: z.number(),
  grain: z.enum(["coarse", "normal", "fine"]).exactOptional(),
});

const clause = z.object({
  get phrase(): z.ZodType<Phrase> {
    return phrase;
  },
});

/** Text of the sentence itself, and what was put into it: a quantity, a word or a sentence. */
export const phrase = z.array(z.union([z.string(), quantity, z.object({ word: z.string() }), clause]));
