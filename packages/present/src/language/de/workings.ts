import { GLOSSARY } from "./glossary";
import { GLOSSARY_PROGRAM } from "./glossaryProgram";
import { WHY_FINISH } from "./whyFinish";
import { WHY_FINS } from "./whyFins";
import { WHY_FORMULAS } from "./whyFormulas";
import { WHY_GLASS } from "./whyGlass";
import { WHY_INPUTS } from "./whyInputs";
import { WHY_MARKS } from "./whyMarks";
import { WHY_MIX } from "./whyMix";
import { WHY_MORE_FORMULAS } from "./whyMoreFormulas";
import { WHY_MORE_INPUTS } from "./whyMoreInputs";
import { WHY_SOURCES } from "./whySources";

/** Was die Herleitungen der Zahlen sagen: und was die Wörter meinen; nur wer danach fragt, braucht es. */
export const DE_WORKINGS: Readonly<Record<string, string>> = {
  ...GLOSSARY,
  ...GLOSSARY_PROGRAM,
  ...WHY_FINISH,
  ...WHY_FINS,
  ...WHY_FORMULAS,
  ...WHY_GLASS,
  ...WHY_INPUTS,
  ...WHY_MARKS,
  ...WHY_MIX,
  ...WHY_SOURCES,
  ...WHY_MORE_FORMULAS,
  ...WHY_MORE_INPUTS,
};
