import { countSteps } from "../kit/count-steps.js";
import { describe, expect, it } from "vitest";
import { readDocuments } from "../../src/imports/documents/read-documents.js";
import { documentShapes } from "../kit/document-shapes.js";

/** Law 8 for documents: whatever is written in them, twice the bytes are no more than about twice the work. */
describe("the work of reading documents", () => {
  it.each(Object.entries(documentShapes))("grows as the bytes do with %s", (_, text) => {
    const work = (bytes: number): number => countSteps(() => readDocuments(text(bytes), "text"));
    // What happens once (schemas are built, words folded) has happened.
    work(1_000);
    expect(work(12_000)).toBeLessThan(2.3 * work(6_000));
  });
});
