import { formatLength, formatQuantity, mass, type Plan } from "@lapline/engine";
import { hardenerAmounts, tell } from "@lapline/present";
import { useState } from "react";
import { QuantityField } from "../board/QuantityField";
import { cupFigures } from "../mix/cupFigures";
import { SunTimes } from "../mix/SunTimes";
import { WhyNone } from "../mix/WhyNone";
import { quantityProblem } from "../record/quantityProblem";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Figures } from "../shared/Figures";
import { Fractions } from "../shared/Fractions";
import { wallTime } from "../shared/wallTime";
import { armAlarm } from "./alarm";
import type { BenchCard } from "./BenchCard";
import type { BenchHand } from "./BenchHand";
import { type MixedFile, mixedCups } from "./mixedCups";

type Mix = NonNullable<Plan["mix"]>;
type Cup = Mix["coats"][number]["cups"][number];

interface CupCardProps {
  readonly hand: BenchHand;
  readonly card: Extract<BenchCard, { kind: "cup" }>;
  go(card: string): void;
}

/** One cup: what goes in by the plan, what really went in, and the one touch when the hardener goes in. */
export function CupCard({ hand, card, go }: CupCardProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { file, good } = hand.draft;
  const { mix, findings } = good.plan;
  const coat = mix?.coats.find(({ id }) => id === card.coat);
  if (coat === undefined) return null;
  const cup = coat.cups[card.number];
  const mixed = mixedCups(file, card.coat)[card.number];
  const resin = mix?.resins.find(({ id }) => id === coat.resin);
  const hasHardener = coat.hardenerRatio !== null && coat.hardenerRatio > 0;
  return (
    <>
      {coat.cups.length === 0 && <WhyNone coat={coat} findings={findings} />}
      {cup !== undefined && (
        <>
          <Figures
            entries={cupFigures({ cups: 1, cup, at: `mix.coats[${coat.id}].cups[${card.number}]` }, t)}
          />
          <Where cup={cup} />
        </>
      )}
      {hasHardener ? (
        <PouredForm key={mixed?.id} hand={hand} coat={card.coat} cup={cup} mixed={mixed} go={go} />
      ) : (
        cup !== undefined && (
          <>
            <p>{t`No hardener: light sets it. Lay it on out of the sun, then take it into the sun.`}</p>
            {resin !== undefined && <SunTimes resin={resin} />}
          </>
        )
      )}
    </>
  );
}

function Where({ cup: { fromTailM, toM } }: { cup: Cup }) {
  const { units } = useSettings();
  const t = useTell();
  if (fromTailM === null || toM === null) return null;
  const tape = (lengthM: number) => formatLength(lengthM, { units, denominator: 8 });
  return (
    <p className="as-it-lies">
      <Fractions text={t`For ${tape(toM)} to ${tape(fromTailM)} from the tail.`} />
    </p>
  );
}

interface PouredProps {
  readonly hand: BenchHand;
  readonly coat: string;
  readonly cup: Cup | undefined;
  readonly mixed: MixedFile | undefined;
  go(card: string): void;
}

/** What really went in, by the plan until it is typed otherwise; written down with its time, and corrected by a later entry. */
function PouredForm({ hand, coat, cup, mixed, go }: PouredProps) {
  const t = useTell();
  // Only what was typed is held: a cup that the plan doses anew while the screen is open is written down as it then stands.
  const [own, setOwn] = useState<Partial<Poured>>({});
  const typed = { ...pouredFirst(cup, mixed), ...own };
  const problem = (text: string) => quantityProblem(text, "mass");
  const isRead = problem(typed.base) === undefined && problem(typed.hardener) === undefined;
  const isChanged = mixed !== undefined && (mixed.base !== typed.base || mixed.hardener !== typed.hardener);
  const write = () => {
    if (!isRead) return;
    armAlarm();
    const now = wallTime(new Date());
    const at = mixed?.at ?? now;
    const corrects = mixed === undefined ? {} : { corrects: mixed.id };
    hand.addEntry({ kind: "mixed", coat, base: typed.base, hardener: typed.hardener, at, ...corrects });
    if (mixed === undefined) go("clock");
  };
  return (
    <form
      className="poured"
      onSubmit={(event) => {
        event.preventDefault();
        write();
      }}
    >
      {mixed !== undefined && (
        <p className="as-it-lies">
          {mixed.at === undefined
            ? t`The hardener is in.`
            : t`The hardener went in: ${mixed.at.slice(0, 16)}.`}
        </p>
      )}
      <div className="fields">
        {(["base", "hardener"] as const).map((part) => (
          <QuantityField
            key={part}
            label={part === "base" ? t`resin, as poured` : t`hardener, as poured`}
            value={typed[part]}
            dimension="mass"
            problem={problem(typed[part])}
            onType={(text) => setOwn({ ...own, [part]: text })}
          />
        ))}
      </div>
      {mixed === undefined && (
        <button type="submit" className="hardener-in" disabled={!isRead}>
          {t`Hardener is in: start the clock`}
        </button>
      )}
      {isChanged && (
        <button type="submit" disabled={!isRead}>
          {t`Correct what went in`}
        </button>
      )}
      {mixed !== undefined && (
        <button
          type="button"
          className="slight"
          onClick={() => hand.addEntry({ kind: "struck", corrects: mixed.id, at: wallTime(new Date()) })}
        >
          {t`A slip: it is not in`}
        </button>
      )}
    </form>
  );
}

interface Poured {
  readonly base: string;
  readonly hardener: string;
}

/** As the record has it, or else by the plan; grams in both systems, as the scale reads. */
function pouredFirst(cup: Cup | undefined, mixed: MixedFile | undefined): Poured {
  if (mixed !== undefined) return { base: mixed.base, hardener: mixed.hardener };
  if (cup === undefined) return { base: "", hardener: "" };
  return {
    base: formatQuantity(mass(cup.baseMassKg), "mm"),
    hardener: formatQuantity(hardenerAmounts(cup).byMass, "mm"),
  };
}
