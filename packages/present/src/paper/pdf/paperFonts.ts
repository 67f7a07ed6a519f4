import regular from "@expo-google-fonts/archivo/400Regular/Archivo_400Regular.ttf?inline";
import semiBold from "@expo-google-fonts/archivo/600SemiBold/Archivo_600SemiBold.ttf?inline";

/** One weight to read, one for what is cut or marked by. */
export type Weight = 400 | 600;

/** The open font that the web page has too (Archivo, OFL 1.1), with all its letters, each weight as a data URL. */
const FILES: Readonly<Record<Weight, string>> = { 400: regular, 600: semiBold };

const read = new Map<Weight, Uint8Array>();

/** The bytes of one weight of the font, unpacked once. */
export function readPaperFont(weight: Weight): Uint8Array {
  const known = read.get(weight);
  if (known !== undefined) return known;
  const [, base64 = ""] = FILES[weight].split(",");
  const binary = atob(base64);
  const bytes = new Uint8Array(binary.length);
  for (let i = 0; i < binary.length; i += 1) bytes[i] = binary.charCodeAt(i);
  read.set(weight, bytes);
  return bytes;
}
