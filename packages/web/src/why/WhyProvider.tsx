import type { Board, Plan } from "@lapline/engine";
import { loadWorkings } from "@lapline/present";
import { lazy, type ReactNode, Suspense, useCallback, useState } from "react";
import { useSettings } from "../settings/Settings";
import { WhyContext } from "./WhyContext";

const WhyDrawer = lazy(() => import("./WhyDrawer"));

interface WhyProviderProps {
  readonly board: Board;
  /** Null where nobody may ask: it is made when somebody does. */
  readonly plan: Plan | null;
  readonly children: ReactNode;
}

/** Lets every number within be turned over; the drawer and its workings are fetched at the first. */
export function WhyProvider({ board, plan, children }: WhyProviderProps) {
  const [path, setPath] = useState<string | null>(null);
  const { language } = useSettings().reader;
  const open = useCallback(
    // Where its texts cannot be fetched they are read in English.
    (next: string) =>
      void loadWorkings(language).then(
        () => setPath(next),
        () => setPath(next),
      ),
    [language],
  );
  const close = useCallback(() => setPath(null), []);
  return (
    <WhyContext value={open}>
      {children}
      {path !== null && (
        <Suspense>
          <WhyDrawer board={board} plan={plan} path={path} close={close} />
        </Suspense>
      )}
    </WhyContext>
  );
}
