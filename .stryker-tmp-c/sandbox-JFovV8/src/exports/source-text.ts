// @ts-nocheck
import type { Source } from "../domain/model/source.js";

/** "Title, section": where somebody can look it up, or who says so. */
export const sourceText = ({ title, section }: Source): string => (section === null ? title : `${title}, ${section}`);

/** Several, each once. */
export const sourcesText = (sources: readonly Source[]): string => [...new Set(sources.map(sourceText))].join("; ");
