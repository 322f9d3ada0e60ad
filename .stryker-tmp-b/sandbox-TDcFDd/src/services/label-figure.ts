/** A figure as a label may print it, for the layers that may not see `domain`. */
// @ts-nocheck

export { labelFigure } from "../domain/nutrition/label-figure.js";
