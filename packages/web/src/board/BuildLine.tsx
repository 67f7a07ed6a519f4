import type { Plan } from "@lapline/engine";
import { tellText } from "@lapline/present";
import { memo, useEffect, useRef, useState } from "react";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { useInTurn } from "../shared/useInTurn";
import { partProgress, progressWords } from "./partProgress";
import { PARTS, type PartId, partState } from "./parts";

interface BuildLineProps {
  readonly plan: Plan;
  /** All parts stand on the page. */
  readonly isWhole: boolean;
}

/** The pencil line through the eight parts of the build: what is done is inked, now is amber, what waits says from when. */
export function LineInTurn({ plan, isWhole }: BuildLineProps) {
  return <BuildLine plan={useInTurn(plan)} isWhole={isWhole} />;
}

const BuildLine = memo(function BuildLine({ plan, isWhole }: BuildLineProps) {
  const t = useTell();
  const { reader } = useSettings();
  const inView = usePartInView(isWhole);
  const progress = partProgress(plan);
  const line = useRef<HTMLElement>(null);
  useEffect(() => {
    const place = line.current?.querySelector(`a[href="#${inView}"]`)?.closest("li");
    if (place) line.current?.scrollTo({ left: place.offsetLeft - line.current.clientWidth / 3 });
  }, [inView]);
  return (
    <nav ref={line} className="build-line" aria-label={t`The build`}>
      <ol>
        {PARTS.map(({ id, name }) => {
          const own = progress.get(id) ?? { kind: "waiting", from: null };
          const found = partState(plan, id, reader);
          const isStopped = found === t`stopped`;
          return (
            <li key={id} className={`line-${own.kind}`}>
              <a href={`#${id}`} aria-current={inView === id ? "location" : undefined}>
                <span className="build-line-name">{tellText(name, reader)}</span>
                <span className="build-line-state">{progressWords(own, reader)}</span>
                {found !== "" && (
                  <span className={`build-line-state ${isStopped ? "stopped" : "found"}`}>{found}</span>
                )}
              </a>
            </li>
          );
        })}
      </ol>
    </nav>
  );
});

/** The part whose heading was passed last, a third of the way down the window. */
function usePartInView(isWhole: boolean): PartId {
  const [inView, setInView] = useState<PartId>("measure");
  // biome-ignore lint/correctness/useExhaustiveDependencies: the sections are looked for again when the last are there
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
  }, [isWhole]);
  return inView;
}
