import type { BatchRule, Component, Route } from "../../domain/model/component.js";
import type { OwnMeasure } from "../../domain/model/food.js";
import { ok } from "../../domain/problem.js";
import type { Path, Result } from "../../domain/problem.js";
import { combine, every, mapResult } from "./combine-results.js";
import type { BatchesWritten, ComponentDocument, RouteDocument } from "./schemas/component-schema.js";
import { readDensities, readKeeping, readOwnMeasures } from "./read-facts.js";
import { readLines, stepLineIds } from "./lines/read-lines.js";
import type { KnownItems } from "./lines/read-lines.js";
import { readRatio } from "./read-ratio.js";
import { readSteps } from "./read-steps.js";
import { readWords } from "./read-words.js";
import { readingContextOf } from "./reading-context.js";
import type { ReadingContext } from "./reading-context.js";

/** The own measures alone: lines elsewhere need them before the component itself can be read. */
export const componentMeasures = (document: ComponentDocument): Result<readonly OwnMeasure[]> =>
  readOwnMeasures(document.measures, readingContextOf(document), ["measures"]);

/** A component as the model has it. Paths of problems lead into the document. */
export function readComponent(document: ComponentDocument, known: KnownItems): Result<Component> {
  const reading = readingContextOf(document);
  const measures = componentMeasures(document);
  if (!measures.ok) return measures;
  const read = combine({
    lines: readLines(document.lines, known, reading, ["lines"]),
    steps: readSteps(document.steps, stepLineIds(document.lines), ["steps"]),
    yield: combine({
      amount: reading.amount(document.yield.amount, measures.value, ["yield", "amount"]),
      source: reading.source(document.yield.source, ["yield", "source"]),
    }),
    batch: readBatches(document.batches, ["batches"]),
    densities: readDensities(document.densities, reading, ["densities"]),
    keeping: readKeeping(document.keeping, reading, ["keeping"]),
    routes: every(document.routes.map((route, index) => readRoute(route, known, reading, ["routes", index]))),
  });
  return mapResult(read, (values) => ({
    slug: document.slug,
    title: document.title,
    ...values,
    measures: measures.value,
    keepsAs: document["keeps-as"],
    cautions: document.cautions,
    ...(document.image !== undefined && { image: document.image }),
    ...readWords(document),
  }));
}

function readBatches(written: BatchesWritten, path: Path): Result<BatchRule> {
  if (written === "ANY") return ok({ min: "0", max: null, increment: null });
  if (written === "WHOLE") return ok({ min: "1", max: null, increment: "1" });
  const [most, steps] = [written["at-most"], written["in-steps-of"]];
  return combine({
    min: readRatio(written["at-least"], [...path, "at-least"]),
    max: most === null ? ok(null) : readRatio(most, [...path, "at-most"]),
    increment: steps === null ? ok(null) : readRatio(steps, [...path, "in-steps-of"]),
  });
}

function readRoute(route: RouteDocument, known: KnownItems, reading: ReadingContext, path: Path): Result<Route> {
  const read = combine({
    lines: readLines(route.lines, known, reading, [...path, "lines"]),
    steps: readSteps(route.steps, stepLineIds(route.lines), [...path, "steps"]),
    keeping: readKeeping(route.keeping, reading, [...path, "keeping"]),
  });
  return mapResult(read, (values) => ({
    name: route.name,
    kind: route.kind,
    keepsAs: route["keeps-as"],
    ...values,
  }));
}
