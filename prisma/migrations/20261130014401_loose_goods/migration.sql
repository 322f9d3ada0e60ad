-- AlterTable
ALTER TABLE "listed_packs" ADD COLUMN     "loose" JSONB;

-- AlterTable
ALTER TABLE "packs" ADD COLUMN     "loose" JSONB;

-- AlterTable
ALTER TABLE "staged_prices" ADD COLUMN     "loose" JSONB;
