import { verdictWords } from "@lapline/present";
import type { Finset } from "./FinsForm";

/** Go, or what comes next; it stays in sight while the list is gone through. */
export function GateVerdict({ verify }: { verify: Finset["verify"] }) {
  const { short, follows } = verdictWords(verify);
  return (
    <div className={`verdict verdict-${verify.verdict}`}>
      <p role="status">
        <b>{short}.</b> {follows}
      </p>
      {verify.next !== null && <a href={`#gate-${verify.next}`}>to the next</a>}
    </div>
  );
}
