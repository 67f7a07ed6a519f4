import { QR_QUIET, qrRuns } from "@lapline/present/qr";

/** A web address to be scanned: black on white in any light, with the white that a camera needs around it. */
export function QrCode({ text, label }: { text: string; label: string }) {
  const { size, rows } = qrRuns(text);
  const side = size + 2 * QR_QUIET;
  const d = rows
    .flatMap((runs, y) =>
      runs.map(({ from, to }) => `M${from + QR_QUIET} ${y + QR_QUIET}h${to - from}v1h${from - to}z`),
    )
    .join("");
  return (
    <svg className="qr" viewBox={`0 0 ${side} ${side}`} role="img" aria-label={label}>
      <rect width={side} height={side} className="qr-light" />
      <path d={d} className="qr-dark" shapeRendering="crispEdges" />
    </svg>
  );
}
