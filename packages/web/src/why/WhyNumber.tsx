import { type ReactNode, useContext } from "react";
import { useTell } from "../settings/useTell";
import { WhyContext } from "./WhyContext";
import "./why-number.css";

interface WhyNumberProps {
  /** The number's place in the plan; without it the number only stands there. */
  readonly path: string | undefined;
  readonly children: ReactNode;
}

/** A number that can be turned over, to see how it came about. */
export function WhyNumber({ path, children }: WhyNumberProps) {
  const open = useContext(WhyContext);
  const t = useTell();
  if (path === undefined || open === null) return children;
  return (
    <button
      type="button"
      className="why-number"
      data-why={path}
      aria-haspopup="dialog"
      title={t`How this number came about`}
      onClick={() => open(path)}
    >
      {children}
    </button>
  );
}
