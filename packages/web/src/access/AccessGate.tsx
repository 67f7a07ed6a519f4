import { lazy, type ReactNode, Suspense, useCallback, useEffect, useMemo, useState } from "react";
import { keep, recall } from "../settings/kept";
import { type Access, AccessContext } from "./Access";
import { readAccess } from "./accessClient";
import { UNPAIRED } from "./tellUnpaired";

const PairPage = lazy(() => import("./PairPage"));

/** Whether this device was let in when it last asked: then the page opens also while the shop's computer is away. */
const LET_IN_KEY = "lapline.letIn";
const HERE = new Set(["127.0.0.1", "localhost", "[::1]"]);

/** Shows the app to a device that is let in, and where the code is typed in to another. */
export function AccessGate({ children }: { children: ReactNode }) {
  const [access, setAccess] = useState<Access | null>(null);
  // Once open it stays: a page whose device was put out keeps what is on it, and says so itself.
  const [isOpen, setOpen] = useState(false);
  const [isAsked, setAsked] = useState(
    () => HERE.has(window.location.hostname) || recall(LET_IN_KEY) === "yes",
  );
  const ask = useCallback(() => {
    readAccess().then((answer) => {
      setAsked(true);
      if (answer === null) return;
      const isIn = answer.here || answer.device !== null;
      keep(LET_IN_KEY, isIn ? "yes" : "no");
      if (isIn) setOpen(true);
      setAccess(answer);
    });
  }, []);
  useEffect(() => {
    ask();
    const askWhenSeen = () => document.visibilityState === "visible" && ask();
    document.addEventListener("visibilitychange", askWhenSeen);
    window.addEventListener("online", ask);
    window.addEventListener(UNPAIRED, ask);
    return () => {
      document.removeEventListener("visibilitychange", askWhenSeen);
      window.removeEventListener("online", ask);
      window.removeEventListener(UNPAIRED, ask);
    };
  }, [ask]);
  const holder = useMemo(() => ({ access, ask }), [access, ask]);
  const isOut = access !== null && !isOpen;
  return (
    <AccessContext value={holder}>
      {isOut ? (
        <Suspense fallback={<main className="page" aria-busy="true" />}>
          <PairPage />
        </Suspense>
      ) : isAsked ? (
        children
      ) : (
        <main className="page" aria-busy="true" />
      )}
    </AccessContext>
  );
}
