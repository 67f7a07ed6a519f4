import { type Board, explain, type Plan } from "@lapline/engine";
import { tell, whyWords } from "@lapline/present";
import { useEffect, useId, useRef } from "react";
import { useSettings } from "../settings/Settings";
import { AmountText } from "../shared/AmountText";
import { WhySheet } from "./WhySheet";
import "./why.css";

interface WhyDrawerProps {
  readonly board: Board;
  readonly plan: Plan;
  readonly path: string;
  close(): void;
}

/** The back of the sheet for one number, over the page until it is closed; the focus goes back to the number. */
export default function WhyDrawer({ board, plan, path, close }: WhyDrawerProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const titleId = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const opener = document.activeElement;
    if (dialog.current?.open === false) dialog.current.showModal();
    return () => {
      if (opener instanceof HTMLElement) opener.focus();
    };
  }, []);
  const explanation = explain(board, plan, path);
  const isGone = "message" in explanation;
  const words = isGone ? null : whyWords(explanation, reader);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: a touch beside the sheet closes it; by keyboard Escape does
    <dialog
      ref={dialog}
      className="why"
      aria-labelledby={titleId}
      onClose={close}
      onClick={(event) => {
        if (event.target === event.currentTarget) event.currentTarget.close();
      }}
    >
      <div className="why-head">
        <h2 id={titleId}>
          <span className={words === null ? undefined : "unseen"}>{t`Why`} </span>
          {words !== null && <AmountText text={words.value} />}
        </h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {t`Close`}
        </button>
      </div>
      {isGone || words === null ? (
        <p className="why-sheet">{t`This number is no longer in the plan.`}</p>
      ) : (
        <WhySheet board={board} explanation={explanation} words={words} />
      )}
    </dialog>
  );
}
