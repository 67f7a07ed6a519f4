import text from "../../../../GLOSSARY.md?raw";
import { readGlossary } from "./readGlossary";

/** The words of the trade and of the program, as GLOSSARY.md has them. */
export const GLOSSARY = readGlossary(text);
