import { tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { PageTop } from "../shared/PageTop";
import { usePageTitle } from "../shared/usePageTitle";
import { GLOSSARY } from "./glossary";
import { useWorkings } from "./useWorkings";
import { WordList } from "./WordList";
import "./words.css";

/** Every word of the trade and of the program in a line, on one page. */
export default function WordsPage() {
  const { reader } = useSettings();
  const t = useTell();
  const isHere = useWorkings();
  usePageTitle(t`Words`);
  return (
    <>
      <PageTop />
      <main className="page words-page" aria-busy={!isHere}>
        <h1>{t`Words`}</h1>
        <p>{t`Left and right are always the surfer's: standing at the tail, facing the nose, deck up.`}</p>
        {isHere &&
          GLOSSARY.map((part) => (
            <section key={part.title}>
              <h2>{tellText(part.title, reader)}</h2>
              <WordList part={part} />
            </section>
          ))}
      </main>
    </>
  );
}
