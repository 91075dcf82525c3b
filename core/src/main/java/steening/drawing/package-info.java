/**
 * Drawings as SVG text: the section of a well ({@link steening.drawing.Section}) and charts ({@link
 * steening.drawing.ChartDrawing}). A drawing needs no style sheet, script or font of its own, and is the same text
 * wherever it is made. What a well is, it is told; the one thing it reckons is how high a fill should stand that was
 * poured and not sounded.
 */
package steening.drawing;
