import { angle, type Board, fraction, type HouseSetOffer, length, type Quantity } from "@lapline/engine";
import { finName, showQuantity, tell } from "@lapline/present";
import { useMemo } from "react";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fractions } from "../shared/Fractions";
import { TapeAmount } from "../shared/TapeAmount";
import { WhyProvider } from "../why/WhyProvider";

interface HouseSetOfferViewProps {
  readonly board: Board;
  readonly offer: HouseSetOffer;
  /** The board has no fins yet, so nothing differs from anything. */
  readonly isNew: boolean;
  /** What its distances from the tail start at. */
  readonly tail: "tail" | "tips";
  take(): void;
}

/** One way of putting a house set on this board: every mark, and in brackets how far that is from what is there now. */
export function HouseSetOfferView({ board, offer, isNew, tail, take }: HouseSetOfferViewProps) {
  const { reader } = useSettings();
  const t = useTell();
  const offered = useMemo(() => ({ ...board, fins: offer.fins }), [board, offer]);
  return (
    <div className="offer">
      <WhyProvider board={offered} plan={null}>
        <FactTable
          caption={
            offer.id === "scale-with-length"
              ? t`Scaled with the board's length: to ${fraction(offer.scale)}`
              : t`Distances from the tail kept`
          }
          heads={[t`mark`, tail === "tips" ? t`from tips` : t`from tail`, t`from line`, t`toe`, t`cant`]}
          rows={offer.differences.map((mark) => ({
            id: mark.id,
            name: finName(mark.id, reader),
            cells: [
              <span key="tail">
                <TapeAmount ofM={mark.fromTailTapeM} why={`${at(mark.id)}.trailing.fromTailTapeM`} />
                <Change by={lengthOf(mark.fromTailTapeDifferM)} isNew={isNew} />
              </span>,
              <span key="line">
                <TapeAmount ofM={mark.fromCentrelineM} why={`${at(mark.id)}.trailing.fromCentrelineM`} />
                <Change by={lengthOf(mark.fromCentrelineDifferM)} isNew={isNew} />
              </span>,
              <span key="toe">
                <Amount of={angle(mark.toeRad)} why={`${at(mark.id)}.toeRad`} />
                <Change by={angleOf(mark.toeDifferRad)} isNew={isNew} />
              </span>,
              <span key="cant">
                <Amount of={angle(mark.cantRad)} why={`${at(mark.id)}.cantRad`} />
                <Change by={angleOf(mark.cantDifferRad)} isNew={isNew} />
              </span>,
            ],
          }))}
        />
      </WhyProvider>
      <button type="button" onClick={take}>{t`Put these numbers on the board`}</button>
    </div>
  );
}

/** A mark's place in the plan of the board with these fins. */
const at = (id: string): string => `finset.marks[${id}]`;

const lengthOf = (valueM: number | null): Quantity | null => (valueM === null ? null : length(valueM));
const angleOf = (valueRad: number | null): Quantity | null => (valueRad === null ? null : angle(valueRad));

/** Less than this, in metres or radians, is the same to a pencil and to a bevel gauge. */
const SAME = 0.0003;

function Change({ by, isNew }: { by: Quantity | null; isNew: boolean }) {
  const { reader } = useSettings();
  const t = tell(reader);
  if (isNew) return null;
  const words =
    by === null
      ? t`new`
      : Math.abs(by.value) < SAME
        ? t`same`
        : `${by.value > 0 ? "+" : "−"}${showQuantity({ ...by, value: Math.abs(by.value) }, reader)}`;
  return (
    <span className="quiet change">
      <Fractions text={words} />
    </span>
  );
}
