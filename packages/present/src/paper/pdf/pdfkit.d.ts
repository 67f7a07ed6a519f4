/** What pdfkit 0.20 has and its types leave out. */
declare namespace PDFKit {
  namespace Mixins {
    interface PDFVector {
      /** Lengths of dash and gap by turns. */
      dash(lengths: readonly number[]): this;
      /** Angles in radians from the x axis towards the y axis. */
      arc(x: number, y: number, radius: number, from: number, to: number, anticlockwise: boolean): this;
    }
  }

  interface PDFDocument {
    /** Fonts in use; an embedded one lists the code points of each glyph of its subset, and keeps the words it has set. */
    readonly _fontFamilies: Readonly<
      Record<string, { readonly unicode?: number[][]; layoutCache: Record<string, object> }>
    >;
    /** The catalogue; it has viewer preferences where the document was made with `displayTitle`. */
    readonly _root: {
      readonly data: { readonly ViewerPreferences?: { readonly data: Record<string, unknown> } };
    };
  }
}
