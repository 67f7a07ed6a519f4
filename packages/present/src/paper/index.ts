export type { PaperName } from "./sheet/PaperSize";
export type { RulerReads } from "./sheet/RulerReads";
export { SheetTooLongError } from "./sheet/SheetTooLongError";
export { buildTemplate } from "./template/buildTemplate";
export { pickPart } from "./template/pickPart";
export type { Template, TemplateKind } from "./template/Template";
export { templateDxf } from "./templateDxf";
export { type MadeOn, templatePdf } from "./templatePdf";
export { templateSvg } from "./templateSvg";
