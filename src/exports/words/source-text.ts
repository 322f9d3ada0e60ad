import type { Source } from "../../domain/model/source.js";
import { degreeText } from "./degree-text.js";

/** "Title, section": where somebody can look it up, or who says so. */
export const sourceText = ({ title, section }: Source): string =>
  degreeText(section === null ? title : `${title}, ${section}`);

/** Several, each once. */
export const sourcesText = (sources: readonly Source[]): string => [...new Set(sources.map(sourceText))].join("; ");
