-- CreateTable
CREATE TABLE "changes" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "position" BIGINT,
    "kind" TEXT NOT NULL,
    "revision_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "changes_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateIndex
CREATE INDEX "changes_position_idx" ON "changes"("position");

-- CreateIndex
CREATE INDEX "changes_publisher_id_position_idx" ON "changes"("publisher_id", "position");

-- AddForeignKey
ALTER TABLE "changes" ADD CONSTRAINT "changes_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "changes" ADD CONSTRAINT "changes_publisher_id_revision_id_fkey" FOREIGN KEY ("publisher_id", "revision_id") REFERENCES "revisions"("publisher_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;


-- What was published and withdrawn before changes were written down.
INSERT INTO "changes" ("publisher_id", "position", "kind", "revision_id", "at")
  SELECT "publisher_id", row_number() OVER (ORDER BY "at", "kind", "id"), "kind", "id", "at"
  FROM (
    SELECT "publisher_id", "id", "published_at" AS "at",
      CASE WHEN "change_note" IS NULL THEN 'PLAN_PUBLISHED' ELSE 'PLAN_CORRECTED' END AS "kind"
    FROM "revisions"
    UNION ALL
    SELECT "publisher_id", "id", "withdrawn_at", 'PLAN_WITHDRAWN' FROM "revisions" WHERE "withdrawn_at" IS NOT NULL
  ) "before";

CREATE SEQUENCE "changes_position_seq" AS BIGINT;
SELECT setval('changes_position_seq', (SELECT count(*) FROM "changes") + 1, false);

-- Runs when the transaction commits, after everything else it waits for. From here to the end of the commit no other
-- transaction gets a position, so whoever has read up to a position will never miss a lower one, and since nothing is
-- waited for while the lock is held, nothing can wait in a circle.
CREATE FUNCTION "give_change_its_position"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended('position of changes', 0));
  UPDATE "changes" SET "position" = nextval('changes_position_seq')
    WHERE "publisher_id" = NEW."publisher_id" AND "id" = NEW."id";
  RETURN NULL;
END
$$;

-- Rows that come with a position are restored from a dump: they keep it.
CREATE CONSTRAINT TRIGGER "changes_follow_commits"
  AFTER INSERT ON "changes" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (NEW."position" IS NULL) EXECUTE FUNCTION "give_change_its_position"();
