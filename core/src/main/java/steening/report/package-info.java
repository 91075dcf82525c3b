/**
 * Papers: the completion report as one printable document. A paper computes nothing; it prints what the stages
 * show.
 */
package steening.report;
