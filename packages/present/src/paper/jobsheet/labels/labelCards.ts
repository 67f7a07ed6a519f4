import type { Plan } from "@lapline/engine";
import type { Reader } from "../../../language/Reader";
import { type Tell, tell } from "../../../language/tell";
import { cautionName } from "../../../words/cautionName";
import { hardenerAmounts } from "../../../words/hardenerAmounts";
import type { Grain, Ledger } from "../Ledger";
import { nameWords } from "../nameWords";

/** One label: what is in the cup or the can, and what it can do. */
export interface LabelCard {
  readonly title: string;
  /** `cup 1 of 2`, or `can`. */
  readonly which: string;
  /** A name with its figure, the ones to mix by first. */
  readonly figures: ReadonlyArray<{ readonly name: string; readonly figure: string }>;
  /** What is written in by hand. */
  readonly blanks: readonly string[];
  readonly cautions: string;
}

type Coat = NonNullable<Plan["mix"]>["coats"][number];

interface CardContext {
  readonly plan: Plan;
  readonly reader: Reader;
  readonly ledger: Ledger;
  readonly t: Tell;
}

/** A label for every cup in the order they are mixed, then one for the can of each resin. */
export function labelCards(ledger: Ledger): readonly LabelCard[] {
  const { plan, reader } = ledger;
  const context: CardContext = { plan, reader, ledger, t: tell(reader) };
  const coats = plan.mix?.coats ?? [];
  const resins = [...new Set(coats.map(({ resin }) => resin))];
  return [
    ...coats.flatMap((coat) => coat.cups.map((cup, i) => cupCard(coat, { cup, i }, context))),
    ...resins.map((resin) =>
      canCard(
        coats.filter((coat) => coat.resin === resin),
        context,
      ),
    ),
  ];
}

interface CupAt {
  readonly cup: Coat["cups"][number];
  readonly i: number;
}

function cupCard(coat: Coat, { cup, i }: CupAt, context: CardContext): LabelCard {
  const { ledger, reader, t } = context;
  const at = `mix.coats[${coat.id}]`;
  const show = (key: string, grain: Grain = "normal") => ledger.show(`${at}.cups[${i}].${key}`, grain);
  const { byMass, byVolume } = hardenerAmounts(cup);
  const hardener = `${show("hardenerMassKg", byMass.grain)} · ${show("hardenerVolumeM3", byVolume.grain)}`;
  return {
    title: nameWords(coat.id, reader),
    which: t`cup ${i + 1} of ${coat.cups.length}`,
    figures: [
      ...(cup.tintedBaseKg === null
        ? [{ name: t`resin base`, figure: show("baseMassKg") }]
        : [{ name: t`tinted base, ${show("tintMassKg")} of tint in it`, figure: show("tintedBaseKg") }]),
      { name: t`hardener`, figure: hardener },
      ...(cup.waxVolumeM3 > 0 ? [{ name: t`wax solution`, figure: show("waxVolumeM3") }] : []),
      ...(coat.clock === null ? [] : [{ name: t`spread by`, figure: ledger.show(`${at}.clock.spreadByS`) }]),
    ],
    blanks: [t`hardener in at`, t`date`],
    cautions: cautionLine([coat], context),
  };
}

function canCard(coats: readonly Coat[], context: CardContext): LabelCard {
  const { ledger, reader, t } = context;
  const dosed = coats.filter(({ hardenerRatio }) => hardenerRatio !== null);
  return {
    title: ledger.words(`mix.coats[${coats[0]?.id}].resin`),
    which: t`can`,
    figures: dosed.map(({ id }) => ({
      name: nameWords(id, reader),
      figure: ledger.show(`mix.coats[${id}].hardenerRatio`),
    })),
    blanks: [t`opened`, t`batch`],
    cautions: cautionLine(coats, context),
  };
}

/** The cautions of the steps that lay these coats, in two or three words each; the Sheet has them in full. */
function cautionLine(coats: readonly Coat[], { plan, t }: CardContext): string {
  const ids = coats.map(({ id }) => id);
  const steps = (plan.steps ?? []).filter(({ coat }) => coat !== null && ids.includes(coat));
  const cautions = [...new Set(steps.flatMap((step) => step.cautions))];
  return cautions.map((caution) => cautionName(caution, t) ?? caution).join(" · ");
}
