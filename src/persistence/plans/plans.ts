import { randomUUID } from "node:crypto";
import type { Image } from "../../domain/model/image.js";
import type { Meal, Plan } from "../../domain/model/plan.js";
import { firstVersion } from "../drafts/discard-draft.js";
import { documentColumns, marksOf } from "../drafts/draft-document.js";
import { lineOf, linesTree, stepOf, stepsTree } from "../drafts/draft-rows.js";
import type { Data, Draft, DraftWriting } from "../data.js";
import { StaleDraft } from "../errors.js";
import type { Prisma } from "../generated/client.js";
import { insertLinesAndSteps } from "../drafts/insert-lines-and-steps.js";
import { wordsColumn, wordsFrom } from "../drafts/draft-words.js";
import { fromJson, jsonOrNull, toJson } from "../sql/json-column.js";
import { inOrder } from "../sql/keys.js";
import { ownedName, slugsByPublisher } from "../sql/owned-name.js";
import { lockPlan } from "./lock-plan.js";
import type { Db, Session } from "../database/session.js";
import { storable } from "../sql/storable-text.js";

const planTree = {
  plan: { select: { slug: true, publisher: { select: { slug: true } } } },
  meals: { orderBy: { position: "asc" }, include: { lines: linesTree, steps: stepsTree } },
} as const satisfies Prisma.PlanDraftInclude;

type PlanRow = Prisma.PlanDraftGetPayload<{ include: typeof planTree }>;

export function planData(session: Session): Data["plans"] {
  return {
    saveDraft: async (plan, expectedVersion, writing = byNobody) =>
      session.transaction((db) => saveDraft(db, storable(plan), expectedVersion, storable(writing))),
    drafts: async (names) => {
      const rows = await session.db.planDraft.findMany({
        where: {
          OR: slugsByPublisher(names).map(({ publisher, slugs }) => ({
            plan: { slug: { in: slugs }, publisher: { slug: publisher } },
          })),
        },
        include: planTree,
      });
      const found = rows.map((row) => ({
        name: ownedName(row.plan.publisher.slug, row.plan.slug),
        draft: draftOf(row),
      }));
      const keys = names.map(({ publisher, slug }) => ownedName(publisher, slug));
      return inOrder(keys, found, ({ name }) => name, String).map((each) => each?.draft ?? null);
    },
  };
}

const byNobody: DraftWriting = { document: null, by: null };

/** @throws StaleDraft, UnknownPublisher */
async function saveDraft(db: Db, plan: Plan, expected: number | null, writing: DraftWriting): Promise<number> {
  const { publisherId, id: planId } = await lockPlan(db, plan);
  const key = { publisherId, planId };
  const before = await db.planDraft.findUnique({ where: { publisherId_planId: key }, select: { version: true } });
  // The plan is locked, so nobody can come between looking and writing.
  if ((before?.version ?? null) !== expected) throw new StaleDraft(plan.slug, expected, before?.version ?? null);
  const version =
    expected === null ? await firstVersion(db, { publisherId, kind: "PLAN", slug: plan.slug }) : expected + 1;
  const columns = { ...columnsOf(plan), ...documentColumns(writing), version };
  await db.planDraft.upsert({
    where: { publisherId_planId: key },
    create: { ...key, ...columns },
    update: columns,
    select: { version: true },
  });
  await replaceMeals(db, key, plan.meals);
  return version;
}

async function replaceMeals(
  db: Db,
  key: { readonly publisherId: string; readonly planId: string },
  given: readonly Meal[],
): Promise<void> {
  await db.draftMeal.deleteMany({ where: key });
  const meals = given.map((meal, position) => ({ id: randomUUID(), meal, position }));
  if (meals.length === 0) return;
  await db.draftMeal.createMany({
    data: meals.map(({ id, position, meal: { slug, title, day, at = null, serves, image, ...meal } }) => ({
      ...key,
      id,
      position,
      slug,
      title,
      day,
      at,
      serves,
      image: jsonOrNull(image),
      words: wordsColumn(meal),
    })),
  });
  const { publisherId } = key;
  await insertLinesAndSteps(
    db,
    meals.map(({ id, meal: { lines, steps } }) => ({ owner: { publisherId, mealId: id }, lines, steps })),
  );
}

const columnsOf = (plan: Plan) => ({
  title: plan.title,
  summary: plan.summary,
  locale: plan.locale,
  measures: plan.measures,
  serves: plan.serves,
  cooks: plan.kitchen.cooks,
  appliances: toJson(plan.kitchen.appliances),
  promisedMinutes: plan.promisedMinutes,
  region: plan.region ?? null,
  currency: plan.currency ?? null,
  claims: [...plan.claims],
  image: jsonOrNull(plan.image),
  licence: plan.licence ?? null,
  dates: datesColumn(plan),
  words: wordsColumn(plan),
});

/** Null where nothing is said. */
const datesColumn = ({ publishAt, withdrawAt }: Plan) =>
  jsonOrNull(publishAt || withdrawAt ? { ...(publishAt && { publishAt }), ...(withdrawAt && { withdrawAt }) } : null);

const draftOf = (row: PlanRow): Draft<Plan> => ({
  ...marksOf(row),
  value: {
    publisher: row.plan.publisher.slug,
    slug: row.plan.slug,
    title: row.title,
    summary: row.summary,
    locale: row.locale,
    measures: row.measures,
    serves: row.serves,
    meals: row.meals.map(({ slug, title, day, at, serves, lines, steps, image, words }) => ({
      slug,
      title,
      day,
      ...(at === null ? {} : { at }),
      serves,
      lines: lines.map(lineOf),
      steps: steps.map(stepOf),
      ...(image !== null && { image: fromJson<Image>(image) }),
      ...wordsFrom(words),
    })),
    kitchen: { cooks: row.cooks, appliances: fromJson(row.appliances) },
    promisedMinutes: row.promisedMinutes,
    ...(row.region !== null && { region: row.region }),
    ...(row.currency !== null && { currency: row.currency }),
    claims: row.claims,
    ...(row.image !== null && { image: fromJson<Image>(row.image) }),
    ...(row.dates !== null && fromJson<Pick<Plan, "publishAt" | "withdrawAt">>(row.dates)),
    ...(row.licence !== null && { licence: row.licence }),
    ...wordsFrom(row.words),
  },
});
