-- CreateEnum
CREATE TYPE "FeedKind" AS ENUM ('DOCUMENTS', 'FOODS', 'PRICES', 'RECIPES');

-- CreateEnum
CREATE TYPE "RunKind" AS ENUM ('LOAD', 'DRY_RUN', 'UNDO');

-- CreateEnum
CREATE TYPE "RunState" AS ENUM ('QUEUED', 'RUNNING', 'DONE', 'STOPPED', 'FAILED', 'CANCELLED');

-- CreateTable
CREATE TABLE "feeds" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "owner" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "kind" "FeedKind" NOT NULL,
    "settings" JSONB NOT NULL,
    "cron" TEXT,
    "zone" TEXT NOT NULL,
    "enabled" BOOLEAN NOT NULL DEFAULT true,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "feeds_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "import_files" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "feed_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "size" BIGINT NOT NULL,
    "received_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "import_files_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "import_file_pieces" (
    "file_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "bytes" BYTEA NOT NULL,

    CONSTRAINT "import_file_pieces_pkey" PRIMARY KEY ("file_id","position")
);

-- CreateTable
CREATE TABLE "import_runs" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "feed_id" UUID NOT NULL,
    "file_id" UUID,
    "kind" "RunKind" NOT NULL,
    "state" "RunState" NOT NULL DEFAULT 'QUEUED',
    "asked_by" TEXT NOT NULL,
    "force" BOOLEAN NOT NULL DEFAULT false,
    "undoes" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "started_at" TIMESTAMPTZ(3),
    "ended_at" TIMESTAMPTZ(3),
    "heartbeat_at" TIMESTAMPTZ(3),
    "worker" TEXT,
    "rows_read" INTEGER NOT NULL DEFAULT 0,
    "last_line" INTEGER NOT NULL DEFAULT 0,
    "created" INTEGER NOT NULL DEFAULT 0,
    "changed" INTEGER NOT NULL DEFAULT 0,
    "unchanged" INTEGER NOT NULL DEFAULT 0,
    "quarantined" INTEGER NOT NULL DEFAULT 0,
    "repeated" INTEGER NOT NULL DEFAULT 0,
    "problems" JSONB NOT NULL DEFAULT '[]',

    CONSTRAINT "import_runs_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "quarantined_rows" (
    "run_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "part" INTEGER NOT NULL DEFAULT 0,
    "raw" TEXT NOT NULL,
    "problems" JSONB NOT NULL,
    "offer" TEXT,
    "settled_at" TIMESTAMPTZ(3),
    "settled_by" TEXT,

    CONSTRAINT "quarantined_rows_pkey" PRIMARY KEY ("run_id","line","part")
);

-- CreateTable
CREATE TABLE "import_changes" (
    "run_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "before" JSONB,
    "after" JSONB,

    CONSTRAINT "import_changes_pkey" PRIMARY KEY ("run_id","key")
);

-- CreateTable
CREATE TABLE "staged_prices" (
    "run_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "food" TEXT NOT NULL,
    "pack_id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "content_low" TEXT NOT NULL,
    "content_high" TEXT NOT NULL,
    "content_unit" TEXT NOT NULL,
    "price_amount" TEXT,
    "price_currency" TEXT,
    "region" TEXT,
    "seen" DATE NOT NULL,

    CONSTRAINT "staged_prices_pkey" PRIMARY KEY ("run_id","line")
);

-- CreateTable
CREATE TABLE "listed_packs" (
    "feed_id" UUID NOT NULL,
    "food" TEXT NOT NULL,
    "pack_id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "content_low" TEXT NOT NULL,
    "content_high" TEXT NOT NULL,
    "content_unit" TEXT NOT NULL,
    "price_amount" TEXT,
    "price_currency" TEXT,
    "region" TEXT,
    "seen" DATE NOT NULL,
    "made_by" UUID NOT NULL,
    "written_by" UUID NOT NULL,

    CONSTRAINT "listed_packs_pkey" PRIMARY KEY ("feed_id","food","pack_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "feeds_owner_slug_key" ON "feeds"("owner", "slug");

-- CreateIndex
CREATE INDEX "import_files_feed_id_sha256_idx" ON "import_files"("feed_id", "sha256");

-- CreateIndex
CREATE INDEX "import_runs_feed_id_created_at_id_idx" ON "import_runs"("feed_id", "created_at" DESC, "id");

-- CreateIndex
CREATE INDEX "listed_packs_food_idx" ON "listed_packs"("food");

-- AddForeignKey
ALTER TABLE "import_files" ADD CONSTRAINT "import_files_feed_id_fkey" FOREIGN KEY ("feed_id") REFERENCES "feeds"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "import_file_pieces" ADD CONSTRAINT "import_file_pieces_file_id_fkey" FOREIGN KEY ("file_id") REFERENCES "import_files"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "import_runs" ADD CONSTRAINT "import_runs_feed_id_fkey" FOREIGN KEY ("feed_id") REFERENCES "feeds"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "import_runs" ADD CONSTRAINT "import_runs_file_id_fkey" FOREIGN KEY ("file_id") REFERENCES "import_files"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "quarantined_rows" ADD CONSTRAINT "quarantined_rows_run_id_fkey" FOREIGN KEY ("run_id") REFERENCES "import_runs"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "import_changes" ADD CONSTRAINT "import_changes_run_id_fkey" FOREIGN KEY ("run_id") REFERENCES "import_runs"("id") ON DELETE CASCADE ON UPDATE CASCADE;
