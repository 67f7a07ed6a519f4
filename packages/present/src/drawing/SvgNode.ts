/** A piece of SVG as data: written out as text by `drawingToSvg`, and made into elements by the web page. */
export interface SvgNode {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: ReadonlyArray<SvgNode | string>;
}
