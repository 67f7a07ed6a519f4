import { duration, fraction, mass, type Plan, temperature, volume } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { groupCups } from "../words/groupCups";
import type { Block } from "./Block";
import { type Column, formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Mix = NonNullable<Plan["mix"]>;

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** Cups in the order they are used, with the dose in grams and millilitres and the band in which each goes off. */
export function mixBlock(plan: Plan, reader: Reader): Block {
  const { mix } = plan;
  if (mix === null) {
    return {
      title: "MIX",
      lines: sayWhyMissing(plan, "mix", reader).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  return {
    title: "MIX",
    lines: [
      ...cupTable(mix, reader),
      ...refusedLines(plan, mix, reader),
      "",
      ...gelTable(mix, reader),
      "",
      ...filmTable(mix, reader),
    ],
  };
}

function cupTable(mix: Mix, reader: Reader): readonly string[] {
  const rows = mix.coats.flatMap((coat) =>
    groupCups(coat.cups).map((group) => [
      coat.id,
      `${group.count} x`,
      showQuantity(mass(group.cup.baseMassKg), reader),
      showQuantity(mass(group.cup.hardenerMassKg), reader),
      showQuantity(volume(group.cup.hardenerVolumeM3), reader),
      group.cup.waxVolumeM3 > 0 ? showQuantity(volume(group.cup.waxVolumeM3), reader) : "-",
      coat.hardenerRatio === null ? "-" : showQuantity(fraction(coat.hardenerRatio), reader),
      showQuantity(temperature(coat.temperatureK), { ...reader, units: "mm" }),
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
function refusedLines(plan: Plan, mix: Mix, reader: Reader): readonly string[] {
  const refused = mix.coats.filter((coat) => coat.cups.length === 0);
  if (refused.length === 0) return [];
  const reasons = sayWhyMissing(plan, "mix", reader);
  return [
    ...refused.flatMap((coat) => wrapText(`${coat.id}: no cup can be mixed as things are.`, { indent: 2 })),
    ...reasons.flatMap((reason) => wrapText(reason, { indent: 4 })),
  ];
}

function gelTable(mix: Mix, reader: Reader): readonly string[] {
  const rows = mix.coats.flatMap(({ id, clock }) =>
    clock === null
      ? []
      : [
          [
            id,
            show(clock.spreadByS, reader),
            show(clock.potGelLowS, reader),
            show(clock.potGelHighS, reader),
          ],
        ],
  );
  return formatTable(
    [words("after the hardener"), figure("spread by"), figure("cup gels, early"), figure("late")],
    rows,
  );
}

function filmTable(mix: Mix, reader: Reader): readonly string[] {
  const rows = mix.coats.flatMap(({ id, clock }) =>
    clock === null
      ? []
      : [
          [
            id,
            ...[clock.trimFromS, clock.flipS, clock.recoatFromS, clock.recoatUntilS, clock.sandableS].map(
              (timeS) => show(timeS, reader),
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

function show(timeS: number | null, reader: Reader): string {
  return timeS === null ? "-" : showQuantity(duration(timeS), reader);
}
