import type { Board, Explanation } from "@lapline/engine";
import { influenceSentences, tell, type WhyWords } from "@lapline/present";
import type { ReactNode } from "react";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { Fractions } from "../shared/Fractions";
import { useSensitivity } from "./useSensitivity";

interface WhySheetProps {
  readonly board: Board;
  readonly explanation: Explanation;
  readonly words: WhyWords;
}

/** What stands on the back: the working in words, the formula, what went in, where it is from, what was taken, what moves it. */
export function WhySheet({
  board,
  explanation,
  words: { words, formula, inputs, sources, assumed },
}: WhySheetProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <>
      <p className="why-words">
        <Fractions text={words} />
      </p>
      <p className="why-formula">{formula}</p>
      {inputs.length > 0 && (
        <Part title={t`From`}>
          <dl className="why-inputs">
            {inputs.map((input, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two inputs may have one name, and the list never moves
              <div key={`${input.name} ${i}`}>
                <dt>{input.name}</dt>
                <dd>
                  <Fractions text={input.value} />
                </dd>
              </div>
            ))}
          </dl>
        </Part>
      )}
      <Influences board={board} path={explanation.path} />
      <Part title={t`Source`}>
        <Lines of={sources} />
      </Part>
      {assumed.length > 0 && (
        <Part title={t`Assumed`}>
          <Lines of={assumed.map((each) => each.words)} />
        </Part>
      )}
      {explanation.findings.map((finding, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two findings may share a code
        <FindingTape key={`${finding.code} ${i}`} finding={finding} />
      ))}
      <p className="why-path">{explanation.path}</p>
    </>
  );
}

function Influences({ board, path }: { board: Board; path: string }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const found = useSensitivity(board, path);
  return (
    <Part title={t`What would change it most`}>
      <div aria-live="polite" aria-busy={found === null}>
        {found === null ? (
          <p className="quiet">{t`Planning it anew with each reading a little larger.`}</p>
        ) : (
          <Lines of={influenceSentences(found, reader)} />
        )}
      </div>
    </Part>
  );
}

function Part({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section>
      <h3>{title}</h3>
      {children}
    </section>
  );
}

function Lines({ of }: { of: readonly string[] }) {
  return (
    <ul className="why-list">
      {of.map((line, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two lines may read alike, and the list never moves
        <li key={`${line} ${i}`}>
          <Fractions text={line} />
        </li>
      ))}
    </ul>
  );
}
