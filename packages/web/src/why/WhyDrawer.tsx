import { type Board, explain, type Plan, planBuild } from "@lapline/engine";
import { tell, whyWords } from "@lapline/present";
import { useMemo } from "react";
import { useSettings } from "../settings/Settings";
import { AmountText } from "../shared/AmountText";
import { Drawer } from "../shared/Drawer";
import { WhySheet } from "./WhySheet";
import "./why.css";

interface WhyDrawerProps {
  readonly board: Board;
  /** Null where it was not made yet. */
  readonly plan: Plan | null;
  readonly path: string;
  close(): void;
}

/** The back of the sheet for one number. */
export default function WhyDrawer({ board, plan, path, close }: WhyDrawerProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const explanation = useMemo(() => explain(board, plan ?? planBuild(board), path), [board, plan, path]);
  if ("message" in explanation) {
    return (
      <Drawer title={t`Why`} close={close}>
        <p>{t`This number is no longer in the plan.`}</p>
      </Drawer>
    );
  }
  const words = whyWords(explanation, reader);
  const title = (
    <>
      <span className="unseen">{t`Why`} </span>
      <span className="why-value">
        <AmountText text={words.value} />
      </span>
    </>
  );
  return (
    <Drawer title={title} close={close}>
      <WhySheet board={board} explanation={explanation} words={words} />
    </Drawer>
  );
}
