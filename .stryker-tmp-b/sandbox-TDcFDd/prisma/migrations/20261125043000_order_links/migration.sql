-- So that the plans that use a food or a component, or have a word in their title, are found in the order of pages, however
-- many they are.

-- DropIndex
DROP INDEX "plans_newest_title_words_idx";

-- DropIndex
DROP INDEX "revision_components_component_revision_id_idx";

-- DropIndex
DROP INDEX "revision_foods_food_revision_id_idx";

-- AlterTable
ALTER TABLE "revision_foods" ADD COLUMN     "published_at" TIMESTAMPTZ(3);
UPDATE "revision_foods" f SET "published_at" = r."published_at"
  FROM "revisions" r WHERE r."publisher_id" = f."publisher_id" AND r."id" = f."revision_id";
ALTER TABLE "revision_foods" ALTER COLUMN "published_at" SET NOT NULL;

-- CreateTable
CREATE TABLE "revision_words" (
    "publisher_id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "word" TEXT NOT NULL,
    "published_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "revision_words_pkey" PRIMARY KEY ("publisher_id","revision_id","word")
);

-- The words of the newest revisions were folded by the program; those of older ones are folded nearly as well here.
INSERT INTO "revision_words" ("publisher_id", "revision_id", "word", "published_at")
  SELECT r."publisher_id", r."id", w."word", r."published_at"
  FROM "revisions" r JOIN "plans" p ON p."publisher_id" = r."publisher_id" AND p."id" = r."plan_id",
    unnest(CASE WHEN p."newest_revision_id" = r."id" THEN p."newest_title_words"
      ELSE regexp_split_to_array(lower(r."title"), '[^[:alnum:]]+') END) AS w("word")
  WHERE w."word" <> ''
  ON CONFLICT DO NOTHING;

-- AlterTable
ALTER TABLE "plans" DROP COLUMN "newest_title_words";

-- CreateIndex
CREATE INDEX "revision_words_word_published_at_revision_id_idx" ON "revision_words"("word", "published_at" DESC, "revision_id");

-- CreateIndex
CREATE INDEX "revision_components_component_published_at_revision_id_idx" ON "revision_components"("component", "published_at" DESC, "revision_id");

-- CreateIndex
CREATE INDEX "revision_foods_food_published_at_revision_id_idx" ON "revision_foods"("food", "published_at" DESC, "revision_id");

-- AddForeignKey
ALTER TABLE "revision_words" ADD CONSTRAINT "revision_words_publisher_id_revision_id_fkey" FOREIGN KEY ("publisher_id", "revision_id") REFERENCES "revisions"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;
