-- AlterTable
ALTER TABLE "draft_lines" ADD COLUMN     "each" JSONB;
