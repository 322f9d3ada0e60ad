-- AlterTable
ALTER TABLE "draft_swaps" ADD COLUMN     "own" JSONB;

-- AlterTable
ALTER TABLE "foods" ADD COLUMN     "single_ingredient" JSONB;
