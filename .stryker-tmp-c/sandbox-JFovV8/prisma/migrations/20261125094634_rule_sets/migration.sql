-- Not backwards compatible: a version before this one reads the table keeping_rules, which ends here. Stop it first.
-- Published rules are kept in whole sets from now on. Every start loads the set that comes with the program.
-- AlterTable
ALTER TABLE "revisions" ADD COLUMN     "rule_set_id" UUID;

-- DropTable
DROP TABLE "keeping_rules";

-- DropEnum
DROP TYPE "KeepingCount";

-- DropEnum
DROP TYPE "KeepingPurpose";

-- DropEnum
DROP TYPE "RuleAudience";

-- DropEnum
DROP TYPE "StoragePlace";

-- CreateTable
CREATE TABLE "rule_sets" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "code" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "in_force_from" DATE NOT NULL,
    "loaded_at" TIMESTAMPTZ(3) NOT NULL,
    "checksum" TEXT NOT NULL,
    "format" INTEGER NOT NULL,
    "content" JSONB NOT NULL,

    CONSTRAINT "rule_sets_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "rule_sets_code_key" ON "rule_sets"("code");

-- CreateIndex
CREATE INDEX "rule_sets_in_force_from_loaded_at_id_idx" ON "rule_sets"("in_force_from" DESC, "loaded_at" DESC, "id");

-- AddForeignKey
ALTER TABLE "revisions" ADD CONSTRAINT "revisions_rule_set_id_fkey" FOREIGN KEY ("rule_set_id") REFERENCES "rule_sets"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

CREATE FUNCTION "refuse_to_change_a_rule_set"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'rule set % is loaded: a later set may take its place, nothing may change it', OLD.code USING ERRCODE = 'restrict_violation';
END
$$;

CREATE TRIGGER "rule_sets_stay_as_loaded"
  BEFORE UPDATE OR DELETE ON "rule_sets"
  FOR EACH ROW EXECUTE FUNCTION "refuse_to_change_a_rule_set"();
