import type { Phrase } from "@lapline/engine";
import { tellPhrase } from "@lapline/present";
import { useId } from "react";
import { leavesPad } from "../pad/leavesPad";
import { usePad } from "../pad/PadContext";
import type { PadBeside } from "../pad/PadTarget";
import { ReadingPad } from "../pad/ReadingPad";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";
import { offerUnits } from "./offerUnits";

interface QuantityFieldProps {
  /** Read aloud, and shown where there is room. */
  readonly label: string;
  readonly value: string | undefined;
  /** What is wrong with what is typed. */
  readonly problem?: Phrase | undefined;
  /** What the other readings would have here. */
  readonly suspect?: string | undefined;
  readonly labelUnseen?: boolean;
  /** What it measures, so that a bare number can be given its unit with one touch. */
  readonly dimension?: "length" | "angle" | "mass" | "film";
  /** Its path in the board file, where it is gone to from elsewhere on the page. */
  readonly at?: string;
  /** What the pad of big keys offers beside the keys. */
  readonly beside?: PadBeside | undefined;
  onType(text: string): void;
}

/** A field for a quantity as a builder writes it; what is wrong stands beneath it. */
export function QuantityField({
  label,
  value = "",
  problem,
  suspect,
  labelUnseen,
  dimension = "length",
  at,
  beside,
  onType,
}: QuantityFieldProps) {
  const id = useId();
  const pad = usePad();
  const { reader } = useSettings();
  const note = problem === undefined ? suspect : tellPhrase(problem, reader);
  return (
    <div className="field">
      <label htmlFor={id} className={labelUnseen ? "unseen" : undefined}>
        {label}
      </label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={false}
        value={value}
        aria-invalid={problem !== undefined}
        aria-describedby={note === undefined ? undefined : `${id}-note`}
        data-at={at}
        {...(pad?.isOn === true && {
          "data-pad": true,
          inputMode: "none" as const,
          onFocus: () => pad.open(id),
          onBlur: (event) => leavesPad(event) && pad.close(),
        })}
        onChange={(event) => onType(event.target.value)}
      />
      {pad?.isOn === true && pad.openId === id && (
        <ReadingPad target={{ id, label, value, dimension, problem, beside, onType }} />
      )}
      {problem !== undefined && (
        <UnitOffers label={label} offers={offerUnits(value, dimension)} take={onType} />
      )}
      {note !== undefined && (
        <p
          id={`${id}-note`}
          className={problem === undefined ? "tape tape-warning" : "field-problem"}
          role="status"
        >
          <Fractions text={note} />
        </p>
      )}
    </div>
  );
}

interface UnitOffersProps {
  readonly label: string;
  readonly offers: readonly string[];
  take(text: string): void;
}

/** A bare number with each unit it could have: one touch with a thumb instead of two letters on a screen's keys. */
function UnitOffers({ label, offers, take }: UnitOffersProps) {
  const t = useTell();
  if (offers.length === 0) return null;
  return (
    <div className="unit-offers">
      {offers.map((offer) => (
        <button key={offer} type="button" aria-label={t`${label}: ${offer}`} onClick={() => take(offer)}>
          <Fractions text={offer} />
        </button>
      ))}
    </div>
  );
}
