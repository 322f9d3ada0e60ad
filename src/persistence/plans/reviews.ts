import type { ReviewedDifference } from "../../domain/plan/review/review-plan.js";
import { checksumOf } from "../sql/canonical-json.js";
import { addChange } from "./changes.js";
import type { Data } from "../data.js";
import type { Prisma } from "../generated/client.js";
import { fromJson, toJson } from "../sql/json-column.js";
import { isId } from "../sql/keys.js";
import type { Session } from "../database/session.js";

export function reviewData(session: Session): Data["reviews"] {
  const { db } = session;
  return {
    inForce: async (after, limit) => {
      const rows = await db.revision.findMany({
        where: { withdrawnAt: null, ...(after !== null && isId(after) ? { id: { gt: after } } : {}) },
        orderBy: { id: "asc" },
        take: limit,
        select: { id: true, meaning: true, publisherRegion: true, publisherCurrency: true },
      });
      return rows.map(({ id, meaning, publisherRegion: region, publisherCurrency: currency }) => ({
        id,
        asBy010: meaning === null,
        publisherThen: { region, currency },
      }));
    },
    save: ({ revisionId, differences, lessSafe, at }) =>
      session.transaction(async (inside) => {
        const found = await inside.revision.findFirst({
          where: { id: revisionId },
          select: { publisherId: true, review: { select: { checksum: true } } },
        });
        if (found === null) return false;
        const { publisherId, review } = found;
        const checksum = checksumOf(differences);
        const key = { publisherId_revisionId: { publisherId, revisionId } };
        if (review?.checksum === checksum) {
          await inside.revisionReview.update({ where: key, data: { reviewedAt: at } });
          return false;
        }
        const facts = { checksum, differences: toJson(differences), lessSafe, changedAt: at, reviewedAt: at };
        await inside.revisionReview.upsert({
          where: key,
          create: { publisherId, revisionId, ...facts },
          update: facts,
        });
        // Nothing is told of a plan that is as it was when nobody had looked yet.
        if (review === null && differences.length === 0) return false;
        const kind = lessSafe ? "PLAN_LESS_SAFE" : "PLAN_ANSWER_CHANGED";
        await addChange(inside, { publisherId, revisionId, kind, at });
        return true;
      }),
    changedSince: async (from, publisher, limit) => {
      const rows = await db.revisionReview.findMany({
        where: {
          changedAt: { gt: from },
          revision: { withdrawnAt: null, ...(publisher === null ? {} : { plan: { publisher: { slug: publisher } } }) },
        },
        orderBy: [{ lessSafe: "desc" }, { changedAt: "desc" }, { revisionId: "asc" }],
        take: limit,
        select: reviewColumns,
      });
      return rows.map(({ revisionId, differences, lessSafe, changedAt }) => ({
        ...{ revisionId, lessSafe, changedAt },
        differences: fromJson<readonly ReviewedDifference[]>(differences),
      }));
    },
  };
}

const reviewColumns = {
  revisionId: true,
  differences: true,
  lessSafe: true,
  changedAt: true,
} as const satisfies Prisma.RevisionReviewSelect;
