-- AlterTable
ALTER TABLE "draft_steps" ADD COLUMN     "leaves" TEXT,
ADD COLUMN     "wash_minutes" DOUBLE PRECISION;
