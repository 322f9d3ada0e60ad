import type { RunningImport } from "./running-import.js";

/** What the file is called that holds a row as a person gave it. */
export const mendedName = (line: number): string => `line ${String(line)}, mended`;

/** Whether a person answers for what this import says: it is a row that was put aside and settled, and nothing else. */
export const isMended = ({ fileName, run }: Pick<RunningImport, "fileName" | "run">): boolean =>
  run.force && /^line \d+, mended$/.test(fileName);
