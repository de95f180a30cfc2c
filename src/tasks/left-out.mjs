/**
 * Stands where jsPDF would load packages for turning HTML and SVG into pictures. Pigtail draws every line
 * itself, so they stay out of the bundle.
 */
export default function leftOut() {
  throw new Error("Pigtail does not turn HTML or SVG into PDF; drawings are written primitive by primitive.");
}
