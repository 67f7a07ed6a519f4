import { STYRENE, STYRENE_LIMITS } from "../constants/styrene";
import { TINT_MOST_SHARE } from "../constants/tint";
import { say } from "../foundation/phrase";
import { duration, flow, fraction, mass, temperature } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { MixCoatPlan } from "./MixPlan";
import type { ShopAir } from "./ShopAir";

/** The limit that the note tells; the plan has the others beside it. */
const TOLD_LIMIT = "us-niosh";

/** What is told once for a board and not for each coat: heat of a cup left standing, vapour, colour, the end of a list of temperatures. */
export function checkWhole(
  coats: readonly MixCoatPlan[],
  air: ShopAir,
  tintMost: number | undefined,
): Finding[] {
  return [
    ...checkHeat(coats),
    ...checkVapour(coats),
    ...checkColour(coats),
    ...checkTintMost(coats, tintMost),
    ...checkListEnd(coats, air),
  ];
}

function checkHeat(coats: readonly MixCoatPlan[]): Finding[] {
  const hot = largest(coats, ({ heat, cups }) => (heat?.warning === "hot" ? (cups[0]?.mixedMassKg ?? 0) : 0));
  if (hot?.heat == null) return [];
  const says = say`a cup of ${hot.id} left standing keeps its heat: by its own heat it cannot get hotter than ${temperature(hot.heat.boundK)}, a bound and no forecast, and it loses heat in ${duration(hot.heat.coolingS)}, later than it gels. Pour it out at once; what is over goes into a flat pan outdoors`;
  return [finding("note", "mix.heat", `mix.coats[${hot.id}].heat`, says)];
}

function checkVapour(coats: readonly MixCoatPlan[]): Finding[] {
  const needOf = (coat: MixCoatPlan) => coat.vapour?.needs.find(({ id }) => id === TOLD_LIMIT);
  const worst = largest(coats, (coat) => needOf(coat)?.freshAirM3S ?? 0);
  const need = worst === undefined ? undefined : needOf(worst);
  if (worst?.vapour == null || need === undefined) return [];
  const { styreneKg, overS } = worst.vapour;
  const [least, most] = limitRange();
  const says = say`${worst.id} gives off about ${mass(styreneKg)} of styrene in ${duration(overS)} about the gel: ${flow(need.freshAirM3S)} of fresh air for ${need.limitPpm} ppm (${need.name}); published limits run from ${least} to ${most} ppm, differ by country and change. It burns from ${fraction(STYRENE.burnsFromShare.value)} of the air on. This is not a compliance calculation: the safety data sheet, local codes and licensed practice decide`;
  return [finding("note", "mix.vapour", `mix.coats[${worst.id}].vapour`, says)];
}

function limitRange(): readonly [number, number] {
  const limits = STYRENE_LIMITS.map(({ limitPpm }) => limitPpm);
  return [Math.min(...limits), Math.max(...limits)];
}

function checkColour(coats: readonly MixCoatPlan[]): Finding[] {
  return coats.flatMap(({ id, masterBatch, cups }) => {
    if (masterBatch === null || cups.length < 2) return [];
    const says = say`${id} is coloured: stir ${mass(masterBatch.tintMassKg)} of tint into ${mass(masterBatch.baseMassKg)} of resin as one master batch, weigh the ${cups.length} cups from it, and only then dose each cup; coloured cup by cup they never match`;
    return [finding("note", "mix.master-batch", `mix.coats[${id}].masterBatch`, says)];
  });
}

function checkTintMost(coats: readonly MixCoatPlan[], ownMost: number | undefined): Finding[] {
  const most = ownMost ?? TINT_MOST_SHARE.value;
  return coats.flatMap(({ id, masterBatch }) => {
    if (masterBatch === null) return [];
    const share = masterBatch.tintMassKg / masterBatch.baseMassKg;
    // A share of just the limit comes back from its masses a last digit above it.
    if (share <= most * (1 + 1e-9)) return [];
    const says =
      ownMost !== undefined
        ? say`${id} takes ${fraction(share)} of tint over its resin; its sheet allows ${fraction(most)} at most`
        : say`${id} takes ${fraction(share)} of tint over its resin; above about ${fraction(most)} (common practice) the cure slows and stays soft: the most that the sheets of tint and resin allow goes before this, and a test cup before the board`;
    return [finding("warning", "mix.much-tint", `mix.coats[${id}].masterBatch`, says)];
  });
}

/** A film whose end lies behind the last temperature given. */
function checkListEnd(coats: readonly MixCoatPlan[], air: ShopAir): Finding[] {
  if (!air.endsSoon) return [];
  const isOpen = coats.some(
    ({ clock }) => clock !== null && (clock.sandableS === null || clock.fullS === null),
  );
  if (!isOpen) return [];
  const says = say`the list of temperatures ends before every film is hard: times behind its end are not told; add the days that follow`;
  return [finding("note", "mix.list-ends", "shop.temperature", says)];
}

function largest(coats: readonly MixCoatPlan[], of: (coat: MixCoatPlan) => number): MixCoatPlan | undefined {
  const most = Math.max(0, ...coats.map(of));
  return most > 0 ? coats.find((coat) => of(coat) === most) : undefined;
}
