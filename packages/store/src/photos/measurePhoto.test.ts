import { expect, test } from "vitest";
import { measurePhoto } from "./measurePhoto";
import type { PhotoType } from "./photoTypeOf";

/** Pictures of 37 by 21 pixels, written by libvips (through sharp 0.35.5), which is the check from outside. */
const WRITTEN: ReadonlyArray<readonly [string, PhotoType, string]> = [
  [
    "a JPEG with a camera's notes and a colour profile",
    "image/jpeg",
    "/9j/4QC8RXhpZgAASUkqAAgAAAAGABIBAwABAAAAAQAAABoBBQABAAAAVgAAABsBBQABAAAAXgAAACgBAwABAAAAAgAAABMCAwABAAAAAQAAAGmHBAABAAAAZgAAAAAAAAA4YwAA6AMAADhjAADoAwAABgAAkAcABAAAADAyMTABkQcABAAAAAECAwAAoAcABAAAADAxMDABoAMAAQAAAP//AAACoAQAAQAAACUAAAADoAQAAQAAABUAAAAAAAAA/+IB8ElDQ19QUk9GSUxFAAEBAAAB4GxjbXMEIAAAbW50clJHQiBYWVogB+IAAwAUAAkADgAdYWNzcE1TRlQAAAAAc2F3c2N0cmwAAAAAAAAAAAAAAAAAAPbWAAEAAAAA0y1oYW5keem/Vlo+AbaDI4VVRvdPqgAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAKZGVzYwAAAPwAAAAkY3BydAAAASAAAAAid3RwdAAAAUQAAAAUY2hhZAAAAVgAAAAsclhZWgAAAYQAAAAUZ1hZWgAAAZgAAAAUYlhZWgAAAawAAAAUclRSQwAAAcAAAAAgZ1RSQwAAAcAAAAAgYlRSQwAAAcAAAAAgbWx1YwAAAAAAAAABAAAADGVuVVMAAAAIAAAAHABzAFIARwBCbWx1YwAAAAAAAAABAAAADGVuVVMAAAAGAAAAHABDAEMAMAAAWFlaIAAAAAAAAPbWAAEAAAAA0y1zZjMyAAAAAAABDD8AAAXd///zJgAAB5AAAP2S///7of///aIAAAPcAADAcVhZWiAAAAAAAABvoAAAOPIAAAOPWFlaIAAAAAAAAGKWAAC3iQAAGNpYWVogAAAAAAAAJKAAAA+FAAC2xHBhcmEAAAAAAAMAAAACZmkAAPKnAAANWQAAE9AAAApb/9sAQwAoHB4jHhkoIyEjLSsoMDxkQTw3Nzx7WF1JZJGAmZaPgIyKoLTmw6Cq2q2KjMj/y9ru9f///5vB////+v/m/f/4/9sAQwErLS08NTx2QUF2+KWMpfj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4/8AAEQgAFQAlAwEiAAIRAQMRAf/EABUAAQEAAAAAAAAAAAAAAAAAAAAB/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/EABUBAQEAAAAAAAAAAAAAAAAAAAAE/8QAFBEBAAAAAAAAAAAAAAAAAAAAAP/aAAwDAQACEQMRAD8AoCRSAAAAAAAAAA//2Q==",
  ],
  [
    "a progressive JPEG",
    "image/jpeg",
    "/9j/2wBDACgcHiMeGSgjISMtKygwPGRBPDc3PHtYXUlkkYCZlo+AjIqgtObDoKrarYqMyP/L2u71////m8H////6/+b9//j/2wBDASstLTw1PHZBQXb4pYyl+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj/wgARCAAVACUDASIAAhEBAxEB/8QAFAABAAAAAAAAAAAAAAAAAAAAAP/EABUBAQEAAAAAAAAAAAAAAAAAAAAD/9oADAMBAAIQAxAAAAEI0AAAAA//xAAUEAEAAAAAAAAAAAAAAAAAAAAw/9oACAEBAAEFAn//xAAUEQEAAAAAAAAAAAAAAAAAAAAg/9oACAEDAQE/AV//xAAUEQEAAAAAAAAAAAAAAAAAAAAg/9oACAECAQE/AV//xAAUEAEAAAAAAAAAAAAAAAAAAAAw/9oACAEBAAY/An//xAAUEAEAAAAAAAAAAAAAAAAAAAAw/9oACAEBAAE/IX//2gAMAwEAAgADAAAAEP8A/wD/AP8A/wD/xAAUEQEAAAAAAAAAAAAAAAAAAAAg/9oACAEDAQE/EF//xAAUEQEAAAAAAAAAAAAAAAAAAAAg/9oACAECAQE/EF//xAAUEAEAAAAAAAAAAAAAAAAAAAAw/9oACAEBAAE/EH//2Q==",
  ],
  [
    "a PNG",
    "image/png",
    "iVBORw0KGgoAAAANSUhEUgAAACUAAAAVCAIAAABOhrD5AAAACXBIWXMAAAPoAAAD6AG1e1JrAAAAMElEQVRIiWM4USFHT8Qwal/FaHieGE0vcqP54cRo+SI3Wn5WjNYPcqP1bcUQaU8AACGXJou2WVN/AAAAAElFTkSuQmCC",
  ],
  [
    "a lossy WebP",
    "image/webp",
    "UklGRj4AAABXRUJQVlA4IDIAAADwAgCdASolABUAP3G402I0ryqmJWgCkC4JZwAAKUNt8ADab/r1pbm4T/52rY+uwAAAAA==",
  ],
  ["a lossless WebP", "image/webp", "UklGRh4AAABXRUJQVlA4TBEAAAAvJAAFAAdQvCLXo/+BiOh/AAA="],
  [
    "a WebP with transparency",
    "image/webp",
    "UklGRmIAAABXRUJQVlA4WAoAAAAQAAAAJAAAFAAAQUxQSAoAAAABB1DAiAhERP8DVlA4IDIAAADwAgCdASolABUAP3G402I0ryqmJWgCkC4JZwAAKUNt8ADab/r1pbm4T/52rY+uwAAAAA==",
  ],
];

const bytesOf = (text: string) => Buffer.from(text, "base64");
const measured = (type: PhotoType, parts: Iterable<Uint8Array>) => {
  const measure = measurePhoto(type);
  for (const part of parts) measure.take(part);
  return measure.size();
};

test.each(WRITTEN)("%s, in one piece and byte by byte", (_, type, text) => {
  const bytes = bytesOf(text);
  expect(measured(type, [bytes])).toEqual({ wide: 37, high: 21 });
  expect(
    measured(
      type,
      Array.from(bytes, (byte) => Uint8Array.of(byte)),
    ),
  ).toEqual({ wide: 37, high: 21 });
});

test.each(WRITTEN)("%s, cut off before its size, has none", (_, type, text) => {
  expect(measured(type, [bytesOf(text).subarray(0, 20)])).toBeNull();
});

/** ISO/IEC 10918-1, B.2.2: length, precision, lines, samples a line, components. */
const frame = (marker: number, high: number, wide: number) => {
  const bytes = Buffer.from("ff00000b080000000001011100", "hex");
  bytes[1] = marker;
  bytes.writeUInt16BE(high, 5);
  bytes.writeUInt16BE(wide, 7);
  return bytes;
};
const START = Buffer.from("ffd8", "hex");
/** An application's segment of the largest length, as depth maps and previews come in. */
const large = Buffer.concat([Buffer.from("ffe1ffff", "hex"), Buffer.alloc(65_533, 0xff)]);

test("a JPEG's size is found behind megabytes of other segments, and fill bytes", () => {
  const fill = Buffer.alloc(5, 0xff);
  const parts = [START, ...Array(40).fill(large), fill, frame(0xc2, 9000, 12_000)];
  expect(measured("image/jpeg", parts)).toEqual({ wide: 12_000, high: 9000 });
  expect(measured("image/jpeg", [Buffer.concat(parts)])).toEqual({ wide: 12_000, high: 9000 });
});

test("a Huffman table is no frame, and what stands behind the scan is not looked at", () => {
  const table = Buffer.from("ffc400040000", "hex");
  expect(measured("image/jpeg", [START, table, frame(0xc0, 2, 3)])).toEqual({ wide: 3, high: 2 });
  const scan = Buffer.from("ffda0004000011", "hex");
  expect(measured("image/jpeg", [START, scan, frame(0xc0, 2, 3)])).toBeNull();
  expect(measured("image/jpeg", [START, Buffer.from("0000"), frame(0xc0, 2, 3)])).toBeNull();
});

test("the largest that each form can say", () => {
  expect(measured("image/jpeg", [START, frame(0xc0, 65_535, 65_535)])).toEqual({
    wide: 65_535,
    high: 65_535,
  });
  const png = Buffer.from("89504e470d0a1a0a0000000d494844527fffffff7fffffff0806000000000000", "hex");
  expect(measured("image/png", [png])).toEqual({ wide: 2_147_483_647, high: 2_147_483_647 });
  const webp = Buffer.from("524946460000000057454250565038580a00000010000000ffffffffffff0000", "hex");
  expect(measured("image/webp", [webp])).toEqual({ wide: 16_777_216, high: 16_777_216 });
});
