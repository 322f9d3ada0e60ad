import { readDocuments } from "../src/imports/documents/read-documents.js";
import { documentShapes } from "../tests/kit/document-shapes.js";
import { compared, result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

/** What one request may bring. */
const largest = 1024 * 1024;

/** Twice the bytes against the bytes, in every shape that texts are sent in, up to what one request may bring. */
function twiceTheBytes(): Promise<readonly BenchmarkResult[]> {
  return Promise.resolve(
    Object.entries(documentShapes).map(([shape, text]) => {
      const texts = [text(largest / 2), text(largest)];
      const [half = 1, whole = 1] = compared(
        texts.map((each) => () => readDocuments(each, "text")),
        3,
      );
      const detail = `${half.toFixed(0)} ms for half a megabyte, ${whole.toFixed(0)} ms for one`;
      return result(`documents of ${shape}: twice the bytes`, whole / half, { atMost: 2.3 }, detail);
    }),
  );
}

export const documentBenchmarks: readonly Benchmark[] = [{ name: "documents", run: twiceTheBytes }];
