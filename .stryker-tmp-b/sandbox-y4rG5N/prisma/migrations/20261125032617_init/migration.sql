-- CreateEnum
CREATE TYPE "Dimension" AS ENUM ('MASS', 'VOLUME', 'COUNT');

-- CreateEnum
CREATE TYPE "MeasureSystem" AS ENUM ('US_CUSTOMARY', 'METRIC_CUP', 'AUSTRALIAN', 'UK_IMPERIAL', 'METRIC');

-- CreateEnum
CREATE TYPE "SourceKind" AS ENUM ('PUBLISHED', 'WRITER', 'COMMON_PRACTICE', 'INVENTED');

-- CreateEnum
CREATE TYPE "MeasuredAs" AS ENUM ('AS_BOUGHT', 'READY');

-- CreateEnum
CREATE TYPE "ScalingRule" AS ENUM ('PROPORTIONAL', 'PER_BATCH', 'POWER', 'TO_TASTE');

-- CreateEnum
CREATE TYPE "Attention" AS ENUM ('HANDS_ON', 'UNATTENDED');

-- CreateEnum
CREATE TYPE "StepGrowth" AS ENUM ('FIXED', 'PER_BATCH', 'PER_LOAD');

-- CreateEnum
CREATE TYPE "RouteKind" AS ENUM ('MAKE', 'BUY');

-- CreateEnum
CREATE TYPE "StoragePlace" AS ENUM ('FRIDGE', 'FREEZER', 'ROOM');

-- CreateEnum
CREATE TYPE "KeepingCount" AS ENUM ('DAYS', 'HOURS');

-- CreateEnum
CREATE TYPE "KeepingPurpose" AS ENUM ('SAFETY', 'QUALITY');

-- CreateEnum
CREATE TYPE "RuleAudience" AS ENUM ('HOUSEHOLD', 'FOOD_SERVICE', 'ANY');

-- CreateTable
CREATE TABLE "publishers" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "slug" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "publishers_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "foods" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "slug" TEXT NOT NULL,
    "aisle" TEXT NOT NULL,
    "shopped_by" "Dimension" NOT NULL,
    "ndb_no" TEXT,
    "keeps_as" TEXT,
    "always_there" BOOLEAN NOT NULL,
    "densities" JSONB NOT NULL,
    "measures" JSONB NOT NULL,
    "parts" JSONB NOT NULL,
    "edible" JSONB NOT NULL,
    "yields" JSONB NOT NULL,
    "allergens" JSONB NOT NULL,
    "diets" JSONB NOT NULL,
    "nutrients" JSONB,
    "keeping" JSONB NOT NULL,
    "content_hash" TEXT NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "foods_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "food_words" (
    "food_id" UUID NOT NULL,
    "entry" INTEGER NOT NULL,
    "place" INTEGER NOT NULL,
    "language" TEXT NOT NULL,
    "region" TEXT,
    "text" TEXT NOT NULL,
    "folded" TEXT NOT NULL,

    CONSTRAINT "food_words_pkey" PRIMARY KEY ("food_id","entry","place")
);

-- CreateTable
CREATE TABLE "packs" (
    "food_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "content_low" TEXT NOT NULL,
    "content_high" TEXT NOT NULL,
    "content_unit" TEXT NOT NULL,
    "price_amount" TEXT,
    "price_currency" TEXT,
    "region" TEXT,
    "seen" DATE NOT NULL,
    "source_kind" "SourceKind" NOT NULL,
    "source_title" TEXT NOT NULL,
    "source_section" TEXT,

    CONSTRAINT "packs_pkey" PRIMARY KEY ("food_id","position")
);

-- CreateTable
CREATE TABLE "component_drafts" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "slug" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "yield_low" TEXT NOT NULL,
    "yield_high" TEXT NOT NULL,
    "yield_unit" TEXT NOT NULL,
    "yield_source_kind" "SourceKind" NOT NULL,
    "yield_source_title" TEXT NOT NULL,
    "yield_source_section" TEXT,
    "batch_min" TEXT NOT NULL,
    "batch_max" TEXT,
    "batch_increment" TEXT,
    "densities" JSONB NOT NULL,
    "measures" JSONB NOT NULL,
    "keeps_as" TEXT,
    "keeping" JSONB NOT NULL,
    "cautions" TEXT[],
    "version" INTEGER NOT NULL DEFAULT 1,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "component_drafts_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateTable
CREATE TABLE "component_routes" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "component_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "kind" "RouteKind" NOT NULL,
    "keeps_as" TEXT,
    "keeping" JSONB NOT NULL,

    CONSTRAINT "component_routes_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateTable
CREATE TABLE "plans" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "slug" TEXT NOT NULL,
    "last_revision" INTEGER NOT NULL DEFAULT 0,
    "newest_revision_id" UUID,
    "newest_published_at" TIMESTAMPTZ(3),
    "newest_title_words" TEXT[] DEFAULT ARRAY[]::TEXT[],

    CONSTRAINT "plans_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateTable
CREATE TABLE "plan_drafts" (
    "publisher_id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "title" TEXT NOT NULL,
    "summary" TEXT,
    "locale" TEXT NOT NULL,
    "measures" "MeasureSystem" NOT NULL,
    "serves" INTEGER NOT NULL,
    "cooks" INTEGER NOT NULL,
    "appliances" JSONB NOT NULL,
    "promised_minutes" DOUBLE PRECISION,
    "claims" TEXT[],
    "version" INTEGER NOT NULL DEFAULT 1,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "plan_drafts_pkey" PRIMARY KEY ("publisher_id","plan_id")
);

-- CreateTable
CREATE TABLE "draft_meals" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "plan_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "slug" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "day" INTEGER NOT NULL,
    "serves" INTEGER NOT NULL,

    CONSTRAINT "draft_meals_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateTable
CREATE TABLE "draft_lines" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "component_id" UUID,
    "route_id" UUID,
    "meal_id" UUID,
    "position" INTEGER NOT NULL,
    "line_id" TEXT NOT NULL,
    "food" TEXT,
    "food_part" TEXT,
    "component" TEXT,
    "written" TEXT NOT NULL,
    "amount_low" TEXT,
    "amount_high" TEXT,
    "amount_unit" TEXT,
    "extra" BOOLEAN NOT NULL,
    "measured" "MeasuredAs" NOT NULL,
    "form" TEXT,
    "preparation" TEXT,
    "rule" "ScalingRule" NOT NULL,
    "exponent" DOUBLE PRECISION,
    "optional" BOOLEAN NOT NULL,
    "mark" TEXT,

    CONSTRAINT "draft_lines_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateTable
CREATE TABLE "draft_swaps" (
    "publisher_id" UUID NOT NULL,
    "line_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "food" TEXT NOT NULL,
    "ratio" TEXT NOT NULL,
    "diets" TEXT[],
    "note" TEXT,

    CONSTRAINT "draft_swaps_pkey" PRIMARY KEY ("publisher_id","line_id","position")
);

-- CreateTable
CREATE TABLE "draft_steps" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "component_id" UUID,
    "route_id" UUID,
    "meal_id" UUID,
    "position" INTEGER NOT NULL,
    "step_id" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "minutes" DOUBLE PRECISION NOT NULL,
    "attention" "Attention" NOT NULL,
    "appliance" TEXT,
    "temperature_c" DOUBLE PRECISION,
    "after" TEXT[],
    "grows" "StepGrowth" NOT NULL,
    "load_batches" TEXT,
    "min_wait" DOUBLE PRECISION NOT NULL,
    "max_wait" DOUBLE PRECISION,
    "evening_before" BOOLEAN NOT NULL,
    "lines" TEXT[],

    CONSTRAINT "draft_steps_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateTable
CREATE TABLE "revisions" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "plan_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    "serves" INTEGER NOT NULL,
    "locale" TEXT NOT NULL,
    "published_at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawn_at" TIMESTAMPTZ(3),
    "checksum" TEXT NOT NULL,
    "format" INTEGER NOT NULL,
    "document" JSONB NOT NULL,

    CONSTRAINT "revisions_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateTable
CREATE TABLE "revision_foods" (
    "publisher_id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "food" TEXT NOT NULL,

    CONSTRAINT "revision_foods_pkey" PRIMARY KEY ("publisher_id","revision_id","food")
);

-- CreateTable
CREATE TABLE "revision_components" (
    "publisher_id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "component" TEXT NOT NULL,
    "published_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "revision_components_pkey" PRIMARY KEY ("publisher_id","revision_id","component")
);

-- CreateTable
CREATE TABLE "keeping_rules" (
    "id" TEXT NOT NULL,
    "keeps_as" TEXT NOT NULL,
    "place" "StoragePlace" NOT NULL,
    "days" DOUBLE PRECISION NOT NULL,
    "days_from" DOUBLE PRECISION,
    "counts" "KeepingCount" NOT NULL,
    "first_day" INTEGER NOT NULL,
    "printed" TEXT NOT NULL,
    "purpose" "KeepingPurpose" NOT NULL,
    "audience" "RuleAudience" NOT NULL,
    "region" TEXT NOT NULL,
    "condition" TEXT,
    "temperature" TEXT,
    "in_force_from" DATE,
    "in_force_to" DATE,
    "publisher" TEXT NOT NULL,
    "note" TEXT,
    "source_kind" "SourceKind" NOT NULL,
    "source_title" TEXT NOT NULL,
    "source_section" TEXT,
    "content_hash" TEXT NOT NULL,

    CONSTRAINT "keeping_rules_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "publishers_slug_key" ON "publishers"("slug");

-- CreateIndex
CREATE UNIQUE INDEX "foods_slug_key" ON "foods"("slug");

-- CreateIndex
CREATE INDEX "foods_aisle_slug_idx" ON "foods"("aisle", "slug");

-- CreateIndex
CREATE INDEX "food_words_folded_idx" ON "food_words"("folded");

-- CreateIndex
CREATE UNIQUE INDEX "component_drafts_publisher_id_slug_key" ON "component_drafts"("publisher_id", "slug");

-- CreateIndex
CREATE UNIQUE INDEX "component_routes_publisher_id_component_id_position_key" ON "component_routes"("publisher_id", "component_id", "position");

-- CreateIndex
CREATE INDEX "plans_newest_published_at_newest_revision_id_idx" ON "plans"("newest_published_at" DESC, "newest_revision_id");

-- CreateIndex
CREATE INDEX "plans_publisher_id_newest_published_at_newest_revision_id_idx" ON "plans"("publisher_id", "newest_published_at" DESC, "newest_revision_id");

-- CreateIndex
CREATE INDEX "plans_newest_revision_id_idx" ON "plans"("newest_revision_id");

-- CreateIndex
CREATE INDEX "plans_newest_title_words_idx" ON "plans" USING GIN ("newest_title_words");

-- CreateIndex
CREATE UNIQUE INDEX "plans_publisher_id_slug_key" ON "plans"("publisher_id", "slug");

-- CreateIndex
CREATE UNIQUE INDEX "draft_meals_publisher_id_plan_id_position_key" ON "draft_meals"("publisher_id", "plan_id", "position");

-- CreateIndex
CREATE INDEX "draft_lines_publisher_id_component_id_idx" ON "draft_lines"("publisher_id", "component_id");

-- CreateIndex
CREATE INDEX "draft_lines_publisher_id_route_id_idx" ON "draft_lines"("publisher_id", "route_id");

-- CreateIndex
CREATE INDEX "draft_lines_publisher_id_meal_id_idx" ON "draft_lines"("publisher_id", "meal_id");

-- CreateIndex
CREATE INDEX "draft_steps_publisher_id_component_id_idx" ON "draft_steps"("publisher_id", "component_id");

-- CreateIndex
CREATE INDEX "draft_steps_publisher_id_route_id_idx" ON "draft_steps"("publisher_id", "route_id");

-- CreateIndex
CREATE INDEX "draft_steps_publisher_id_meal_id_idx" ON "draft_steps"("publisher_id", "meal_id");

-- CreateIndex
CREATE INDEX "revisions_id_idx" ON "revisions"("id");

-- CreateIndex
CREATE UNIQUE INDEX "revisions_publisher_id_plan_id_revision_key" ON "revisions"("publisher_id", "plan_id", "revision");

-- CreateIndex
CREATE INDEX "revision_foods_food_revision_id_idx" ON "revision_foods"("food", "revision_id");

-- CreateIndex
CREATE INDEX "revision_components_publisher_id_component_published_at_rev_idx" ON "revision_components"("publisher_id", "component", "published_at" DESC, "revision_id");

-- CreateIndex
CREATE INDEX "revision_components_component_revision_id_idx" ON "revision_components"("component", "revision_id");

-- CreateIndex
CREATE INDEX "keeping_rules_in_force_from_in_force_to_idx" ON "keeping_rules"("in_force_from", "in_force_to");

-- AddForeignKey
ALTER TABLE "food_words" ADD CONSTRAINT "food_words_food_id_fkey" FOREIGN KEY ("food_id") REFERENCES "foods"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "packs" ADD CONSTRAINT "packs_food_id_fkey" FOREIGN KEY ("food_id") REFERENCES "foods"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "component_drafts" ADD CONSTRAINT "component_drafts_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "component_routes" ADD CONSTRAINT "component_routes_publisher_id_component_id_fkey" FOREIGN KEY ("publisher_id", "component_id") REFERENCES "component_drafts"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plans" ADD CONSTRAINT "plans_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_drafts" ADD CONSTRAINT "plan_drafts_publisher_id_plan_id_fkey" FOREIGN KEY ("publisher_id", "plan_id") REFERENCES "plans"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft_meals" ADD CONSTRAINT "draft_meals_publisher_id_plan_id_fkey" FOREIGN KEY ("publisher_id", "plan_id") REFERENCES "plan_drafts"("publisher_id", "plan_id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft_lines" ADD CONSTRAINT "draft_lines_publisher_id_component_id_fkey" FOREIGN KEY ("publisher_id", "component_id") REFERENCES "component_drafts"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft_lines" ADD CONSTRAINT "draft_lines_publisher_id_route_id_fkey" FOREIGN KEY ("publisher_id", "route_id") REFERENCES "component_routes"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft_lines" ADD CONSTRAINT "draft_lines_publisher_id_meal_id_fkey" FOREIGN KEY ("publisher_id", "meal_id") REFERENCES "draft_meals"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft_swaps" ADD CONSTRAINT "draft_swaps_publisher_id_line_id_fkey" FOREIGN KEY ("publisher_id", "line_id") REFERENCES "draft_lines"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft_steps" ADD CONSTRAINT "draft_steps_publisher_id_component_id_fkey" FOREIGN KEY ("publisher_id", "component_id") REFERENCES "component_drafts"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft_steps" ADD CONSTRAINT "draft_steps_publisher_id_route_id_fkey" FOREIGN KEY ("publisher_id", "route_id") REFERENCES "component_routes"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft_steps" ADD CONSTRAINT "draft_steps_publisher_id_meal_id_fkey" FOREIGN KEY ("publisher_id", "meal_id") REFERENCES "draft_meals"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "revisions" ADD CONSTRAINT "revisions_publisher_id_plan_id_fkey" FOREIGN KEY ("publisher_id", "plan_id") REFERENCES "plans"("publisher_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "revision_foods" ADD CONSTRAINT "revision_foods_publisher_id_revision_id_fkey" FOREIGN KEY ("publisher_id", "revision_id") REFERENCES "revisions"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "revision_components" ADD CONSTRAINT "revision_components_publisher_id_revision_id_fkey" FOREIGN KEY ("publisher_id", "revision_id") REFERENCES "revisions"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;
