-- CreateTable
CREATE TABLE "revision_reviews" (
    "publisher_id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "checksum" TEXT NOT NULL,
    "differences" JSONB NOT NULL,
    "less_safe" BOOLEAN NOT NULL,
    "changed_at" TIMESTAMPTZ(3) NOT NULL,
    "reviewed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "revision_reviews_pkey" PRIMARY KEY ("publisher_id","revision_id")
);

-- CreateIndex
CREATE INDEX "revision_reviews_publisher_id_changed_at_idx" ON "revision_reviews"("publisher_id", "changed_at");

-- AddForeignKey
ALTER TABLE "revision_reviews" ADD CONSTRAINT "revision_reviews_publisher_id_revision_id_fkey" FOREIGN KEY ("publisher_id", "revision_id") REFERENCES "revisions"("publisher_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
