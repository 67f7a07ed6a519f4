import { z } from "zod";
import type { GelPointFile, MaterialsFile, RecoatFile, ResinFile } from "../file/MaterialsFile";
import { readRatio } from "../reading/readRatio";
import { clothSchema, fillerSchema, foamSchema, tintSchema, woodSchema } from "./clothSchema";
import { fields } from "./fields";
import { quantity } from "./quantity";
import { describeOneOf, id, listOf, oneOf, plainNumber, plainText, yesOrNo } from "./words";

const KINDS = ["peroxide", "two-part", "sunlight"] as const;
/** The least share of hardener that any resin sets with; less is a resin read the other way round. */
const LEAST_HARDENER = 0.05;

const time = (least: string, most: string) => quantity("duration", { least, most });
const resinAir = () => quantity("temperature", { least: "0 C", most: "60 C" });
const dose = () => quantity("fraction", { least: "0.1 %", most: "4 %" });
const density = () => quantity("density", { least: "800 kg/m3", most: "1400 kg/m3" });

const recoat: z.ZodType<RecoatFile> = fields("the recoat window", {
  until: time("1 h", "30 d"),
  at: resinAir(),
});

const anyResin = {
  name: plainText("the resin's name").exactOptional(),
  density: density().exactOptional(),
  curedDensity: density().exactOptional(),
  leastTemperature: quantity("temperature", { least: "0 C", most: "40 C" }).exactOptional(),
  recoat: recoat.exactOptional(),
};
const withStyrene = {
  styrene: quantity("fraction", { least: "5 %", most: "60 %" }).exactOptional(),
  wax: z
    .union([z.literal("none"), quantity("fraction", { least: "0.1 %", most: "10 %" })], {
      error:
        'write wax solution by volume, such as "2 %", or "none" where the resin has its wax or needs none',
    })
    .exactOptional(),
};

const gelPoint: z.ZodType<GelPointFile> = fields("a line of the gel table", {
  temperature: resinAir(),
  dose: dose(),
  gels: time("1 min", "24 h"),
});

/** Base to hardener as a sheet writes it; more hardener than base is read the wrong way round. */
function ratio(by: string): z.ZodType<string> {
  const need = `write base to hardener by ${by} as on the sheet, such as "100:45"`;
  return z
    .string({ error: need })
    .check(({ value, issues }) => {
      const message = describeRatio(value, need);
      if (message !== null) issues.push({ code: "custom", message, input: value });
    })
    .meta({ description: `base to hardener by ${by}`, examples: ["100:45"], pattern: "^\\s*[0-9.]+\\s*:" });
}

function describeRatio(text: string, need: string): string | null {
  const read = readRatio(text);
  if (read === null) return need;
  const { base, hardener } = read;
  if (hardener > base)
    return `more hardener than base: base stands first, so was "${hardener}:${base}" meant?`;
  if (hardener < LEAST_HARDENER * base) return `so little hardener sets no two-part resin; ${need}`;
  return null;
}

export const resinSchema: z.ZodType<ResinFile> = z.discriminatedUnion(
  "kind",
  [
    fields("a resin cured by peroxide", {
      ...anyResin,
      ...withStyrene,
      kind: z.literal("peroxide"),
      dose: fields("the range of the dose", { least: dose(), most: dose() }),
      gel: listOf(gelPoint, "lines of the gel table", 200).min(1, {
        error: "write at least one line of the sheet's gel table, or one cup timed in the shop",
      }),
      promoter: oneOf(["in-resin", "to-add"]).exactOptional(),
      hardenerDensity: density().exactOptional(),
    }),
    fields("a two-part resin", {
      ...anyResin,
      kind: z.literal("two-part"),
      ratioByMass: ratio("mass").exactOptional(),
      ratioByVolume: ratio("volume").exactOptional(),
      potLife: fields("the pot life", {
        lasts: time("2 min", "24 h"),
        mass: quantity("mass", { least: "10 g", most: "5 kg" }),
        temperature: resinAir(),
      }),
      hardenerDensity: density().exactOptional(),
      blushes: yesOrNo().exactOptional(),
    }),
    fields("a resin cured by sunlight", {
      ...anyResin,
      ...withStyrene,
      kind: z.literal("sunlight"),
      exposure: fields("the exposure", {
        uvIndex: plainNumber("uvIndex", 1, 15),
        takes: time("10 s", "8 h"),
      }).exactOptional(),
    }),
  ],
  {
    error: ({ input }) => {
      if (typeof input !== "object" || input === null) return 'a resin is an object, { … }, with "kind"';
      return describeOneOf("kind" in input ? input.kind : undefined, KINDS);
    },
  },
);

function own<T>(what: string, example: string, record: z.ZodType<T>) {
  return z
    .record(id(`a ${what}'s id`, example), record, {
      error: `write an object, { … }, of ${what}s by an id of your own, such as "${example}"`,
    })
    .exactOptional();
}

export const materialsSchema: z.ZodType<MaterialsFile> = fields("the materials", {
  resins: z
    .record(id("a resin's id", "my-polyester"), resinSchema, {
      error: 'write an object, { … }, of resins by an id of your own, such as "my-polyester"',
    })
    .exactOptional(),
  cloths: own("cloth", "carbon-strip-200", clothSchema),
  foams: own("foam", "my-foam", foamSchema),
  woods: own("wood", "my-wood", woodSchema),
  fillers: own("filler", "my-filler", fillerSchema),
  tints: own("tint", "my-blue", tintSchema),
});
