-- Drafts keep the text their writer wrote, revisions say what they changed, and a withdrawal says why.

-- CreateEnum
CREATE TYPE "DraftKind" AS ENUM ('COMPONENT', 'PLAN');

-- CreateEnum
CREATE TYPE "DocumentFormat" AS ENUM ('YAML', 'JSON');

-- AlterTable
ALTER TABLE "component_drafts" ADD COLUMN     "content_hash" TEXT,
ADD COLUMN     "document_format" "DocumentFormat",
ADD COLUMN     "document_text" TEXT,
ADD COLUMN     "updated_by" TEXT;

-- AlterTable
ALTER TABLE "plan_drafts" ADD COLUMN     "content_hash" TEXT,
ADD COLUMN     "document_format" "DocumentFormat",
ADD COLUMN     "document_text" TEXT,
ADD COLUMN     "updated_by" TEXT;

-- AlterTable
ALTER TABLE "revisions" ADD COLUMN     "change_note" TEXT,
ADD COLUMN     "withdrawn_because" TEXT;

-- CreateTable
CREATE TABLE "discarded_drafts" (
    "publisher_id" UUID NOT NULL,
    "kind" "DraftKind" NOT NULL,
    "slug" TEXT NOT NULL,
    "version" INTEGER NOT NULL,

    CONSTRAINT "discarded_drafts_pkey" PRIMARY KEY ("publisher_id","kind","slug")
);

-- AddForeignKey
ALTER TABLE "discarded_drafts" ADD CONSTRAINT "discarded_drafts_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- What schema.prisma has no words for.
ALTER TABLE "component_drafts"
  ADD CONSTRAINT "component_drafts_whole_document" CHECK (num_nonnulls("document_text", "document_format", "content_hash") IN (0, 3));
ALTER TABLE "plan_drafts"
  ADD CONSTRAINT "plan_drafts_whole_document" CHECK (num_nonnulls("document_text", "document_format", "content_hash") IN (0, 3));
ALTER TABLE "revisions"
  ADD CONSTRAINT "revisions_reason_of_withdrawal" CHECK ("withdrawn_because" IS NULL OR "withdrawn_at" IS NOT NULL);

-- A withdrawal has a reason now, and what readers were told once stays told.
CREATE OR REPLACE FUNCTION "refuse_to_change_a_revision"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN
    RAISE EXCEPTION 'revision % is published: it may be withdrawn, never deleted', OLD.id USING ERRCODE = 'restrict_violation';
  END IF;
  -- Everything but the columns that may change, whatever columns are added later.
  IF to_jsonb(NEW) - '{withdrawn_at,withdrawn_because}'::text[]
    IS DISTINCT FROM to_jsonb(OLD) - '{withdrawn_at,withdrawn_because}'::text[] THEN
    RAISE EXCEPTION 'revision % is published: nothing but its withdrawal may change', OLD.id USING ERRCODE = 'restrict_violation';
  END IF;
  IF OLD.withdrawn_at IS NOT NULL
    AND (NEW.withdrawn_at, NEW.withdrawn_because) IS DISTINCT FROM (OLD.withdrawn_at, OLD.withdrawn_because) THEN
    RAISE EXCEPTION 'revision % was withdrawn: that stays as it is', OLD.id USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN NEW;
END
$$;
