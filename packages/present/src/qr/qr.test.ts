import decodeQR from "qr/decode.js";
import { expect, test } from "vitest";
import { formatQrText, QR_QUIET } from "./index";

// The other side: the `qr` package reads what this one's library wrote.
test("a code on the terminal is read back, light on dark", () => {
  const text = "http://192.168.7.20:5190/pair#01234567";
  const lines = formatQrText(text).split("\n");
  // Each character stands for two modules: full block both light, upper or lower half one of them.
  const rows = lines.flatMap((line) => [
    [...line].map((char) => char !== "█" && char !== "▀"),
    [...line].map((char) => char !== "█" && char !== "▄"),
  ]);
  const size = rows[0]?.length ?? 0;
  expect(rows[0]?.slice(0, QR_QUIET).every((isDark) => !isDark)).toBe(true);
  const scale = 4;
  const side = size * scale;
  const data = new Uint8Array(side * side * 3).map((_, i) => {
    const [x, y] = [Math.floor(i / 3) % side, Math.floor(i / 3 / side)];
    return rows[Math.floor(y / scale)]?.[Math.floor(x / scale)] === true ? 0 : 255;
  });
  expect(decodeQR({ width: side, height: side, data })).toBe(text);
});
