import type { PublishedKeepingRule } from "../domain/model/keeping.js";
import { checksumOf } from "./canonical-json.js";
import type { Data } from "./data.js";
import type { KeepingRule } from "./generated/client.js";
import type { Session } from "./session.js";
import { dateText, sourceOf } from "./source-columns.js";
import { storable } from "./storable.js";

export function keepingRuleData({ db }: Session): Data["keepingRules"] {
  return {
    save: async (given) => {
      const rules = new Map(storable(given).map((rule) => [rule.id, rule]));
      const rows = [...rules.values()].map(columnsOf);
      const changed = await db.$executeRaw`
        INSERT INTO keeping_rules AS k SELECT * FROM jsonb_populate_recordset(NULL::keeping_rules, ${JSON.stringify(rows)}::jsonb)
        ON CONFLICT (id) DO UPDATE SET
          keeps_as = excluded.keeps_as, place = excluded.place, days = excluded.days, days_from = excluded.days_from,
          counts = excluded.counts, first_day = excluded.first_day, printed = excluded.printed,
          purpose = excluded.purpose, audience = excluded.audience, region = excluded.region,
          condition = excluded.condition, temperature = excluded.temperature, in_force_from = excluded.in_force_from,
          in_force_to = excluded.in_force_to, publisher = excluded.publisher, note = excluded.note,
          source_kind = excluded.source_kind, source_title = excluded.source_title,
          source_section = excluded.source_section, content_hash = excluded.content_hash
        WHERE k.content_hash <> excluded.content_hash`;
      return { changed };
    },
    inForce: async (date) => {
      const day = new Date(`${date}T00:00:00Z`);
      const rows = await db.keepingRule.findMany({
        where: {
          AND: [
            { OR: [{ inForceFrom: null }, { inForceFrom: { lte: day } }] },
            { OR: [{ inForceTo: null }, { inForceTo: { gt: day } }] },
          ],
        },
        orderBy: { id: "asc" },
      });
      return rows.map(ruleOf);
    },
  };
}

/** Columns of the table, named as in the database. */
const columnsOf = (rule: PublishedKeepingRule) => ({
  id: rule.id,
  keeps_as: rule.keepsAs,
  place: rule.place,
  days: rule.days,
  days_from: rule.daysFrom,
  counts: rule.counts,
  first_day: rule.firstDay,
  printed: rule.printed,
  purpose: rule.purpose,
  audience: rule.audience,
  region: rule.region,
  condition: rule.condition,
  temperature: rule.temperature,
  in_force_from: rule.inForceFrom,
  in_force_to: rule.inForceTo,
  publisher: rule.publisher,
  note: rule.note,
  source_kind: rule.source.kind,
  source_title: rule.source.title,
  source_section: rule.source.section,
  content_hash: checksumOf(rule),
});

const ruleOf = (row: KeepingRule): PublishedKeepingRule => ({
  id: row.id,
  keepsAs: row.keepsAs,
  place: row.place,
  days: row.days,
  daysFrom: row.daysFrom,
  counts: row.counts,
  // A check of the table holds it to these two.
  firstDay: row.firstDay === 0 ? 0 : 1,
  printed: row.printed,
  purpose: row.purpose,
  audience: row.audience,
  region: row.region,
  condition: row.condition,
  temperature: row.temperature,
  inForceFrom: row.inForceFrom && dateText(row.inForceFrom),
  inForceTo: row.inForceTo && dateText(row.inForceTo),
  publisher: row.publisher,
  note: row.note,
  source: sourceOf(row),
});
