-- Expand only: new tables, and a row for each plan in force, which a job fills within minutes of the first start. Until then the plan is
-- found by its publisher, its foods and the words of its title, as before, and by no new filter.
-- CreateTable
CREATE TABLE "plan_facts" (
    "publisher_id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "published_at" TIMESTAMPTZ(3) NOT NULL,
    "first_published_at" TIMESTAMPTZ(3) NOT NULL,
    "worked_out_at" TIMESTAMPTZ(3),
    "due" INTEGER NOT NULL DEFAULT 1,
    "labels" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "session_minutes" DOUBLE PRECISION,
    "hands_on_minutes" DOUBLE PRECISION,
    "days" INTEGER NOT NULL DEFAULT 0,
    "servings" INTEGER NOT NULL DEFAULT 0,
    "bought" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "nutrients_low" DOUBLE PRECISION[] DEFAULT ARRAY[]::DOUBLE PRECISION[],
    "nutrients_high" DOUBLE PRECISION[] DEFAULT ARRAY[]::DOUBLE PRECISION[],
    "costs" JSONB NOT NULL DEFAULT '{}',
    "costs_of" DATE,
    "allergens" JSONB NOT NULL DEFAULT '[]',
    "known_by" TEXT,
    "foods" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "words" tsvector NOT NULL,

    CONSTRAINT "plan_facts_pkey" PRIMARY KEY ("publisher_id","plan_id")
);

-- CreateTable
CREATE TABLE "searched_words" (
    "publisher_id" UUID NOT NULL,
    "word" TEXT NOT NULL,
    "variants" TEXT[],

    CONSTRAINT "searched_words_pkey" PRIMARY KEY ("publisher_id","word")
);

-- CreateTable
CREATE TABLE "fact_sources" (
    "source" TEXT NOT NULL,
    "checksum" TEXT NOT NULL,

    CONSTRAINT "fact_sources_pkey" PRIMARY KEY ("source")
);

-- CreateIndex
CREATE INDEX "plan_facts_published_at_revision_id_idx" ON "plan_facts"("published_at" DESC, "revision_id");

-- CreateIndex
CREATE INDEX "plan_facts_publisher_id_published_at_revision_id_idx" ON "plan_facts"("publisher_id", "published_at" DESC, "revision_id");

-- CreateIndex
CREATE INDEX "plan_facts_first_published_at_revision_id_idx" ON "plan_facts"("first_published_at" DESC, "revision_id");

-- CreateIndex
CREATE INDEX "plan_facts_session_minutes_revision_id_idx" ON "plan_facts"("session_minutes", "revision_id");

-- CreateIndex
CREATE INDEX "plan_facts_hands_on_minutes_revision_id_idx" ON "plan_facts"("hands_on_minutes", "revision_id");

-- CreateIndex
CREATE INDEX "plan_facts_due_idx" ON "plan_facts"("due");

-- CreateIndex
CREATE INDEX "plan_facts_labels_idx" ON "plan_facts" USING GIN ("labels");

-- CreateIndex
CREATE INDEX "plan_facts_foods_idx" ON "plan_facts" USING GIN ("foods");

-- CreateIndex
CREATE INDEX "plan_facts_words_idx" ON "plan_facts" USING GIN ("words");

-- CreateIndex
CREATE INDEX "searched_words_variants_idx" ON "searched_words" USING GIN ("variants");

-- AddForeignKey
ALTER TABLE "plan_facts" ADD CONSTRAINT "plan_facts_publisher_id_plan_id_fkey" FOREIGN KEY ("publisher_id", "plan_id") REFERENCES "plans"("publisher_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- Limits of nutrients that have names of their own (services/plans/listing/named-nutrients.ts): their places are those of `listedNutrients`.
CREATE INDEX "plan_facts_protein" ON "plan_facts" (("nutrients_low"[2]));
CREATE INDEX "plan_facts_fibre" ON "plan_facts" (("nutrients_low"[7]));
CREATE INDEX "plan_facts_energy" ON "plan_facts" (("nutrients_high"[1]));
CREATE INDEX "plan_facts_saturated_fat" ON "plan_facts" (("nutrients_high"[4]));
CREATE INDEX "plan_facts_carbohydrate" ON "plan_facts" (("nutrients_high"[5]));
CREATE INDEX "plan_facts_sugars" ON "plan_facts" (("nutrients_high"[6]));
CREATE INDEX "plan_facts_sodium" ON "plan_facts" (("nutrients_high"[8]));

-- A list looks at the labels of thousands of rows: what it does not look at stands apart.
ALTER TABLE "plan_facts" ALTER COLUMN "labels" SET STORAGE MAIN;
ALTER TABLE "plan_facts" SET (toast_tuple_target = 1024);

INSERT INTO "plan_facts" ("publisher_id", "plan_id", "revision_id", "published_at", "first_published_at", "servings", "foods", "words")
SELECT p."publisher_id", p."id", r."id", r."published_at",
  (SELECT min(f."published_at") FROM "revisions" f WHERE f."publisher_id" = p."publisher_id" AND f."plan_id" = p."id"), r."serves",
  ARRAY(SELECT h."food" FROM "revision_foods" h WHERE h."publisher_id" = r."publisher_id" AND h."revision_id" = r."id"),
  array_to_tsvector(ARRAY(SELECT w."word" FROM "revision_words" w WHERE w."publisher_id" = r."publisher_id" AND w."revision_id" = r."id"))
FROM "plans" p JOIN "revisions" r ON r."publisher_id" = p."publisher_id" AND r."id" = p."newest_revision_id";

CREATE TRIGGER "plan_facts_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "plan_facts"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('listings');
