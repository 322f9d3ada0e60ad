-- Every process that keeps answers in memory listens on one channel. Whoever changes what readers are told, by whatever way,
-- is heard there as the change commits: which kind of thing it was, or which plan. Readers of the channel: persistence/signals.ts.

CREATE FUNCTION "tell_of_change"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_notify('prepwright_changes', TG_ARGV[0]);
  RETURN NULL;
END
$$;

CREATE TRIGGER "publishers_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "publishers"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('publishers');

CREATE TRIGGER "foods_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "foods"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('foods');
CREATE TRIGGER "food_words_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "food_words"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('foods');
CREATE TRIGGER "packs_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "packs"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('foods');
CREATE TRIGGER "listed_packs_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "listed_packs"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('foods');
-- A listed pack names the source in the settings of its feed.
CREATE TRIGGER "feeds_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "feeds"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('foods');
CREATE TRIGGER "catalogue_foods_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "catalogue_foods"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('foods');
CREATE TRIGGER "catalogue_editions_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "catalogue_editions"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('foods');

CREATE TRIGGER "rule_sets_tell" AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON "rule_sets"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('rules');

-- Each plan by its name, so that the others stay known; of a great many at once, all.
CREATE FUNCTION "tell_of_plans"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF (SELECT count(*) FROM (SELECT 1 FROM changed LIMIT 101) AS few) > 100 THEN
    PERFORM pg_notify('prepwright_changes', 'plans');
  ELSE
    PERFORM pg_notify('prepwright_changes', 'plan ' || b.slug || '/' || p.slug)
      FROM (SELECT DISTINCT publisher_id, plan_id FROM changed) AS c
      JOIN plans p ON p.publisher_id = c.publisher_id AND p.id = c.plan_id
      JOIN publishers b ON b.id = c.publisher_id;
  END IF;
  RETURN NULL;
END
$$;

-- A plan has another newest revision only when one is added or withdrawn.
CREATE TRIGGER "revisions_tell_of_new" AFTER INSERT ON "revisions" REFERENCING NEW TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_plans"();
CREATE TRIGGER "revisions_tell_of_withdrawn" AFTER UPDATE ON "revisions" REFERENCING NEW TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_plans"();
