-- AlterEnum
ALTER TYPE "FeedKind" ADD VALUE 'CATALOGUE';

-- AlterTable
ALTER TABLE "catalogue_editions" ADD COLUMN     "shipped" BOOLEAN NOT NULL DEFAULT false,
ALTER COLUMN "content_hash" DROP NOT NULL;

-- AlterTable
ALTER TABLE "catalogue_foods" ADD COLUMN     "edition" TEXT;

-- Until now there was one edition, the one that comes with the program.
UPDATE "catalogue_editions" SET "shipped" = true;
UPDATE "catalogue_foods" SET "edition" = (SELECT "code" FROM "catalogue_editions" LIMIT 1);
ALTER TABLE "catalogue_foods" ALTER COLUMN "edition" SET NOT NULL;

-- CreateIndex
CREATE INDEX "catalogue_foods_edition_idx" ON "catalogue_foods"("edition");

-- AddForeignKey
ALTER TABLE "catalogue_foods" ADD CONSTRAINT "catalogue_foods_edition_fkey" FOREIGN KEY ("edition") REFERENCES "catalogue_editions"("code") ON DELETE RESTRICT ON UPDATE CASCADE;
