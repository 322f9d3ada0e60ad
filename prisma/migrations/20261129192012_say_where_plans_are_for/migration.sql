-- AlterTable
ALTER TABLE "plan_drafts" ADD COLUMN     "region" TEXT;

-- AlterTable
ALTER TABLE "publishers" ADD COLUMN     "currency" TEXT,
ADD COLUMN     "description" TEXT,
ADD COLUMN     "languages" TEXT[] DEFAULT ARRAY[]::TEXT[],
ADD COLUMN     "region" TEXT;
