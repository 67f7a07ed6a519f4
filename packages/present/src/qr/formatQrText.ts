import { renderUnicodeCompact } from "uqr";
import { QR_QUIET } from "./qrRuns";

/** A text as a QR code for a terminal: half blocks, two rows of modules a line, the light ones drawn. */
export function formatQrText(text: string): string {
  return renderUnicodeCompact(text, { ecc: "M", border: QR_QUIET });
}
