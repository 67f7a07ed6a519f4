import PDFDocument from "pdfkit";
import { drawItems, type PdfInk } from "./drawItems";
import type { PaperBlock, PaperDocument, PaperPage } from "./PaperDocument";
import { Typesetter } from "./Typesetter";

const POINTS_PER_MM = 72 / 25.4;

/**
 * The pages as a PDF: vectors in true millimetres, the open font embedded, title, language and structure set, so that it can
 * be read aloud, searched and printed to size. The same document gives the same bytes.
 *
 * A viewer is asked not to scale when it prints; not every one listens, so each page needs its own rulers.
 * @param compose makes the pages; the typesetter measures text as it will be set
 */
export function renderPdf(
  paper: PaperDocument,
  compose: (type: Typesetter) => readonly PaperPage[],
): Promise<Uint8Array> {
  const document = createDocument(paper);
  const ink: PdfInk = { document, type: new Typesetter(document) };
  const root = document.struct("Document", { title: paper.title });
  document.addStructure(root);
  for (const page of compose(ink.type)) {
    startPage(document, page);
    addBlocks(ink, root, page.blocks);
  }
  root.end();
  ink.type.nameFractionBars();
  const bytes = collectBytes(document);
  document.end();
  return bytes;
}

/** For measuring text where no PDF is made of it. */
export function createTypesetter(): Typesetter {
  return new Typesetter(new PDFDocument({ autoFirstPage: false, font: "" }));
}

function createDocument({ title, subject, language, createdAt }: PaperDocument): PDFKit.PDFDocument {
  const document = new PDFDocument({
    autoFirstPage: false,
    // No font of the viewer's own: only what is embedded is used.
    font: "",
    margin: 0,
    pdfVersion: "1.7",
    tagged: true,
    lang: language,
    displayTitle: true,
    info: {
      Title: title,
      Subject: subject,
      Creator: "Lapline",
      Producer: "Lapline with pdfkit",
      CreationDate: createdAt,
    },
  });
  const preferences = document._root.data.ViewerPreferences;
  if (preferences !== undefined) preferences.data.PrintScaling = "None";
  return document;
}

function startPage(document: PDFKit.PDFDocument, { widthMm, heightMm, stretch }: PaperPage): void {
  document.addPage({ size: [widthMm * POINTS_PER_MM, heightMm * POINTS_PER_MM], margin: 0 });
  document.scale(POINTS_PER_MM * (stretch?.x ?? 1), POINTS_PER_MM * (stretch?.y ?? 1));
}

function addBlocks(ink: PdfInk, parent: PDFKit.PDFStructureElement, blocks: readonly PaperBlock[]): void {
  for (const block of blocks) addBlock(ink, parent, block);
}

function addBlock(ink: PdfInk, parent: PDFKit.PDFStructureElement, block: PaperBlock): void {
  const { document } = ink;
  if (block.tag === "Artifact") {
    document.markContent("Artifact", { type: "Layout" });
    drawBlock(ink, block);
    document.endMarkedContent();
    return;
  }
  const element = document.struct(block.tag, {
    ...(block.alt === undefined ? {} : { alt: block.alt }),
    ...(block.tag === "TH" ? { scope: "Column" } : {}),
  });
  parent.add(element);
  if (block.items !== undefined) element.add(() => drawBlock(ink, block));
  addBlocks(ink, element, block.blocks ?? []);
  element.end();
}

function drawBlock(ink: PdfInk, { items = [], at = { x: 0, y: 0 }, clip }: PaperBlock): void {
  const { document } = ink;
  document.save();
  if (clip !== undefined) document.rect(clip.x, clip.y, clip.widthMm, clip.heightMm).clip();
  document.translate(at.x, at.y);
  drawItems(ink, items);
  document.restore();
}

function collectBytes(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    document.on("error", reject);
    document.on("end", () => resolve(joinBytes(chunks)));
  });
}

function joinBytes(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.byteLength, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.byteLength;
  }
  return whole;
}
