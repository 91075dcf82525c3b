/** Drawings as SVG text: the section of a well, and charts. */
package steening.drawing;
