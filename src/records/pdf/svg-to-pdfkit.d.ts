declare module 'svg-to-pdfkit' {
  interface Options {
    readonly width: number;
    readonly height: number;
    readonly fontCallback: () => string;
    readonly warningCallback: (warning: string) => void;
  }
  /** Draws an SVG on the page at a place, in points. */
  export default function draw(
    document: PDFKit.PDFDocument,
    svg: string,
    x: number,
    y: number,
    options: Options,
  ): void;
}
