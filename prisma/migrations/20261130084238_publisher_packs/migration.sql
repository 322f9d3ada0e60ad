-- AlterEnum
ALTER TYPE "DraftKind" ADD VALUE 'PACKS';

-- CreateTable
CREATE TABLE "publisher_packs" (
    "publisher_id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "value" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "document_text" TEXT,
    "document_format" "DocumentFormat",
    "content_hash" TEXT,
    "updated_by" TEXT,
    "published" JSONB,

    CONSTRAINT "publisher_packs_pkey" PRIMARY KEY ("publisher_id","slug")
);

-- AddForeignKey
ALTER TABLE "publisher_packs" ADD CONSTRAINT "publisher_packs_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE CASCADE ON UPDATE CASCADE;
