import { z } from "zod";
import type { Session } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";
import { isId } from "../sql/keys.js";
import { readPage } from "../sql/read-page.js";
import { isStorable } from "../sql/storable-text.js";
import type { PlanRequests, TokenUsage, UsageData } from "./usage-data.js";

interface PlanRow extends PlanRequests {
  readonly id: string;
}

const keys = z.tuple([z.iso.date(), z.string().refine(isId)]);

/** Sums come as 64-bit numbers; two hundred thousand years of the busiest minute fit a number. */
const usageColumns = Prisma.sql`day::text AS day, requests::float8 AS requests, refused::float8 AS refused, points::float8 AS points`;

export function usageData({ db }: Session): UsageData {
  return {
    add: async ({ tokens, plans }) => {
      // In one order, so that processes that add at the same time wait for each other and no longer.
      if (tokens.length > 0) {
        const sorted = tokens.toSorted((a, b) => compare(`${a.token} ${a.day}`, `${b.token} ${b.day}`));
        await db.$executeRaw`
          INSERT INTO token_usage AS u (token_id, day, requests, refused, points)
          SELECT t.id, n.day, n.requests, n.refused, n.points
          FROM unnest(${sorted.map(({ token }) => token)}::text[], ${sorted.map(({ day }) => day)}::date[],
            ${sorted.map(({ requests }) => requests)}::bigint[], ${sorted.map(({ refused }) => refused)}::bigint[],
            ${sorted.map(({ points }) => points)}::bigint[]) WITH ORDINALITY AS n (token, day, requests, refused, points, place)
          JOIN access_tokens t ON t.id = n.token
          ORDER BY n.place
          ON CONFLICT (token_id, day) DO UPDATE SET requests = u.requests + excluded.requests,
            refused = u.refused + excluded.refused, points = u.points + excluded.points`;
      }
      const named = plans.filter(({ publisher, plan }) => isStorable(publisher) && isStorable(plan));
      if (named.length > 0) {
        await db.$executeRaw`
          INSERT INTO plan_requests AS r (publisher_id, day, plan_id, requests)
          SELECT p.publisher_id, n.day, p.id, n.requests
          FROM unnest(${named.map(({ publisher }) => publisher)}::text[], ${named.map(({ plan }) => plan)}::text[],
            ${named.map(({ day }) => day)}::date[], ${named.map(({ requests }) => requests)}::bigint[])
            AS n (publisher, plan, day, requests)
          JOIN publishers b ON b.slug = n.publisher
          JOIN plans p ON p.publisher_id = b.id AND p.slug = n.plan AND p.last_revision > 0
          ORDER BY p.publisher_id, n.day, p.id
          ON CONFLICT (publisher_id, day, plan_id) DO UPDATE SET requests = r.requests + excluded.requests`;
      }
    },
    ofToken: (token, days) => db.$queryRaw<TokenUsage[]>`
      SELECT ${usageColumns} FROM token_usage WHERE token_id = ${token} ORDER BY token_usage.day DESC LIMIT ${days}`,
    plans: async (publisher, plan, request) => {
      if (plan !== null && !isStorable(plan)) return { items: [], hasNext: false, hasPrevious: false };
      const page = await readPage<PlanRow, readonly [string, string]>(
        db,
        {
          order: [
            { column: Prisma.sql`r.day`, type: Prisma.sql`date`, descending: true },
            { column: Prisma.sql`r.plan_id`, type: Prisma.sql`uuid`, descending: false },
          ],
          keys,
          from: Prisma.sql`plan_requests r`,
          where: Prisma.sql`r.publisher_id = ${idOfPublisher(publisher)} AND (${plan}::text IS NULL OR r.plan_id =
            (SELECT p.id FROM plans p WHERE p.publisher_id = ${idOfPublisher(publisher)} AND p.slug = ${plan}::text))`,
          columns: Prisma.sql`r.day::text AS day, p.slug AS plan, r.requests::float8 AS requests, p.id`,
          join: Prisma.sql`JOIN plan_requests r ON r.publisher_id = ${idOfPublisher(publisher)} AND r.day = k.k0 AND r.plan_id = k.k1
            JOIN plans p ON p.publisher_id = r.publisher_id AND p.id = r.plan_id`,
          keysOf: ({ day, id }) => [day, id],
        },
        request,
      );
      return {
        ...page,
        items: page.items.map(({ cursor, item: { day, plan: slug, requests } }) => ({
          cursor,
          item: { day, plan: slug, requests },
        })),
      };
    },
    forget: async (before) => {
      const ofTokens = await db.$executeRaw`DELETE FROM token_usage WHERE day < ${before}::date`;
      const ofPlans = await db.$executeRaw`DELETE FROM plan_requests WHERE day < ${before}::date`;
      return ofTokens + ofPlans;
    },
  };
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
