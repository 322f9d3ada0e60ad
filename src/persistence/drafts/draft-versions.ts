import type { DraftRef } from "../data.js";
import type { Db } from "../database/session.js";
import { isStorable } from "../sql/storable-text.js";

/** One statement: for every draft the version it is at, null where there is none. */
export async function draftVersions(db: Db, drafts: readonly DraftRef[]): Promise<readonly (number | null)[]> {
  const asked = drafts
    .map((draft, place) => ({ ...draft, place }))
    .filter(({ publisher, slug }) => isStorable(publisher) && isStorable(slug));
  const keys = JSON.stringify(asked);
  const rows = await db.$queryRaw<{ place: number; version: number }[]>`
    SELECT k.place, coalesce(c.version, f.version, s.version, t.version, d.version) AS version
    FROM jsonb_to_recordset(${keys}::jsonb) AS k(place int, kind text, publisher text, slug text)
    JOIN publishers b ON b.slug = k.publisher
    LEFT JOIN component_drafts c ON k.kind = 'COMPONENT' AND c.publisher_id = b.id AND c.slug = k.slug
    LEFT JOIN publisher_foods f ON k.kind = 'FOOD' AND f.publisher_id = b.id AND f.slug = k.slug
    LEFT JOIN publisher_packs s ON k.kind = 'PACKS' AND s.publisher_id = b.id AND s.slug = k.slug
    LEFT JOIN translation_drafts t ON k.kind = 'TRANSLATION' AND t.publisher_id = b.id AND t.slug = k.slug
    LEFT JOIN plans p ON k.kind = 'PLAN' AND p.publisher_id = b.id AND p.slug = k.slug
    LEFT JOIN plan_drafts d ON d.publisher_id = p.publisher_id AND d.plan_id = p.id`;
  const byPlace = new Map(rows.map(({ place, version }) => [place, version]));
  return drafts.map((_, place) => byPlace.get(place) ?? null);
}
