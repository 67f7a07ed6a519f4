import { z } from "zod/mini";
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

const recoat: z.ZodMiniType<RecoatFile> = fields("the recoat window", {
  until: time("1 h", "30 d"),
  at: resinAir(),
});

const anyResin = {
  name: z.exactOptional(plainText("the resin's name")),
  density: z.exactOptional(density()),
  curedDensity: z.exactOptional(density()),
  leastTemperature: z.exactOptional(quantity("temperature", { least: "0 C", most: "40 C" })),
  recoat: z.exactOptional(recoat),
};
const withStyrene = {
  styrene: z.exactOptional(quantity("fraction", { least: "5 %", most: "60 %" })),
  wax: z.exactOptional(
    z.union([z.literal("none"), quantity("fraction", { least: "0.1 %", most: "10 %" })], {
      error:
        'write wax solution by volume, such as "2 %", or "none" where the resin has its wax or needs none',
    }),
  ),
};

const gelPoint: z.ZodMiniType<GelPointFile> = fields("a line of the gel table", {
  temperature: resinAir(),
  dose: dose(),
  gels: time("1 min", "24 h"),
});

/** Base to hardener as a sheet writes it; more hardener than base is read the wrong way round. */
function ratio(by: string): z.ZodMiniType<string> {
  const need = `write base to hardener by ${by} as on the sheet, such as "100:45"`;
  return z
    .string({ error: need })
    .check(({ value, issues }) => {
      const message = describeRatio(value, need);
      if (message !== null) issues.push({ code: "custom", message, input: value });
    })
    .register(z.globalRegistry, {
      description: `base to hardener by ${by}`,
      examples: ["100:45"],
      pattern: "^\\s*[0-9.]+\\s*:",
    });
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

export const resinSchema: z.ZodMiniType<ResinFile> = z.discriminatedUnion(
  "kind",
  [
    fields("a resin cured by peroxide", {
      ...anyResin,
      ...withStyrene,
      kind: z.literal("peroxide"),
      dose: fields("the range of the dose", { least: dose(), most: dose() }),
      gel: listOf(gelPoint, "lines of the gel table", 200).check(
        z.minLength(1, {
          error: "write at least one line of the sheet's gel table, or one cup timed in the shop",
        }),
      ),
      promoter: z.exactOptional(oneOf(["in-resin", "to-add"])),
      hardenerDensity: z.exactOptional(density()),
    }),
    fields("a two-part resin", {
      ...anyResin,
      kind: z.literal("two-part"),
      ratioByMass: z.exactOptional(ratio("mass")),
      ratioByVolume: z.exactOptional(ratio("volume")),
      potLife: fields("the pot life", {
        lasts: time("2 min", "24 h"),
        mass: quantity("mass", { least: "10 g", most: "5 kg" }),
        temperature: resinAir(),
      }),
      hardenerDensity: z.exactOptional(density()),
      blushes: z.exactOptional(yesOrNo()),
    }),
    fields("a resin cured by sunlight", {
      ...anyResin,
      ...withStyrene,
      kind: z.literal("sunlight"),
      exposure: z.exactOptional(
        fields("the exposure", {
          uvIndex: plainNumber("uvIndex", 1, 15),
          takes: time("10 s", "8 h"),
        }),
      ),
    }),
  ],
  {
    error: ({ input }) => {
      if (typeof input !== "object" || input === null) return 'a resin is an object, { … }, with "kind"';
      return describeOneOf("kind" in input ? input.kind : undefined, KINDS);
    },
  },
);

function own<T>(what: string, example: string, record: z.ZodMiniType<T>) {
  return z.exactOptional(
    z.record(id(`a ${what}'s id`, example), record, {
      error: `write an object, { … }, of ${what}s by an id of your own, such as "${example}"`,
    }),
  );
}

export const materialsSchema: z.ZodMiniType<MaterialsFile> = fields("the materials", {
  resins: z.exactOptional(
    z.record(id("a resin's id", "my-polyester"), resinSchema, {
      error: 'write an object, { … }, of resins by an id of your own, such as "my-polyester"',
    }),
  ),
  cloths: own("cloth", "carbon-strip-200", clothSchema),
  foams: own("foam", "my-foam", foamSchema),
  woods: own("wood", "my-wood", woodSchema),
  fillers: own("filler", "my-filler", fillerSchema),
  tints: own("tint", "my-blue", tintSchema),
});
