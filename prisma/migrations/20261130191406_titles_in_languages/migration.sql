-- AlterTable
ALTER TABLE "revisions" ADD COLUMN     "titles" JSONB,
ADD COLUMN     "translated_into" TEXT[] DEFAULT ARRAY[]::TEXT[];
