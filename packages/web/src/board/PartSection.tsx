import type { Finding } from "@lapline/engine";
import { sortFindings, tellText } from "@lapline/present";
import type { ReactNode } from "react";
import { useSettings } from "../settings/Settings";
import { WordsButton } from "../words/WordsButton";
import { FindingTape } from "./FindingTape";
import { PARTS, type PartId, partOf } from "./parts";
import { WORDS_OF } from "./wordsOf";

interface PartSectionProps {
  readonly id: PartId;
  readonly findings: readonly Finding[];
  /** Findings that stand elsewhere in the part, at the field they concern. */
  readonly placed?: (finding: Finding) => boolean;
  readonly children: ReactNode;
}

/** A part of the build with what was found in it, blockers first. */
export function PartSection({ id, findings, placed = () => false, children }: PartSectionProps) {
  const { reader } = useSettings();
  const title = tellText(PARTS.find((part) => part.id === id)?.name ?? "", reader);
  const own = sortFindings(findings.filter((finding) => partOf(finding) === id && !placed(finding)));
  return (
    <section id={id} className="part" aria-labelledby={`${id}-name`}>
      <div className="part-head">
        <h2 id={`${id}-name`}>{title}</h2>
        <WordsButton title={WORDS_OF[id]} of={title} />
      </div>
      {own.length > 0 && (
        <div className="tapes">
          {own.map((finding, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two findings may share code and place
            <FindingTape key={`${finding.code} ${finding.path} ${i}`} finding={finding} />
          ))}
        </div>
      )}
      {children}
    </section>
  );
}
