import { useTell } from "../settings/useTell";

const DIGITS = ["1", "2", "3", "4", "5", "6", "7", "8", "9"] as const;

/** Digits for a thumb in a wet glove. */
export function CodeKeys({ press, back }: { press(digit: string): void; back(): void }) {
  const t = useTell();
  return (
    <div className="code-keys">
      {DIGITS.map((digit) => (
        <button key={digit} type="button" onClick={() => press(digit)}>
          {digit}
        </button>
      ))}
      <span />
      <button type="button" onClick={() => press("0")}>
        0
      </button>
      <button type="button" className="code-back" onClick={back}>
        {t`take back`}
      </button>
    </div>
  );
}
