-- AlterTable
ALTER TABLE "revisions" ADD COLUMN     "meaning" INTEGER;
