-- AlterTable
ALTER TABLE "foods" ADD COLUMN     "base_hash" TEXT,
ADD COLUMN     "shelf_stable" BOOLEAN NOT NULL DEFAULT false;

-- CreateTable
CREATE TABLE "base_food_editions" (
    "code" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "foods" INTEGER NOT NULL,
    "content_hash" TEXT NOT NULL,
    "loaded_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "base_food_editions_pkey" PRIMARY KEY ("code")
);
