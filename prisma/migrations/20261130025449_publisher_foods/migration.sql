-- AlterEnum
ALTER TYPE "DraftKind" ADD VALUE 'FOOD';

-- CreateTable
CREATE TABLE "publisher_foods" (
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

    CONSTRAINT "publisher_foods_pkey" PRIMARY KEY ("publisher_id","slug")
);

-- AddForeignKey
ALTER TABLE "publisher_foods" ADD CONSTRAINT "publisher_foods_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE CASCADE ON UPDATE CASCADE;
