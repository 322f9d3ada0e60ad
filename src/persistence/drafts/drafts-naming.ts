import type { DraftKind } from "../../domain/problem.js";
import type { DraftRef } from "../data.js";
import type { Db } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { isStorable } from "../sql/storable-text.js";

/** Drafts of the same publisher with a line or a swap that names this one, components first, each kind by slug. */
export async function draftsNaming(
  db: Db,
  { kind, publisher, slug }: DraftRef,
  most: number,
): Promise<readonly { readonly kind: DraftKind; readonly slug: string }[]> {
  // Without a publisher's own packs a food goes on being there, and without a translation what it translates.
  if ((kind !== "COMPONENT" && kind !== "FOOD") || !isStorable(publisher) || !isStorable(slug)) return [];
  const names =
    kind === "COMPONENT"
      ? Prisma.sql`l.component = ${slug}`
      : Prisma.sql`(l.food = ${slug} OR EXISTS (
          SELECT FROM draft_swaps s WHERE s.publisher_id = l.publisher_id AND s.line_id = l.id AND s.food = ${slug}))`;
  return db.$queryRaw<{ kind: DraftKind; slug: string }[]>`
    WITH owner AS (SELECT id FROM publishers WHERE slug = ${publisher}),
    named AS (
      SELECT coalesce(l.component_id, r.component_id) AS component_id, m.plan_id
      FROM owner o JOIN draft_lines l ON l.publisher_id = o.id
        LEFT JOIN component_routes r ON r.publisher_id = l.publisher_id AND r.id = l.route_id
        LEFT JOIN draft_meals m ON m.publisher_id = l.publisher_id AND m.id = l.meal_id
      WHERE ${names})
    SELECT d.kind, d.slug FROM (
      SELECT 'COMPONENT' COLLATE "C" AS kind, c.slug COLLATE "C" AS slug
      FROM owner o JOIN component_drafts c ON c.publisher_id = o.id
      WHERE c.id IN (SELECT component_id FROM named)
      UNION ALL
      SELECT 'PLAN' COLLATE "C", p.slug COLLATE "C"
      FROM owner o JOIN plans p ON p.publisher_id = o.id
      WHERE p.id IN (SELECT plan_id FROM named)
    ) d ORDER BY d.kind, d.slug LIMIT ${most}::int`;
}
