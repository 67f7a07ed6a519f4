import { verdictWords } from "@lapline/present";
import { fieldName } from "../board/fieldName";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import type { Finset, FinsForm } from "./FinsForm";

interface GateVerdictProps {
  readonly form: Pick<FinsForm, "file" | "problems">;
  readonly verify: Finset["verify"];
}

/** Go, or what comes next; it stays in sight while the list is gone through, and is never go while a field is not understood. */
export function GateVerdict({ form: { file, problems }, verify }: GateVerdictProps) {
  const { reader } = useSettings();
  const t = useTell();
  const [unread] = problems;
  if (unread !== undefined) {
    return (
      <div className="verdict verdict-correct">
        <p role="status">
          <b>{verify.glassedOn.length > 0 ? t`No glass` : t`No cut`}.</b> {t`A field is not understood:`}{" "}
          {fieldName(file, unread.path, reader)}.
        </p>
        <button type="button" className="plain" onClick={goToUnread}>{t`to the field`}</button>
      </div>
    );
  }
  const { short, follows } = verdictWords(verify, reader);
  return (
    <div className={`verdict verdict-${verify.verdict}`}>
      <p role="status">
        <b>{short}.</b> {follows}
      </p>
      {verify.next !== null && <a href={`#gate-${verify.next}`}>{t`to the next`}</a>}
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
