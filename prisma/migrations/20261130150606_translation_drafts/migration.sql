-- AlterEnum
ALTER TYPE "DraftKind" ADD VALUE 'TRANSLATION';

-- CreateTable
CREATE TABLE "translation_drafts" (
    "publisher_id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "of_slug" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "value" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "document_text" TEXT,
    "document_format" "DocumentFormat",
    "content_hash" TEXT,
    "updated_by" TEXT,

    CONSTRAINT "translation_drafts_pkey" PRIMARY KEY ("publisher_id","slug")
);

-- CreateIndex
CREATE INDEX "translation_drafts_publisher_id_of_slug_idx" ON "translation_drafts"("publisher_id", "of_slug");

-- AddForeignKey
ALTER TABLE "translation_drafts" ADD CONSTRAINT "translation_drafts_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;
