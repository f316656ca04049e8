CREATE FUNCTION events_are_only_ever_added() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'events are only ever added';
END
$$;

CREATE TRIGGER card_event_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON card_event
FOR EACH STATEMENT EXECUTE FUNCTION events_are_only_ever_added();
