import { angle, formatQuantity, fraction, type HouseSetOffer, length, type Quantity } from "@lapline/engine";
import { finName } from "@lapline/present";
import { ENGLISH } from "../settings/english";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fractions } from "../shared/Fractions";
import { TapeAmount } from "../shared/TapeAmount";

interface HouseSetOfferViewProps {
  readonly offer: HouseSetOffer;
  /** The board has no fins yet, so nothing differs from anything. */
  readonly isNew: boolean;
  /** What its distances from the tail start at. */
  readonly tail: "tail" | "tips";
  take(): void;
}

const NAMES: Readonly<Record<HouseSetOffer["id"], string>> = {
  "keep-from-tail": "Distances from the tail kept",
  "scale-with-length": "Scaled with the board's length",
};

/** One way of putting a house set on this board: every mark, and in brackets how far that is from what is there now. */
export function HouseSetOfferView({ offer, isNew, tail, take }: HouseSetOfferViewProps) {
  const { units } = useSettings();
  return (
    <div className="offer">
      <FactTable
        caption={`${NAMES[offer.id]}${offer.id === "scale-with-length" ? `: to ${formatQuantity(fraction(offer.scale), units)}` : ""}`}
        heads={["mark", `from ${tail}`, "from line", "toe", "cant"]}
        rows={offer.differences.map((mark) => ({
          id: mark.id,
          name: finName(mark.id, ENGLISH),
          cells: [
            <span key="tail">
              <TapeAmount ofM={mark.fromTailTapeM} />
              <Change by={lengthOf(mark.fromTailTapeDifferM)} isNew={isNew} />
            </span>,
            <span key="line">
              <TapeAmount ofM={mark.fromCentrelineM} />
              <Change by={lengthOf(mark.fromCentrelineDifferM)} isNew={isNew} />
            </span>,
            <span key="toe">
              <Amount of={angle(mark.toeRad)} />
              <Change by={angleOf(mark.toeDifferRad)} isNew={isNew} />
            </span>,
            <span key="cant">
              <Amount of={angle(mark.cantRad)} />
              <Change by={angleOf(mark.cantDifferRad)} isNew={isNew} />
            </span>,
          ],
        }))}
      />
      <button type="button" onClick={take}>
        Put these numbers on the board
      </button>
    </div>
  );
}

const lengthOf = (valueM: number | null): Quantity | null => (valueM === null ? null : length(valueM));
const angleOf = (valueRad: number | null): Quantity | null => (valueRad === null ? null : angle(valueRad));

/** Less than this, in metres or radians, is the same to a pencil and to a bevel gauge. */
const SAME = 0.0003;

function Change({ by, isNew }: { by: Quantity | null; isNew: boolean }) {
  const { units } = useSettings();
  if (isNew) return null;
  const words =
    by === null
      ? "new"
      : Math.abs(by.value) < SAME
        ? "same"
        : `${by.value > 0 ? "+" : "−"}${formatQuantity({ ...by, value: Math.abs(by.value) }, units)}`;
  return (
    <span className="quiet change">
      <Fractions text={words} />
    </span>
  );
}
