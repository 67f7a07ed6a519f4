import type { Units } from "@lapline/engine";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";
import { FRACTION_KEYS, type PadDimension, type PadKey, padUnits } from "./PadValue";

interface KeypadProps {
  readonly dimension: PadDimension;
  readonly units: Units;
  /** The unit that stands now. */
  readonly unit: string;
  press(key: PadKey): void;
}

const ROWS = [
  ["1", "2", "3"],
  ["4", "5", "6"],
  ["7", "8", "9"],
] as const;

/** Digits, point, back, units, and for a tape in inches its fractions: every key for a thumb in a wet glove. */
export function Keypad({ dimension, units, unit, press }: KeypadProps) {
  const t = useTell();
  const [first, second, third] = padUnits(dimension, units);
  const unitKey = (name: string | undefined) =>
    name === undefined ? (
      <span />
    ) : (
      <button type="button" aria-pressed={unit === name} onClick={() => press({ kind: "unit", unit: name })}>
        {name === "deg" ? "°" : name}
      </button>
    );
  const beside = [
    <button
      key="back"
      type="button"
      aria-label={t`take back one key`}
      onClick={() => press({ kind: "back" })}
    >
      <svg className="back-arrow" viewBox="0 0 28 24" aria-hidden="true">
        <path d="M26 12H3m8-8l-8 8 8 8" />
      </svg>
    </button>,
    unitKey(first),
    unitKey(second),
  ];
  return (
    <div className="keypad">
      {ROWS.map((digits, i) => (
        <div key={digits[0]} className="keypad-row">
          {digits.map((digit) => (
            <Digit key={digit} digit={digit} press={press} />
          ))}
          {beside[i]}
        </div>
      ))}
      <div className="keypad-row">
        <button type="button" aria-label={t`decimal point`} onClick={() => press({ kind: "point" })}>
          .
        </button>
        <Digit digit="0" press={press} />
        <span />
        {unitKey(third)}
      </div>
      {dimension === "length" && units === "inch" && (
        <div className="keypad-row">
          {FRACTION_KEYS.map(({ name, ticks }) => (
            <button key={name} type="button" onClick={() => press({ kind: "fraction", ticks })}>
              <Fractions text={name} />
            </button>
          ))}
        </div>
      )}
    </div>
  );
}

function Digit({ digit, press }: { digit: string; press(key: PadKey): void }) {
  return (
    <button type="button" onClick={() => press({ kind: "digit", digit })}>
      {digit}
    </button>
  );
}
