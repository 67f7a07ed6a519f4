import {
  duration,
  formatQuantity,
  fraction,
  mass,
  type Plan,
  temperature,
  type Units,
  volume,
} from "@lapline/engine";
import { groupCups } from "../words/groupCups";
import type { Block } from "./Block";
import { type Column, formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Mix = NonNullable<Plan["mix"]>;

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** Cups in the order they are used, with the dose in grams and millilitres and the band in which each goes off. */
export function mixBlock(plan: Plan, units: Units): Block {
  const { mix } = plan;
  if (mix === null) {
    return {
      title: "MIX",
      lines: sayWhyMissing(plan, "mix", units).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  return {
    title: "MIX",
    lines: [
      ...cupTable(mix, units),
      ...refusedLines(plan, mix, units),
      "",
      ...gelTable(mix, units),
      "",
      ...filmTable(mix, units),
    ],
  };
}

function cupTable(mix: Mix, units: Units): readonly string[] {
  const rows = mix.coats.flatMap((coat) =>
    groupCups(coat.cups).map((group) => [
      coat.id,
      `${group.count} x`,
      formatQuantity(mass(group.cup.baseMassKg), units),
      formatQuantity(mass(group.cup.hardenerMassKg), units),
      formatQuantity(volume(group.cup.hardenerVolumeM3), units),
      group.cup.waxVolumeM3 > 0 ? formatQuantity(volume(group.cup.waxVolumeM3), units) : "-",
      coat.hardenerRatio === null ? "-" : formatQuantity(fraction(coat.hardenerRatio), units),
      formatQuantity(temperature(coat.temperatureK), "mm"),
    ]),
  );
  return formatTable(
    [
      words("coat"),
      figure("cups"),
      figure("resin"),
      figure("hardener"),
      figure("or"),
      figure("wax"),
      figure("dose"),
      figure("shop"),
    ],
    rows,
  );
}

/** A coat that no dose in the resin's range can serve has no cup, and says why. */
function refusedLines(plan: Plan, mix: Mix, units: Units): readonly string[] {
  const refused = mix.coats.filter((coat) => coat.cups.length === 0);
  if (refused.length === 0) return [];
  const reasons = sayWhyMissing(plan, "mix", units);
  return [
    ...refused.flatMap((coat) => wrapText(`${coat.id}: no cup can be mixed as things are.`, { indent: 2 })),
    ...reasons.flatMap((reason) => wrapText(reason, { indent: 4 })),
  ];
}

function gelTable(mix: Mix, units: Units): readonly string[] {
  const rows = mix.coats.flatMap(({ id, clock }) =>
    clock === null
      ? []
      : [[id, show(clock.spreadByS, units), show(clock.potGelLowS, units), show(clock.potGelHighS, units)]],
  );
  return formatTable(
    [words("after the hardener"), figure("spread by"), figure("cup gels, early"), figure("late")],
    rows,
  );
}

function filmTable(mix: Mix, units: Units): readonly string[] {
  const rows = mix.coats.flatMap(({ id, clock }) =>
    clock === null
      ? []
      : [
          [
            id,
            ...[clock.trimFromS, clock.flipS, clock.recoatFromS, clock.recoatUntilS, clock.sandableS].map(
              (timeS) => show(timeS, units),
            ),
          ],
        ],
  );
  return formatTable(
    [
      words("on the board"),
      figure("trim from"),
      figure("flip"),
      figure("recoat from"),
      figure("recoat until"),
      figure("sand"),
    ],
    rows,
  );
}

function show(timeS: number | null, units: Units): string {
  return timeS === null ? "-" : formatQuantity(duration(timeS), units);
}
