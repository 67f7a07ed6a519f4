import { tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Drawer } from "../shared/Drawer";
import { PageLink } from "../shared/PageLink";
import { GLOSSARY } from "./glossary";
import { useWorkings } from "./useWorkings";
import { WordList } from "./WordList";
import "./words.css";

interface WordsDrawerProps {
  /** A part of the glossary, as it is called there. */
  readonly title: string;
  close(): void;
}

/** The words of one part of the build, over the page until they are closed. */
export default function WordsDrawer({ title, close }: WordsDrawerProps) {
  const { reader } = useSettings();
  const t = useTell();
  const isHere = useWorkings();
  const part = GLOSSARY.find((each) => each.title === title);
  return (
    <Drawer title={t`Words: ${tellText(title, reader)}`} close={close}>
      {isHere && part !== undefined && <WordList part={part} />}
      <p>
        <PageLink to="/words" className="way">{t`All words on one page`}</PageLink>
      </p>
    </Drawer>
  );
}
