-- AlterTable
ALTER TABLE "component_drafts" ADD COLUMN     "words" JSONB;

-- AlterTable
ALTER TABLE "draft_meals" ADD COLUMN     "words" JSONB;

-- AlterTable
ALTER TABLE "plan_drafts" ADD COLUMN     "currency" TEXT,
ADD COLUMN     "words" JSONB;

-- AlterTable
ALTER TABLE "publishers" ADD COLUMN     "website" TEXT;
