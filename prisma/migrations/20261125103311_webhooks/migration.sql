-- CreateTable
CREATE TABLE "webhooks" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "url" TEXT NOT NULL,
    "kinds" TEXT[],
    "secret" TEXT NOT NULL,
    "old_secret" TEXT,
    "old_secret_until" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "disabled_at" TIMESTAMPTZ(3),
    "disabled_because" TEXT,

    CONSTRAINT "webhooks_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateTable
CREATE TABLE "webhook_deliveries" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "webhook_id" UUID NOT NULL,
    "change_id" UUID NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'PENDING',
    "attempts" INTEGER NOT NULL DEFAULT 0,
    "due_at" TIMESTAMPTZ(3) NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "tried_at" TIMESTAMPTZ(3),
    "status" INTEGER,
    "error" TEXT,

    CONSTRAINT "webhook_deliveries_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateIndex
CREATE INDEX "webhooks_id_idx" ON "webhooks"("id");

-- CreateIndex
CREATE INDEX "webhook_deliveries_state_due_at_idx" ON "webhook_deliveries"("state", "due_at");

-- CreateIndex
CREATE INDEX "webhook_deliveries_publisher_id_webhook_id_created_at_id_idx" ON "webhook_deliveries"("publisher_id", "webhook_id", "created_at" DESC, "id");

-- CreateIndex
CREATE UNIQUE INDEX "webhook_deliveries_publisher_id_webhook_id_change_id_key" ON "webhook_deliveries"("publisher_id", "webhook_id", "change_id");

-- AddForeignKey
ALTER TABLE "webhooks" ADD CONSTRAINT "webhooks_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "webhook_deliveries" ADD CONSTRAINT "webhook_deliveries_publisher_id_webhook_id_fkey" FOREIGN KEY ("publisher_id", "webhook_id") REFERENCES "webhooks"("publisher_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "webhook_deliveries" ADD CONSTRAINT "webhook_deliveries_publisher_id_change_id_fkey" FOREIGN KEY ("publisher_id", "change_id") REFERENCES "changes"("publisher_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;


-- What schema.prisma has no words for.
ALTER TABLE "webhook_deliveries"
  ADD CONSTRAINT "webhook_deliveries_known_state" CHECK ("state" IN ('PENDING', 'DELIVERED', 'DEAD'));
