import { verdictWords } from "@lapline/present";
import { fieldName } from "../board/fieldName";
import { ENGLISH } from "../settings/english";
import type { Finset, FinsForm } from "./FinsForm";

interface GateVerdictProps {
  readonly form: Pick<FinsForm, "file" | "problems">;
  readonly verify: Finset["verify"];
}

/** Go, or what comes next; it stays in sight while the list is gone through, and is never go while a field is not understood. */
export function GateVerdict({ form: { file, problems }, verify }: GateVerdictProps) {
  const [unread] = problems;
  if (unread !== undefined) {
    return (
      <div className="verdict verdict-correct">
        <p role="status">
          <b>{verify.glassedOn.length > 0 ? "No glass" : "No cut"}.</b> A field is not understood:{" "}
          {fieldName(file, unread.path)}.
        </p>
        <button type="button" className="plain" onClick={goToUnread}>
          to the field
        </button>
      </div>
    );
  }
  const { short, follows } = verdictWords(verify, ENGLISH);
  return (
    <div className={`verdict verdict-${verify.verdict}`}>
      <p role="status">
        <b>{short}.</b> {follows}
      </p>
      {verify.next !== null && <a href={`#gate-${verify.next}`}>to the next</a>}
    </div>
  );
}

/** To the first field that is not understood, unfolded where it is folded away. */
function goToUnread(): void {
  const field = document.querySelector<HTMLElement>('[aria-invalid="true"], .field-problem');
  field?.closest("details")?.setAttribute("open", "");
  field?.scrollIntoView({ block: "center" });
  field?.focus();
}
