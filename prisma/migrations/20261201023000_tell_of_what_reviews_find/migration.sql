-- A review adds a change and leaves its revision as it is. Whoever caches or follows the list of changes hears of that, too.

CREATE FUNCTION "tell_of_new_changes"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF (SELECT count(*) FROM (SELECT 1 FROM added LIMIT 101) AS few) > 100 THEN
    PERFORM pg_notify('prepwright_changes', 'plans');
  ELSE
    PERFORM pg_notify('prepwright_changes', 'plan ' || b.slug || '/' || p.slug)
      FROM (SELECT DISTINCT publisher_id, revision_id FROM added) AS a
      JOIN revisions r ON r.publisher_id = a.publisher_id AND r.id = a.revision_id
      JOIN plans p ON p.publisher_id = r.publisher_id AND p.id = r.plan_id
      JOIN publishers b ON b.id = p.publisher_id;
  END IF;
  RETURN NULL;
END
$$;

CREATE TRIGGER "changes_tell" AFTER INSERT ON "changes" REFERENCING NEW TABLE AS added
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_new_changes"();
