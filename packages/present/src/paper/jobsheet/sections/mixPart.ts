import type { Plan } from "@lapline/engine";
import { groupCups } from "../../../words/groupCups";
import { hardenerAmounts } from "../../../words/hardenerAmounts";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import type { Grain } from "../Ledger";
import { nameWords } from "../nameWords";
import { gridPiece } from "../pieces/gridPiece";
import { notePiece } from "../pieces/notePiece";
import { tapeHeading } from "../pieces/tapeHeading";
import type { SheetContext, SheetPart } from "../SheetContext";
import { foundPieces } from "./foundPieces";
import { missingPieces } from "./missingPieces";

type Mix = NonNullable<Plan["mix"]>;

/** Cups coat by coat with their doses, a box to tick for each. */
export function mixPart(context: SheetContext): SheetPart {
  const { plan, t } = context;
  const heading = tapeHeading(t`Mix`, context);
  if (plan.mix === null) return { startsPage: false, pieces: [heading, ...missingPieces(context, "mix")] };
  return {
    startsPage: false,
    pieces: [
      heading,
      cupTable(plan.mix, context),
      ...airPieces(plan.mix, context),
      ...tintPieces(plan.mix, context),
      ...refusedPieces(plan.mix, context),
      ...foundPieces(context, ["mix"]),
    ],
  };
}

const coatName = (id: string, { reader }: SheetContext): string => nameWords(id, reader);

function cupTable({ coats }: Mix, context: SheetContext): FlowPiece {
  const { plan, ledger, t, type, widthMm } = context;
  const hasWax = coats.some(({ cups }) => cups.some(({ waxVolumeM3 }) => waxVolumeM3 > 0));
  const isStage = (id: string) => plan.weight?.stages.some((stage) => stage.id === id) === true;
  const hasDrops = coats.some(({ cups }) => cups.some(({ hardenerDrops }) => hardenerDrops !== null));
  const rows = coats.flatMap((coat) => {
    let first = 0;
    return groupCups(coat.cups).map(({ count, cup }) => {
      const at = `mix.coats[${coat.id}].cups[${first}]`;
      const show = (key: string, grain: Grain = "normal") => ledger.show(`${at}.${key}`, grain);
      const { byMass, byVolume } = hardenerAmounts(cup);
      const isFirst = first === 0;
      first += count;
      return [
        isFirst ? coatName(coat.id, context) : "",
        Array.from({ length: count }, () => "x").join(" "),
        show(cup.tintedBaseKg === null ? "baseMassKg" : "tintedBaseKg"),
        show("hardenerMassKg", byMass.grain),
        show("hardenerVolumeM3", byVolume.grain),
        ...(hasDrops ? [cup.hardenerDrops === null ? "–" : show("hardenerDrops", "coarse")] : []),
        ...(hasWax ? [cup.waxVolumeM3 > 0 ? show("waxVolumeM3") : "–"] : []),
        isFirst && coat.clock !== null ? ledger.show(`mix.coats[${coat.id}].clock.spreadByS`) : "",
        isFirst && isStage(coat.id) ? ledger.onScale(`weight.stages[${coat.id}].massKg`) : "",
        "",
      ];
    });
  });
  return gridPiece(
    {
      columns: [
        { head: t`coat`, kind: "name" },
        { head: t`cups`, kind: "tick" },
        { head: t`base, each`, kind: "act" },
        { head: t`hardener`, kind: "act" },
        { head: t`or`, kind: "act" },
        ...(hasDrops ? [{ head: t`or drops`, kind: "figure" } as const] : []),
        ...(hasWax ? [{ head: t`wax solution`, kind: "figure" } as const] : []),
        { head: t`spread by`, kind: "act" },
        { head: t`should then weigh`, kind: "figure" },
        { head: t`board weighs`, kind: "blank", leastMm: 20 },
      ],
      rows,
    },
    { type, widthMm },
  );
}

/** How warm the shop must be for these doses; coats alike together. */
function airPieces({ coats }: Mix, context: SheetContext): readonly FlowPiece[] {
  const { ledger, t } = context;
  const byAir = new Map<string, string[]>();
  for (const { id, cups } of coats) {
    if (cups.length === 0) continue;
    const air = ledger.show(`mix.coats[${id}].temperatureK`);
    byAir.set(air, [...(byAir.get(air) ?? []), coatName(id, context)]);
  }
  if (byAir.size === 1)
    return [...byAir.keys()].map((air) => notePiece(t`Doses and times hold in shop air of ${air}.`, context));
  return [...byAir].map(([air, names]) =>
    notePiece(t`In shop air of ${air}: doses and times of ${names.join(", ")}.`, context),
  );
}

/** A tinted coat has all its base coloured at once, so that its cups match. */
function tintPieces({ coats }: Mix, context: SheetContext): readonly FlowPiece[] {
  const { ledger, t } = context;
  return coats
    .filter(({ masterBatch }) => masterBatch !== null)
    .map(({ id }) => {
      const show = (key: string) => ledger.show(`mix.coats[${id}].masterBatch.${key}`);
      const name = coatName(id, context);
      return notePiece(
        t`${name}: stir ${show("tintMassKg")} of tint into ${show("baseMassKg")} of base at once, then fill the cups from it.`,
        context,
      );
    });
}

/** A coat that no dose in the resin's range can serve has no cup, and says so. */
function refusedPieces({ coats }: Mix, context: SheetContext): readonly FlowPiece[] {
  const { t } = context;
  return coats
    .filter(({ cups }) => cups.length === 0)
    .map(({ id }) =>
      notePiece(t`${coatName(id, context)}: no cup can be mixed as things are.`, context, "!"),
    );
}
