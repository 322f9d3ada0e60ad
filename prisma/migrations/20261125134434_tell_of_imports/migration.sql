-- AlterTable
ALTER TABLE "webhook_deliveries" ADD COLUMN     "run_id" UUID,
ALTER COLUMN "change_id" DROP NOT NULL;

-- CreateIndex
CREATE INDEX "webhook_deliveries_run_id_idx" ON "webhook_deliveries"("run_id");

-- CreateIndex
CREATE UNIQUE INDEX "webhook_deliveries_publisher_id_webhook_id_run_id_key" ON "webhook_deliveries"("publisher_id", "webhook_id", "run_id");

-- AddForeignKey
ALTER TABLE "webhook_deliveries" ADD CONSTRAINT "webhook_deliveries_run_id_fkey" FOREIGN KEY ("run_id") REFERENCES "import_runs"("id") ON DELETE CASCADE ON UPDATE CASCADE;


-- What schema.prisma has no words for.
ALTER TABLE "webhook_deliveries"
  ADD CONSTRAINT "webhook_deliveries_of_one_thing" CHECK (("change_id" IS NULL) <> ("run_id" IS NULL));
