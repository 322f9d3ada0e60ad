-- AlterTable
ALTER TABLE "draft_lines" ADD COLUMN     "eaten" TEXT;

-- AlterTable
ALTER TABLE "draft_steps" ADD COLUMN     "drains" BOOLEAN;
