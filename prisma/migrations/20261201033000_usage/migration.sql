-- Expand only: a limit of a token's own, what tokens used, and how often plans were asked for. All of it begins empty.
-- AlterTable
ALTER TABLE "access_tokens" ADD COLUMN "points_per_minute" INTEGER;

-- CreateTable
CREATE TABLE "token_usage" (
    "token_id" TEXT NOT NULL,
    "day" DATE NOT NULL,
    "requests" BIGINT NOT NULL,
    "refused" BIGINT NOT NULL,
    "points" BIGINT NOT NULL,

    CONSTRAINT "token_usage_pkey" PRIMARY KEY ("token_id","day")
);

-- CreateTable
CREATE TABLE "plan_requests" (
    "publisher_id" UUID NOT NULL,
    "day" DATE NOT NULL,
    "plan_id" UUID NOT NULL,
    "requests" BIGINT NOT NULL,

    CONSTRAINT "plan_requests_pkey" PRIMARY KEY ("publisher_id","day","plan_id")
);

-- CreateIndex
CREATE INDEX "token_usage_day_idx" ON "token_usage"("day");

-- CreateIndex
CREATE INDEX "plan_requests_day_idx" ON "plan_requests"("day");

-- AddForeignKey
ALTER TABLE "token_usage" ADD CONSTRAINT "token_usage_token_id_fkey" FOREIGN KEY ("token_id") REFERENCES "access_tokens"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "plan_requests" ADD CONSTRAINT "plan_requests_publisher_id_plan_id_fkey" FOREIGN KEY ("publisher_id", "plan_id") REFERENCES "plans"("publisher_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
