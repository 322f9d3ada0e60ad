-- AlterTable
ALTER TABLE "draft_meals" ADD COLUMN     "at" TEXT;
