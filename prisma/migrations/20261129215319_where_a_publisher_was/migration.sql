-- AlterTable
ALTER TABLE "revisions" ADD COLUMN     "publisher_currency" TEXT,
ADD COLUMN     "publisher_region" TEXT;
