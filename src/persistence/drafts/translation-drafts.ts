import {
  translatedText,
  translationSlug,
  type TranslatedThing,
  type Translation,
} from "../../domain/model/translation.js";
import { publisherId } from "../access/publishers.js";
import type { Data, Draft, DraftWriting } from "../data.js";
import type { Db, Session } from "../database/session.js";
import type { Prisma } from "../generated/client.js";
import { fromJson, toJson } from "../sql/json-column.js";
import { inOrderOf, ownedBy } from "../sql/owned-name.js";
import { isStorable, storable } from "../sql/storable-text.js";
import { documentColumns, marksOf, type MarkColumns } from "./draft-document.js";
import { saveOneRow } from "./save-one-row.js";

/** Translations of plans and components, as their writers saved them. */
export function translationData(session: Session): Data["translations"] {
  const { db } = session;
  return {
    saveDraft: (publisher, translation, expectedVersion, writing) =>
      session.transaction((inside) =>
        saveDraft(inside, publisher, storable(translation), expectedVersion, storable(writing)),
      ),
    drafts: async (names) => {
      if (names.length === 0) return [];
      const include = { publisher: { select: { slug: true } } };
      return inOrderOf(names, await db.translationDraft.findMany({ where: { OR: ownedBy(names) }, include }), draftOf);
    },
    of: (publisher, things) => translationsOf(db, publisher, things),
  };
}

type Row = MarkColumns & { readonly value: Prisma.JsonValue };

const draftOf = (row: Row): Draft<Translation> => ({ ...marksOf(row), value: fromJson(row.value) });

async function translationsOf(
  db: Db,
  publisher: string,
  things: readonly TranslatedThing[],
): Promise<readonly Draft<Translation>[]> {
  const wanted = things.filter(({ slug }) => isStorable(slug));
  if (wanted.length === 0 || !isStorable(publisher)) return [];
  const rows = await db.translationDraft.findMany({
    where: { publisher: { slug: publisher }, ofSlug: { in: [...new Set(wanted.map(({ slug }) => slug))] } },
    orderBy: { slug: "asc" },
  });
  const names = new Set(wanted.map(({ kind, slug }) => `${kind} ${slug}`));
  return rows.map(draftOf).filter(({ value: { of } }) => names.has(`${of.kind} ${of.slug}`));
}

/** @throws StaleDraft, UnknownPublisher */
async function saveDraft(
  db: Db,
  publisher: string,
  translation: Translation,
  expected: number | null,
  writing: DraftWriting,
): Promise<number> {
  const slug = translationSlug(translation);
  const key = { publisherId: await publisherId(db, publisher), slug };
  const title = translatedText(translation, "title") ?? slug;
  const columns = { ofSlug: translation.of.slug, title, value: toJson(translation), ...documentColumns(writing) };
  return saveOneRow(db, db.translationDraft, "TRANSLATION", key, columns, expected);
}
