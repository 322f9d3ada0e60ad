import { translationSlug, type TranslatedThing, type Translation } from "../../domain/model/translation.js";
import { publisherId } from "../access/publishers.js";
import type { Data, Draft, DraftWriting } from "../data.js";
import type { Db, Session } from "../database/session.js";
import { StaleDraft } from "../errors.js";
import type { Prisma } from "../generated/client.js";
import { fromJson, toJson } from "../sql/json-column.js";
import { inOrder } from "../sql/keys.js";
import { ownedName, slugsByPublisher } from "../sql/owned-name.js";
import { isStorable, storable } from "../sql/storable-text.js";
import { firstVersion } from "./discard-draft.js";
import { documentColumns, marksOf, type MarkColumns } from "./draft-document.js";

/** Translations of plans and components, as their writers saved them. */
export function translationData(session: Session): Data["translations"] {
  const { db } = session;
  return {
    saveDraft: (publisher, translation, expectedVersion, writing) =>
      session.transaction((inside) =>
        saveDraft(inside, publisher, storable(translation), expectedVersion, storable(writing)),
      ),
    drafts: async (names) => {
      const asked = slugsByPublisher(names);
      const rows =
        asked.length === 0
          ? []
          : await db.translationDraft.findMany({
              where: {
                OR: asked.map(({ publisher, slugs }) => ({ slug: { in: slugs }, publisher: { slug: publisher } })),
              },
              include: { publisher: { select: { slug: true } } },
            });
      const keys = names.map(({ publisher, slug }) => ownedName(publisher, slug));
      const found = inOrder(keys, rows, (row) => ownedName(row.publisher.slug, row.slug), String);
      return found.map((row) => (row === null ? null : draftOf(row)));
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
  const title = translation.texts.find(({ path }) => path.length === 1 && path[0] === "title")?.text ?? slug;
  const columns = { ofSlug: translation.of.slug, title, value: toJson(translation), ...documentColumns(writing) };
  const { count } =
    expected === null
      ? await db.translationDraft.createMany({
          data: [{ ...key, ...columns, version: await firstVersion(db, { ...key, kind: "TRANSLATION" }) }],
          skipDuplicates: true,
        })
      : await db.translationDraft.updateMany({
          where: { ...key, version: expected },
          data: { ...columns, version: { increment: 1 } },
        });
  const saved = await db.translationDraft.findUnique({
    where: { publisherId_slug: key },
    select: { version: true },
  });
  if (count === 0 || saved === null) throw new StaleDraft(slug, expected, saved?.version ?? null);
  return saved.version;
}
