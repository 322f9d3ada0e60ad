-- AlterTable
ALTER TABLE "plan_drafts" ADD COLUMN     "dates" JSONB;
