import type { Inline, Line, Lines } from "./document.js";

/** Lines as text or markup, one after another. What says nothing leaves neither a gap nor an empty line. */
export const drawLines = (lines: Lines, draw: (inline: Inline) => string, between: string): string =>
  said(
    lines.map((line: Line) => said(line.map(draw), " ")),
    between,
  );

const said = (drawn: readonly string[], between: string): string => drawn.filter((each) => each !== "").join(between);
