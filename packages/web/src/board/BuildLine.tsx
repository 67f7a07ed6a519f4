import type { Plan } from "@lapline/engine";
import { tellText } from "@lapline/present";
import { useEffect, useRef, useState } from "react";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { PARTS, type PartId, partState } from "./parts";

/** The pencil line through the eight parts of the build; the part in view is the amber one. */
export function BuildLine({ plan }: { plan: Plan }) {
  const t = useTell();
  const { reader } = useSettings();
  const inView = usePartInView();
  const line = useRef<HTMLElement>(null);
  useEffect(() => {
    const link = line.current?.querySelector<HTMLElement>(`a[href="#${inView}"]`);
    if (link) line.current?.scrollTo({ left: link.offsetLeft - line.current.clientWidth / 3 });
  }, [inView]);
  return (
    <nav ref={line} className="build-line" aria-label={t`The build`}>
      <ol>
        {PARTS.map(({ id, name }) => {
          const state = partState(plan, id, reader);
          return (
            <li key={id}>
              <a href={`#${id}`} aria-current={inView === id ? "location" : undefined}>
                <span className="build-line-name">{tellText(name, reader)}</span>
                {state !== "" && (
                  <span className={`build-line-state ${state === t`stopped` ? "stopped" : ""}`}>{state}</span>
                )}
              </a>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}

/** The part whose heading was passed last, a third of the way down the window. */
function usePartInView(): PartId {
  const [inView, setInView] = useState<PartId>("measure");
  useEffect(() => {
    const observer = new IntersectionObserver(
      (entries) => {
        const entered = entries.find((entry) => entry.isIntersecting);
        const part = PARTS.find(({ id }) => id === entered?.target.id);
        if (part !== undefined) setInView(part.id);
      },
      { rootMargin: "-33% 0px -66% 0px" },
    );
    for (const { id } of PARTS) {
      const section = document.getElementById(id);
      if (section !== null) observer.observe(section);
    }
    return () => observer.disconnect();
  }, []);
  return inView;
}
