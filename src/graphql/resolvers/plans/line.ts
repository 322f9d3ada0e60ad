import { temperatureIn } from "../../../exports/words/degree-text.js";
import { partIn } from "../../../exports/words/part-words.js";
import { showWritten } from "../../../exports/words/shown-amount.js";
import { growthOf, writtenMinutes } from "../../../domain/prep-session/solver/step-growth.js";
import type { LineResolvers, StepResolvers, SwapResolvers } from "../../generated/resolver-types.js";
import { showOf } from "../../frozen-plan.js";
import type { LineParent, StepParent, SwapParent } from "../../parent-types.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { componentOf, factsOf, foodOf, foodOfPlan } from "../make-parents.js";

export const lineResolvers: FieldsToResolve<LineResolvers, LineParent> = {
  code: (line) => line.id,
  food: (line) => foodOf(line.frozen, line.item),
  part: (line) => (line.item.kind === "FOOD" ? line.item.part : null),
  partName: ({ frozen, item }) =>
    item.kind === "FOOD" && item.part !== null ? partIn(frozen.locale, item.part) : null,
  component: (line) => componentOf(line.frozen, line.item),
  amount: (line) => line.amount && showWritten(line.amount, factsOf(line.frozen, line.item), showOf(line.frozen)),
  each: (line) =>
    line.each === undefined ? null : showWritten(line.each, factsOf(line.frozen, line.item), showOf(line.frozen)),
  eaten: (line) => line.eaten ?? null,
  swaps: (line) => line.swaps.map((swap) => ({ ...swap, frozen: line.frozen })),
};

export const swapResolvers: FieldsToResolve<SwapResolvers, SwapParent> = {
  food: (swap) => foodOfPlan(swap.frozen, swap.food),
  preparation: ({ own }) => own?.preparation ?? null,
  form: ({ own }) => own?.form ?? null,
  keepsAs: ({ own }) => own?.keepsAs ?? null,
  yield: ({ own, frozen }) =>
    own?.yield === undefined ? null : showWritten(own.yield, { densities: [], measures: [] }, showOf(frozen)),
  steps: ({ own }) => (own?.steps ?? []).map(({ id, text = null, minutes = null }) => ({ code: id, text, minutes })),
};

export const stepResolvers: FieldsToResolve<StepResolvers, StepParent> = {
  code: (step) => step.id,
  leaves: (step) => step.leaves ?? null,
  washMinutes: (step) => step.washMinutes ?? null,
  minutes: writtenMinutes,
  grows: growthOf,
  temperature: (step, { unit }) => temperatureIn(step, unit === "FAHRENHEIT" ? "F" : "C"),
  heatUpMinutes: (step) => step.heatUpMinutes ?? null,
  chills: (step) => step.chills ?? null,
  drains: (step) => step.drains ?? null,
};
