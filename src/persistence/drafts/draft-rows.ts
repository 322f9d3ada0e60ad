import { randomUUID } from "node:crypto";
import type { Measured } from "../../domain/model/amount.js";
import type { Step } from "../../domain/model/component.js";
import type { Line, LineItem, SwapOwn } from "../../domain/model/line.js";
import type { Prisma } from "../generated/client.js";
import { fromJson, toJson } from "../sql/json-column.js";

/** What a line or a step belongs to: exactly one of a component, one of its routes, or a meal. */
export interface Owner {
  readonly publisherId: string;
  readonly componentId?: string;
  readonly routeId?: string;
  readonly mealId?: string;
}

interface LineRows {
  readonly lines: readonly Prisma.DraftLineCreateManyInput[];
  readonly swaps: readonly Prisma.DraftSwapCreateManyInput[];
}

export const linesTree = {
  orderBy: { position: "asc" },
  include: { swaps: { orderBy: { position: "asc" } } },
} as const satisfies Prisma.ComponentDraft$linesArgs;

export const stepsTree = { orderBy: { position: "asc" } } as const satisfies Prisma.ComponentDraft$stepsArgs;

type LineRow = Prisma.DraftLineGetPayload<{ include: (typeof linesTree)["include"] }>;
type StepRow = Prisma.DraftStepGetPayload<object>;

export function lineRows(owner: Owner, lines: readonly Line[]): LineRows {
  const rows = lines.map((line, position) => ({ id: randomUUID(), line, position }));
  return {
    lines: rows.map(({ id, line, position }) => ({
      ...owner,
      id,
      position,
      lineId: line.id,
      food: line.item.kind === "FOOD" ? line.item.food : null,
      foodPart: line.item.kind === "FOOD" ? line.item.part : null,
      component: line.item.kind === "COMPONENT" ? line.item.component : null,
      written: line.written,
      amountLow: line.amount?.low ?? null,
      amountHigh: line.amount?.high ?? null,
      amountUnit: line.amount?.unit ?? null,
      ...(line.each === undefined ? {} : { each: toJson(line.each) }),
      extra: line.extra,
      measured: line.measured,
      form: line.form,
      preparation: line.preparation,
      rule: line.rule,
      exponent: line.exponent,
      optional: line.optional,
      eaten: line.eaten ?? null,
      mark: line.mark,
    })),
    swaps: rows.flatMap(({ id: lineId, line }) =>
      line.swaps.map(({ food, ratio, diets, note, own }, position) => ({
        publisherId: owner.publisherId,
        lineId,
        position,
        food,
        ratio,
        diets: [...diets],
        note,
        ...(own === undefined ? {} : { own: toJson(own) }),
      })),
    ),
  };
}

export const stepRows = (owner: Owner, steps: readonly Step[]): readonly Prisma.DraftStepCreateManyInput[] =>
  steps.map(({ id, after, lines, ...step }, position) => ({
    ...owner,
    ...step,
    id: randomUUID(),
    position,
    stepId: id,
    after: [...after],
    lines: [...lines],
  }));

export const lineOf = (row: LineRow): Line => ({
  id: row.lineId,
  item: itemOf(row),
  written: row.written,
  amount: amountOf(row),
  ...(row.each === null ? {} : { each: fromJson<Measured>(row.each) }),
  extra: row.extra,
  measured: row.measured,
  form: row.form,
  preparation: row.preparation,
  rule: row.rule,
  exponent: row.exponent,
  optional: row.optional,
  ...(row.eaten === null ? {} : { eaten: row.eaten }),
  mark: row.mark,
  swaps: row.swaps.map(({ food, ratio, diets, note, own }) => ({
    ...{ food, ratio, diets, note },
    ...(own === null ? {} : { own: fromJson<SwapOwn>(own) }),
  })),
});

function itemOf({ food, foodPart, component, id }: LineRow): LineItem {
  if (food !== null) return { kind: "FOOD", food, part: foodPart };
  if (component !== null) return { kind: "COMPONENT", component };
  throw new Error(`the line ${id} names nothing`);
}

const amountOf = ({ amountLow, amountHigh, amountUnit }: LineRow): Measured | null =>
  amountLow === null || amountHigh === null || amountUnit === null
    ? null
    : { low: amountLow, high: amountHigh, unit: amountUnit };

export const stepOf = (row: StepRow): Step => ({
  id: row.stepId,
  text: row.text,
  minutes: row.minutes,
  attention: row.attention,
  appliance: row.appliance,
  temperatureC: row.temperatureC,
  after: row.after,
  grows: row.grows,
  loadBatches: row.loadBatches,
  minWait: row.minWait,
  maxWait: row.maxWait,
  eveningBefore: row.eveningBefore,
  lines: row.lines,
  ...(row.leaves === null ? {} : { leaves: row.leaves }),
  ...(row.washMinutes === null ? {} : { washMinutes: row.washMinutes }),
  ...(row.drains === null ? {} : { drains: row.drains }),
  ...(row.growthStated === true ? { growthStated: true } : {}),
  ...(row.heatUpMinutes === null ? {} : { heatUpMinutes: row.heatUpMinutes }),
  ...(row.chills === null ? {} : { chills: row.chills }),
});
