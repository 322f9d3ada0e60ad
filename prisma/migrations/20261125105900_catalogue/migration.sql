-- CreateTable
CREATE TABLE "catalogue_editions" (
    "code" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "content_hash" TEXT NOT NULL,
    "loaded_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "catalogue_editions_pkey" PRIMARY KEY ("code")
);

-- CreateTable
CREATE TABLE "catalogue_foods" (
    "ndb_no" TEXT NOT NULL,
    "description" TEXT NOT NULL,
    "other_names" TEXT[],
    "aisle" TEXT NOT NULL,
    "nutrients" JSONB NOT NULL,
    "refuse" JSONB,
    "weights" JSONB NOT NULL,
    "length" INTEGER NOT NULL,
    "words" tsvector NOT NULL,

    CONSTRAINT "catalogue_foods_pkey" PRIMARY KEY ("ndb_no")
);

-- CreateIndex
CREATE INDEX "catalogue_foods_length_ndb_no_idx" ON "catalogue_foods"("length", "ndb_no");

-- CreateIndex
CREATE INDEX "catalogue_foods_words_idx" ON "catalogue_foods" USING GIN ("words");
