import { randomUUID } from "node:crypto";
import type { Image } from "../../domain/model/image.js";
import type { Component } from "../../domain/model/component.js";
import { firstVersion } from "../drafts/discard-draft.js";
import { documentColumns, marksOf } from "../drafts/draft-document.js";
import { lineOf, linesTree, stepOf, stepsTree } from "../drafts/draft-rows.js";
import type { Data, Draft, DraftWriting } from "../data.js";
import { StaleDraft } from "../errors.js";
import type { Prisma } from "../generated/client.js";
import { insertLinesAndSteps, type LinesAndSteps } from "../drafts/insert-lines-and-steps.js";
import { wordsColumn, wordsFrom } from "../drafts/draft-words.js";
import { fromJson, jsonOrNull, toJson } from "../sql/json-column.js";
import { inOrderOf, ownedBy } from "../sql/owned-name.js";
import { publisherId } from "../access/publishers.js";
import type { Db, Session } from "../database/session.js";
import { storable } from "../sql/storable-text.js";

const componentTree = {
  publisher: { select: { slug: true } },
  lines: linesTree,
  steps: stepsTree,
  routes: { orderBy: { position: "asc" }, include: { lines: linesTree, steps: stepsTree } },
} as const satisfies Prisma.ComponentDraftInclude;

type ComponentRow = Prisma.ComponentDraftGetPayload<{ include: typeof componentTree }>;

export function componentData(session: Session): Data["components"] {
  return {
    saveDraft: async (publisher, component, expectedVersion, writing = byNobody) =>
      session.transaction((db) => saveDraft(db, publisher, storable(component), expectedVersion, storable(writing))),
    drafts: async (names) => {
      const where = { OR: ownedBy(names) };
      return inOrderOf(names, await session.db.componentDraft.findMany({ where, include: componentTree }), draftOf);
    },
  };
}

const byNobody: DraftWriting = { document: null, by: null };

/** @throws StaleDraft, UnknownPublisher */
async function saveDraft(
  db: Db,
  publisher: string,
  component: Component,
  expected: number | null,
  writing: DraftWriting,
): Promise<number> {
  const owner = await publisherId(db, publisher);
  const columns = { ...columnsOf(component), ...documentColumns(writing) };
  const key = { publisherId: owner, slug: component.slug };
  const id = randomUUID();
  const { count } =
    expected === null
      ? await db.componentDraft.createMany({
          data: [{ ...key, ...columns, id, version: await firstVersion(db, { ...key, kind: "COMPONENT" }) }],
          skipDuplicates: true,
        })
      : await db.componentDraft.updateMany({
          where: { ...key, version: expected },
          data: { ...columns, version: { increment: 1 } },
        });
  const saved = await db.componentDraft.findUnique({
    where: { publisherId_slug: key },
    select: { id: true, version: true },
  });
  if (count === 0 || saved === null) throw new StaleDraft(component.slug, expected, saved?.version ?? null);
  await replaceWork(db, { publisherId: owner, componentId: saved.id }, component);
  return saved.version;
}

async function replaceWork(
  db: Db,
  owner: { readonly publisherId: string; readonly componentId: string },
  component: Component,
): Promise<void> {
  await db.draftLine.deleteMany({ where: owner });
  await db.draftStep.deleteMany({ where: owner });
  await db.componentRoute.deleteMany({ where: owner });
  const routes = component.routes.map((route, position) => ({ id: randomUUID(), route, position }));
  if (routes.length > 0) {
    await db.componentRoute.createMany({
      data: routes.map(({ id, position, route: { name, kind, keepsAs, keeping } }) => ({
        ...owner,
        id,
        position,
        name,
        kind,
        keepsAs,
        keeping: toJson(keeping),
      })),
    });
  }
  const work: LinesAndSteps[] = [
    { owner, lines: component.lines, steps: component.steps },
    ...routes.map(({ id, route: { lines, steps } }) => ({
      owner: { publisherId: owner.publisherId, routeId: id },
      lines,
      steps,
    })),
  ];
  await insertLinesAndSteps(db, work);
}

const columnsOf = (component: Component) => ({
  title: component.title,
  yieldLow: component.yield.amount.low,
  yieldHigh: component.yield.amount.high,
  yieldUnit: component.yield.amount.unit,
  yieldSourceKind: component.yield.source.kind,
  yieldSourceTitle: component.yield.source.title,
  yieldSourceSection: component.yield.source.section,
  batchMin: component.batch.min,
  batchMax: component.batch.max,
  batchIncrement: component.batch.increment,
  densities: toJson(component.densities),
  measures: toJson(component.measures),
  keepsAs: component.keepsAs,
  keeping: toJson(component.keeping),
  cautions: [...component.cautions],
  image: jsonOrNull(component.image),
  words: wordsColumn(component),
});

const draftOf = (row: ComponentRow): Draft<Component> => ({
  ...marksOf(row),
  value: {
    slug: row.slug,
    title: row.title,
    lines: row.lines.map(lineOf),
    steps: row.steps.map(stepOf),
    yield: {
      amount: { low: row.yieldLow, high: row.yieldHigh, unit: row.yieldUnit },
      source: { kind: row.yieldSourceKind, title: row.yieldSourceTitle, section: row.yieldSourceSection },
    },
    batch: { min: row.batchMin, max: row.batchMax, increment: row.batchIncrement },
    densities: fromJson(row.densities),
    measures: fromJson(row.measures),
    keepsAs: row.keepsAs,
    keeping: fromJson(row.keeping),
    routes: row.routes.map((route) => ({
      name: route.name,
      kind: route.kind,
      lines: route.lines.map(lineOf),
      steps: route.steps.map(stepOf),
      keepsAs: route.keepsAs,
      keeping: fromJson(route.keeping),
    })),
    cautions: row.cautions,
    ...(row.image !== null && { image: fromJson<Image>(row.image) }),
    ...wordsFrom(row.words),
  },
});
