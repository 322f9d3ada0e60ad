-- AlterTable
ALTER TABLE "webhook_deliveries" ADD COLUMN     "scheduled_id" UUID;

-- CreateTable
CREATE TABLE "scheduled_changes" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "slug" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'WAITING',
    "due_at" TIMESTAMPTZ(3) NOT NULL,
    "local_time" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "version" INTEGER,
    "document" JSONB,
    "change_note" TEXT,
    "reason" TEXT,
    "in_force" UUID,
    "revision" INTEGER,
    "problems" JSONB NOT NULL DEFAULT '[]',
    "cancelled_because" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "created_by_token" TEXT,
    "created_by_program" TEXT,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "scheduled_changes_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateIndex
CREATE INDEX "scheduled_changes_state_due_at_idx" ON "scheduled_changes"("state", "due_at");

-- CreateIndex
CREATE INDEX "scheduled_changes_publisher_id_due_at_id_idx" ON "scheduled_changes"("publisher_id", "due_at", "id");

-- CreateIndex
CREATE INDEX "scheduled_changes_publisher_id_slug_idx" ON "scheduled_changes"("publisher_id", "slug");

-- CreateIndex
CREATE UNIQUE INDEX "webhook_deliveries_publisher_id_webhook_id_scheduled_id_key" ON "webhook_deliveries"("publisher_id", "webhook_id", "scheduled_id");

-- AddForeignKey
ALTER TABLE "webhook_deliveries" ADD CONSTRAINT "webhook_deliveries_publisher_id_scheduled_id_fkey" FOREIGN KEY ("publisher_id", "scheduled_id") REFERENCES "scheduled_changes"("publisher_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "scheduled_changes" ADD CONSTRAINT "scheduled_changes_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- What the schema language cannot say. The constraint is widened: a delivery tells of one thing of three.
ALTER TABLE "webhook_deliveries" DROP CONSTRAINT "webhook_deliveries_of_one_thing";
ALTER TABLE "webhook_deliveries"
  ADD CONSTRAINT "webhook_deliveries_of_one_thing" CHECK (num_nonnulls("change_id", "run_id", "scheduled_id") = 1);
ALTER TABLE "scheduled_changes"
  ADD CONSTRAINT "scheduled_changes_one_maker" CHECK (num_nonnulls("created_by_token", "created_by_program") = 1),
  ADD CONSTRAINT "scheduled_changes_known_kind" CHECK ("kind" IN ('PUBLISH', 'WITHDRAW')),
  ADD CONSTRAINT "scheduled_changes_known_state" CHECK ("state" IN ('WAITING', 'DONE', 'KEPT_BACK', 'CANCELLED'));
