-- AlterTable
ALTER TABLE "draft_steps" ADD COLUMN     "chills" BOOLEAN,
ADD COLUMN     "growth_stated" BOOLEAN,
ADD COLUMN     "heat_up_minutes" DOUBLE PRECISION;
