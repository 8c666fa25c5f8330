-- A message changes fewer pages: the least that it costs is what it writes. What
-- waits to be said is a small table of its own, what was said another; what is
-- expected of a house stands with the house; indexes that another one answers
-- for are gone. Foreign keys are off while this runs and are looked through
-- before it is kept.

CREATE TEMP TABLE was_site AS SELECT * FROM site;
CREATE TEMP TABLE waits AS SELECT * FROM outbox WHERE state IN ('ready', 'sending');
DROP TABLE site;

-- Houses, and what each one's last report leaves to expect. Of a record that is
-- joined to another, that stands with the other.
CREATE TABLE site (
  id       INTEGER PRIMARY KEY,
  line     TEXT NOT NULL,                   -- as shown
  key      TEXT NOT NULL,                   -- whole street line, one spelling
  loose    TEXT NOT NULL,                   -- number and bare street name: what near-duplicates share
  street   TEXT NOT NULL,                   -- bare street name
  town     TEXT NOT NULL DEFAULT '',
  postcode TEXT NOT NULL DEFAULT '',
  joined   INTEGER REFERENCES site(id),     -- the record this one was joined to; nothing moves, so that they can part again
  source   INTEGER,                         -- the message that first named it; a reference would want an index
  psi      REAL,                            -- house pressure by the newest judged report
  outside  REAL NOT NULL DEFAULT 0,         -- psi by which that lies outside the shop's band
  look     TEXT NOT NULL DEFAULT '',        -- day from which the calendar alone may change what follows; empty: never
  main     INTEGER NOT NULL DEFAULT 0 CHECK (main IN (0, 1)), -- the street main's pressure was read here
  visited  TEXT NOT NULL DEFAULT '',        -- day of the last visit; empty: nothing is expected
  drift    TEXT NOT NULL DEFAULT '',
  slope    REAL,                            -- psi a year
  crosses  TEXT,                            -- the day on which the trend leaves the band
  rank     INTEGER,                         -- of the gravest finding: 0 now, 1 soon, 2 watch, 3 note
  finding  TEXT NOT NULL DEFAULT ''         -- its code
) STRICT;
INSERT INTO site (id, line, key, loose, street, town, postcode, joined, source, psi, outside, look, main, visited, drift, slope, crosses, rank, finding)
  SELECT w.id, w.line, w.key, w.loose, w.street, w.town, w.postcode, w.joined, w.source, w.psi, w.outside, w.look, w.main,
    ifnull(o.day, ''), ifnull(o.drift, ''), o.slope, o.crosses, o.rank, ifnull(o.finding, '')
  FROM temp.was_site w LEFT JOIN outlook o ON o.site = w.id ORDER BY w.id;
DROP TABLE temp.was_site;
DROP TABLE outlook;
CREATE UNIQUE INDEX site_key ON site (loose, key, town, postcode); -- also for the houses of a number
CREATE INDEX site_street ON site (street);
CREATE INDEX site_joined ON site (joined) WHERE joined IS NOT NULL;
CREATE INDEX site_worst ON site (outside DESC) WHERE outside > 0;
CREATE INDEX site_look ON site (look) WHERE look <> '';
CREATE INDEX site_main ON site (street) WHERE main = 1; -- few houses of a street
CREATE INDEX site_postcode ON site (postcode) WHERE postcode <> '';
CREATE INDEX site_drift ON site (crosses) WHERE drift IN ('rising', 'falling');
CREATE INDEX site_rank ON site (rank, visited) WHERE rank <= 1; -- few

-- The first message of a thread is found by its own key.
DROP INDEX message_thread;
CREATE INDEX message_thread ON message (channel, thread) WHERE thread <> ts OR key <> channel || '/' || ts;
DROP INDEX message_worded; -- retention goes through the messages once a night

-- The numbers of a person's newest reports, the newest first, as JSON.
ALTER TABLE person ADD COLUMN told TEXT NOT NULL DEFAULT '[]';
UPDATE person SET told = (SELECT json_group_array(message) FROM (SELECT message FROM report WHERE author = person.id ORDER BY at DESC, message DESC LIMIT 16));
DROP INDEX report_author;

DROP INDEX follow_up_due;
DROP INDEX follow_up_owner;
CREATE INDEX follow_up_due ON follow_up (owner, due) WHERE state = 'open';

-- What was said to the team, or given up.
CREATE TABLE outbox_done (
  id      INTEGER PRIMARY KEY,
  key     TEXT NOT NULL UNIQUE,
  channel TEXT NOT NULL,
  thread  TEXT NOT NULL,
  body    TEXT NOT NULL,
  after   INTEGER NOT NULL,
  state   TEXT NOT NULL CHECK (state IN ('sent', 'dead')),
  tries   INTEGER NOT NULL,
  since   INTEGER NOT NULL,                 -- when it was sent or given up
  ref     TEXT NOT NULL,                    -- the platform's name for the post
  error   TEXT NOT NULL
) STRICT;
INSERT INTO outbox_done SELECT id, key, channel, thread, body, after, state, tries, since, ref, error FROM outbox WHERE state IN ('sent', 'dead') ORDER BY id;
CREATE INDEX outbox_done_ref ON outbox_done (channel, ref) WHERE ref <> '';
CREATE INDEX outbox_done_dead ON outbox_done (id) WHERE state = 'dead'; -- few

-- What is to be said to the team, committed with the rows it speaks of. It is
-- nearly always a handful of rows, and is read as a whole.
DROP TABLE outbox;
CREATE TABLE outbox (
  id      INTEGER PRIMARY KEY,              -- one that no row of outbox_done has
  key     TEXT NOT NULL,
  channel TEXT NOT NULL,
  thread  TEXT NOT NULL,
  body    TEXT NOT NULL,
  after   INTEGER NOT NULL,                 -- not to be sent before
  state   TEXT NOT NULL DEFAULT 'ready' CHECK (state IN ('ready', 'sending')),
  tries   INTEGER NOT NULL DEFAULT 0,
  since   INTEGER NOT NULL,                 -- when it came into its state
  error   TEXT NOT NULL DEFAULT ''
) STRICT;
INSERT INTO outbox SELECT id, key, channel, thread, body, after, state, tries, since, error FROM temp.waits ORDER BY id;
DROP TABLE temp.waits;
-- By the number in the key first, so that the posts of one message lie together.
CREATE UNIQUE INDEX outbox_key ON outbox (CAST(substr(key, instr(key, ':') + 1) AS INTEGER), key);
-- What was said once is not said again.
CREATE TRIGGER outbox_once BEFORE INSERT ON outbox WHEN EXISTS (SELECT 1 FROM outbox_done WHERE key = new.key) BEGIN
  SELECT RAISE(IGNORE);
END;
