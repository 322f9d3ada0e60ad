-- CreateTable
CREATE TABLE "access_tokens" (
    "id" TEXT NOT NULL,
    "publisher_id" UUID,
    "name" TEXT NOT NULL,
    "scopes" TEXT[],
    "secret_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "created_by_token" TEXT,
    "created_by_program" TEXT,
    "expires_at" TIMESTAMPTZ(3),
    "last_used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "access_tokens_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "audit_entries" (
    "id" BIGSERIAL NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "token_id" TEXT,
    "program" TEXT,
    "publisher_id" UUID,
    "action" TEXT NOT NULL,
    "subject_kind" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "before" INTEGER,
    "after" INTEGER,
    "request_id" TEXT,

    CONSTRAINT "audit_entries_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "idempotency_keys" (
    "owner" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "fingerprint" TEXT NOT NULL,
    "answer" JSONB NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "idempotency_keys_pkey" PRIMARY KEY ("owner","key")
);

-- CreateIndex
CREATE INDEX "access_tokens_publisher_id_created_at_id_idx" ON "access_tokens"("publisher_id", "created_at" DESC, "id");

-- CreateIndex
CREATE INDEX "access_tokens_created_at_id_idx" ON "access_tokens"("created_at" DESC, "id");

-- CreateIndex
CREATE INDEX "audit_entries_publisher_id_id_idx" ON "audit_entries"("publisher_id", "id" DESC);

-- CreateIndex
CREATE INDEX "idempotency_keys_created_at_idx" ON "idempotency_keys"("created_at");

-- AddForeignKey
ALTER TABLE "access_tokens" ADD CONSTRAINT "access_tokens_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "audit_entries" ADD CONSTRAINT "audit_entries_token_id_fkey" FOREIGN KEY ("token_id") REFERENCES "access_tokens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "audit_entries" ADD CONSTRAINT "audit_entries_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE RESTRICT ON UPDATE CASCADE;


-- What schema.prisma has no words for.
ALTER TABLE "access_tokens" ALTER COLUMN "id" TYPE TEXT COLLATE "C";
ALTER TABLE "audit_entries" ALTER COLUMN "token_id" TYPE TEXT COLLATE "C";

ALTER TABLE "access_tokens"
  ADD CONSTRAINT "access_tokens_one_maker" CHECK (num_nonnulls("created_by_token", "created_by_program") = 1);

ALTER TABLE "audit_entries"
  ADD CONSTRAINT "audit_entries_one_author" CHECK (num_nonnulls("token_id", "program") = 1);

CREATE FUNCTION "refuse_to_change_the_audit_trail"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'the audit trail is only added to' USING ERRCODE = 'restrict_violation';
END
$$;

CREATE TRIGGER "audit_entries_stay_as_written"
  BEFORE UPDATE OR DELETE ON "audit_entries"
  FOR EACH ROW EXECUTE FUNCTION "refuse_to_change_the_audit_trail"();

CREATE TRIGGER "audit_entries_are_not_emptied"
  BEFORE TRUNCATE ON "audit_entries"
  FOR EACH STATEMENT EXECUTE FUNCTION "refuse_to_change_the_audit_trail"();
