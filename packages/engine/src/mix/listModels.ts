import { MIXING_FACTOR } from "../constants/styrene";
import { say } from "../foundation/phrase";
import type { Assumption } from "../foundation/stage";
import { assume } from "../sources/assume";
import type { MixCoatPlan } from "./MixPlan";
import type { ResinCure } from "./ResinCure";
import type { ShopAir } from "./ShopAir";

/** What every cup and clock of these coats rests on. */
export function listModels(
  cures: readonly ResinCure[],
  coats: readonly MixCoatPlan[],
  air: ShopAir,
): Assumption[] {
  const has = (kind: ResinCure["resin"]["kind"]) => cures.some(({ resin }) => resin.kind === kind);
  return [
    ...listAlways(air),
    ...(coats.some(({ cups }) => cups.length > 1) ? listSplit() : []),
    ...(has("peroxide") ? listPeroxide(cures) : []),
    ...(has("two-part") ? listTwoPart(cures) : []),
    ...(has("sunlight") ? listSunlight() : []),
  ];
}

function listAlways({ endsSoon }: ShopAir): Assumption[] {
  return [
    assume(
      "mix.coats",
      say`spreading times by kind of coat, mass and practice`,
      "nobody's own times are known yet; they decide how many cups, and how strong a dose",
      "common-practice",
    ),
    assume(
      "mix.coats",
      say`film stages as multiples of the film's gel time`,
      "a sheet times a cup, not a film: a fingertip on the board is better than any of these times",
      "common-practice",
    ),
    assume(
      "mix.coats",
      endsSoon
        ? say`each coat goes on in the air of its own hour in the calendar, or in the first working hour that is warm enough; its film's times count from the last cup`
        : say`each coat goes on at the start of the working hours; its film's times count from the last cup`,
      endsSoon
        ? "the dose is for that hour: laid in warmer air the cup goes off sooner"
        : "no calendar is planned here",
      "convention",
    ),
    assume(
      "mix.coats",
      say`a cup left standing as a cylinder as tall as it is wide, cooled by still air`,
      "no cup was measured",
      "convention",
    ),
  ];
}

function listSplit(): Assumption[] {
  return [
    assume(
      "mix.coats",
      say`the next cup is mixed when the one before lies spread`,
      "one cup at a time stands open",
      "convention",
    ),
    assume(
      "mix.coats",
      say`cups go on from the nose to the tail, each on an equal share of the face`,
      "one wet edge walks along the board",
      "convention",
    ),
  ];
}

function listPeroxide(cures: readonly ResinCure[]): Assumption[] {
  const isGeneric = cures.some(
    ({ resin }) => resin.kind === "peroxide" && resin.gel.source === "gel-table-115nt",
  );
  return [
    ...(isGeneric
      ? [
          assume(
            "glass.resin",
            say`gel times of one published polyester sheet, with the spread between sheets in the band`,
            "another polyester may take half or twice the time: your own sheet, or one cup timed in your shop, narrows it",
            "gel-table-115nt",
          ),
        ]
      : []),
    assume(
      "mix.coats",
      say`the strongest dose in the range that leaves the time to spread`,
      "the film then sets as soon as the work allows",
      "convention",
    ),
    assume(
      "mix.coats",
      say`wax solution in fill and gloss coats only, on top of the mixed mass`,
      "wax lets the top dry sandable, and keeps the next coat from bonding",
      "wax-supplier",
    ),
    assume(
      "mix.coats",
      say`fresh air as a room needs it that mixes ${MIXING_FACTOR.value} times worse than a perfect stir`,
      "no air was measured; in a dead corner it is worse",
      MIXING_FACTOR.source,
    ),
  ];
}

function listTwoPart(cures: readonly ResinCure[]): Assumption[] {
  const isGeneric = cures.some(
    ({ resin }) => resin.kind === "two-part" && resin.potLife.durationS.source === "epoxy-memory",
  );
  if (!isGeneric) return [];
  return [
    assume(
      "glass.resin",
      say`ratio and pot life of a middling laminating epoxy`,
      "only the sheet of your own resin gives its ratio: weigh by that, and never turn it to change the pace",
      "epoxy-memory",
    ),
  ];
}

function listSunlight(): Assumption[] {
  return [
    assume(
      "mix.resins",
      say`the same dose of light sets it, whatever the day`,
      "no lamp or sky was measured: try a scrap in the light of the day",
      "sunlight-memory",
    ),
  ];
}
