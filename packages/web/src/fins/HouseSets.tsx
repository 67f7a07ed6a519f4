import type { FinsFile } from "@lapline/contract";
import { type Board, HOUSE_SETS } from "@lapline/engine";
import { tellText } from "@lapline/present";
import { useState } from "react";
import type { FieldPath } from "../board/withField";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { finsFileOf } from "./finsFileOf";
import { HouseSetOfferView } from "./HouseSetOfferView";
import { useOffers } from "./useOffers";

interface HouseSetsProps {
  readonly board: Board;
  readonly fins: FinsFile | undefined;
  edit(path: FieldPath, value: unknown): void;
}

const NONE = "none";

interface Applied {
  readonly name: string;
  readonly before: FinsFile | undefined;
}

/** Sets of numbers that makers trust, put on this board in both ways with what would change; the earlier numbers can be put back. */
export function HouseSets({ board, fins, edit }: HouseSetsProps) {
  const t = useTell();
  const { units, reader } = useSettings();
  const [chosen, setChosen] = useState(NONE);
  const [applied, setApplied] = useState<Applied | null>(null);
  const set = HOUSE_SETS.find(({ id }) => id === chosen);
  const offers = useOffers(board, set);
  return (
    <section className="house-sets" aria-label={t`House sets`}>
      <Choice
        label={t`House set, to see on this board`}
        value={chosen}
        choices={[NONE, ...HOUSE_SETS.map(({ id }) => id)]}
        names={Object.fromEntries(HOUSE_SETS.map(({ id, name }) => [id, tellText(name, reader)]))}
        choose={setChosen}
      />
      {applied !== null && (
        <p role="status">
          {t`The ${applied.name} is on this board; what was measured of the fins before is taken away.`}{" "}
          <button
            type="button"
            className="plain"
            onClick={() => {
              edit(["fins"], applied.before);
              setApplied(null);
            }}
          >{t`put the earlier numbers back`}</button>
        </p>
      )}
      {set !== undefined && (
        <p>
          {tellText(set.words, reader)}{" "}
          {t`Common practice, no source. Sides, boxes and plug stay as they are.`}
        </p>
      )}
      {offers?.length === 0 && <p>{t`It can be put on once the board has a shape.`}</p>}
      <div className="pair">
        {offers?.map((offer) => (
          <HouseSetOfferView
            key={offer.id}
            board={board}
            offer={offer}
            isNew={fins === undefined}
            tail={board.survey.tail?.kind === "swallow" ? "tips" : "tail"}
            take={() => {
              setApplied({ name: set?.name ?? "", before: fins });
              edit(["fins"], finsFileOf(offer.fins, fins, units));
            }}
          />
        ))}
      </div>
    </section>
  );
}
