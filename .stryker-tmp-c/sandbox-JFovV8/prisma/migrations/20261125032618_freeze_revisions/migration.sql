-- What schema.prisma has no words for: collations, checks, and the trigger that keeps published documents as they are.

-- Slugs are ordered by their bytes, on every server, whatever its locale: pages and their cursors rest on it.
ALTER TABLE "foods" ALTER COLUMN "slug" TYPE TEXT COLLATE "C";
ALTER TABLE "foods" ALTER COLUMN "aisle" TYPE TEXT COLLATE "C";
-- So that an index finds the start of a name.
ALTER TABLE "food_words" ALTER COLUMN "folded" TYPE TEXT COLLATE "C";

ALTER TABLE "draft_lines"
  ADD CONSTRAINT "draft_lines_one_owner" CHECK (num_nonnulls("component_id", "route_id", "meal_id") = 1),
  ADD CONSTRAINT "draft_lines_one_item" CHECK (num_nonnulls("food", "component") = 1),
  ADD CONSTRAINT "draft_lines_whole_amount" CHECK (num_nonnulls("amount_low", "amount_high", "amount_unit") IN (0, 3));

ALTER TABLE "draft_steps"
  ADD CONSTRAINT "draft_steps_one_owner" CHECK (num_nonnulls("component_id", "route_id", "meal_id") = 1);

ALTER TABLE "packs"
  ADD CONSTRAINT "packs_whole_price" CHECK (num_nonnulls("price_amount", "price_currency") IN (0, 2)),
  ADD CONSTRAINT "packs_decimal_price" CHECK ("price_amount" ~ '^-?[0-9]+(\.[0-9]+)?$');

ALTER TABLE "plans"
  ADD CONSTRAINT "plans_whole_newest" CHECK (num_nonnulls("newest_revision_id", "newest_published_at") IN (0, 2));

ALTER TABLE "keeping_rules"
  ADD CONSTRAINT "keeping_rules_first_day" CHECK ("first_day" IN (0, 1));

CREATE FUNCTION "refuse_to_change_a_revision"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN
    RAISE EXCEPTION 'revision % is published: it may be withdrawn, never deleted', OLD.id USING ERRCODE = 'restrict_violation';
  END IF;
  -- Everything but the one column that may change, whatever columns are added later.
  IF to_jsonb(NEW) - 'withdrawn_at' IS DISTINCT FROM to_jsonb(OLD) - 'withdrawn_at' THEN
    RAISE EXCEPTION 'revision % is published: nothing but its withdrawal may change', OLD.id USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN NEW;
END
$$;

CREATE TRIGGER "revisions_stay_as_published"
  BEFORE UPDATE OR DELETE ON "revisions"
  FOR EACH ROW EXECUTE FUNCTION "refuse_to_change_a_revision"();
