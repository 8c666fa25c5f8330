-- What people said. This is the truth; the tables below follow from it.
CREATE TABLE message (
  id      INTEGER PRIMARY KEY,
  key     TEXT NOT NULL UNIQUE,             -- channel/ts, or that with what happened to it
  twin    TEXT,                             -- one gesture that may arrive under two keys
  kind    TEXT NOT NULL CHECK (kind IN ('said', 'edited', 'deleted', 'pressed', 'imported')),
  about   INTEGER REFERENCES message(id),   -- what was edited or deleted
  channel TEXT NOT NULL,
  ts      TEXT NOT NULL,                    -- the platform's name for it in its channel
  thread  TEXT NOT NULL,                    -- ts of the thread's first message; its own when it starts one
  author  TEXT NOT NULL,
  at      INTEGER NOT NULL,
  text    TEXT NOT NULL,
  voice   INTEGER NOT NULL DEFAULT 0 CHECK (voice IN (0, 1)),
  links   TEXT NOT NULL DEFAULT '[]',       -- pictures sent with it
  sum     INTEGER NOT NULL DEFAULT 0,       -- CRC-32 of who said what when; 0 when words were removed
  state   TEXT NOT NULL DEFAULT 'taken' CHECK (state IN ('taken', 'waiting', 'set_aside', 'replaced', 'retracted')),
  tries   INTEGER NOT NULL DEFAULT 0,
  error   TEXT NOT NULL DEFAULT '',
  by      INTEGER REFERENCES message(id),   -- the edit, deletion or undo that replaced or retracted it
  blank   INTEGER NOT NULL DEFAULT 0 CHECK (blank IN (0, 1)), -- its words were removed, what they meant stays
  frame   TEXT,                             -- what is held to be meant
  site    INTEGER REFERENCES site(id)       -- the house it was filed under
) STRICT;
CREATE UNIQUE INDEX message_twin ON message (twin) WHERE twin IS NOT NULL;
CREATE INDEX message_thread ON message (channel, thread);
CREATE INDEX message_about ON message (about) WHERE about IS NOT NULL;
CREATE INDEX message_by ON message (by) WHERE by IS NOT NULL;
CREATE INDEX message_site ON message (site, at) WHERE site IS NOT NULL;
CREATE INDEX message_worded ON message (at) WHERE text <> '' OR links <> '[]'; -- for retention
CREATE INDEX message_stuck ON message (state) WHERE state IN ('waiting', 'set_aside');

-- A frame put right by a person; it wins over the parser's for ever.
CREATE TABLE correction (
  message INTEGER NOT NULL REFERENCES message(id),
  by      INTEGER NOT NULL REFERENCES message(id),  -- the message that corrected it
  was     TEXT NOT NULL,                            -- the frame before
  frame   TEXT NOT NULL,
  PRIMARY KEY (message, by)
) STRICT;
CREATE INDEX correction_by ON correction (by);

CREATE TABLE person (
  id      TEXT PRIMARY KEY,
  name    TEXT NOT NULL DEFAULT '',
  lang    TEXT NOT NULL DEFAULT '',         -- chosen
  heard   TEXT NOT NULL DEFAULT '',         -- in which they last wrote, when that was plain
  site    INTEGER REFERENCES site(id),      -- last reported on
  site_at INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE TABLE site (
  id       INTEGER PRIMARY KEY,
  line     TEXT NOT NULL,                   -- as shown
  key      TEXT NOT NULL,                   -- whole street line, one spelling
  loose    TEXT NOT NULL,                   -- number and bare street name: what near-duplicates share
  street   TEXT NOT NULL,                   -- bare street name
  town     TEXT NOT NULL DEFAULT '',
  postcode TEXT NOT NULL DEFAULT '',
  joined   INTEGER REFERENCES site(id),     -- the record this one was joined to; nothing moves, so that they can part again
  source   INTEGER REFERENCES message(id),  -- the message that first named it
  psi      REAL,                            -- house pressure by the newest judged report
  outside  REAL NOT NULL DEFAULT 0,         -- psi by which that lies outside the shop's band
  look     TEXT NOT NULL DEFAULT ''         -- day from which the calendar alone may change what follows; empty: never
) STRICT;
CREATE UNIQUE INDEX site_key ON site (key, town, postcode);
CREATE INDEX site_loose ON site (loose);
CREATE INDEX site_street ON site (street);
CREATE INDEX site_joined ON site (joined) WHERE joined IS NOT NULL;
CREATE INDEX site_source ON site (source);
CREATE INDEX site_worst ON site (outside DESC) WHERE outside > 0;
CREATE INDEX site_look ON site (look) WHERE look <> '';
CREATE INDEX site_postcode ON site (postcode) WHERE postcode <> '';

-- What one message reported about one house. Its statements stand in the
-- message's frame.
CREATE TABLE report (
  id         INTEGER PRIMARY KEY,
  message    INTEGER NOT NULL UNIQUE REFERENCES message(id),
  site       INTEGER NOT NULL REFERENCES site(id),
  day        TEXT NOT NULL,
  at         INTEGER NOT NULL,
  author     TEXT NOT NULL,
  house_psi  REAL,                          -- as the visit's assessment left it
  street_psi REAL,
  band       TEXT NOT NULL DEFAULT 'none',
  valve_work INTEGER NOT NULL DEFAULT 0 CHECK (valve_work IN (0, 1)),
  unfinished INTEGER NOT NULL DEFAULT 0 CHECK (unfinished IN (0, 1)) -- work without a fair reading after it
) STRICT;
CREATE INDEX report_site ON report (site, day, at, house_psi, valve_work, unfinished); -- a house's series, read from the index alone
CREATE INDEX report_day ON report (day);
CREATE INDEX report_author ON report (author, at);
CREATE INDEX report_unfinished ON report (day) WHERE unfinished = 1;

-- Kept in the order in which a house's readings are asked for. A trigger, not
-- a foreign key, takes them away with their report: a key would want an index
-- of its own.
CREATE TABLE reading (
  site   INTEGER NOT NULL REFERENCES site(id),
  day    TEXT NOT NULL,
  report INTEGER NOT NULL,
  n      INTEGER NOT NULL,
  psi    REAL NOT NULL,
  point  TEXT NOT NULL,
  heater TEXT NOT NULL,
  flow   TEXT NOT NULL,
  peak   INTEGER NOT NULL,
  moment TEXT NOT NULL,                     -- before or after work
  side   TEXT NOT NULL,
  fair   TEXT NOT NULL,
  PRIMARY KEY (site, day, report, n)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER report_out AFTER DELETE ON report BEGIN
  DELETE FROM reading WHERE site = old.site AND day = old.day AND report = old.id;
END;

-- The life of each installed thing, generation by generation. Days are
-- YYYY-MM-DD or, when no more was told, YYYY; empty is not known.
CREATE TABLE equipment (
  site      INTEGER NOT NULL REFERENCES site(id),
  item      TEXT NOT NULL,
  n         INTEGER NOT NULL,
  absent    INTEGER NOT NULL DEFAULT 0 CHECK (absent IN (0, 1)), -- told that there is none
  installed TEXT NOT NULL DEFAULT '',
  serviced  TEXT NOT NULL DEFAULT '',
  ended     TEXT NOT NULL DEFAULT '',
  failed    INTEGER NOT NULL DEFAULT 0 CHECK (failed IN (0, 1)),
  facts     TEXT NOT NULL DEFAULT '{}',     -- size, fuel, setting …, the newest told
  PRIMARY KEY (site, item, n)
) STRICT, WITHOUT ROWID;
CREATE INDEX equipment_life ON equipment (item, installed, ended) WHERE installed > ''; -- partial, so that no other question takes it

CREATE TABLE follow_up (
  id      INTEGER PRIMARY KEY,
  site    INTEGER NOT NULL REFERENCES site(id),
  action  TEXT NOT NULL,
  due     TEXT NOT NULL,
  why     TEXT NOT NULL,
  owner   TEXT NOT NULL,                    -- who is to do it
  source  INTEGER NOT NULL REFERENCES message(id),
  opened  INTEGER NOT NULL REFERENCES message(id), -- the first source; with the action it names the row for ever
  state   TEXT NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'done', 'dropped')),
  urgency TEXT NOT NULL DEFAULT 'watch',    -- of what called for it
  posted  TEXT NOT NULL DEFAULT '',         -- the day it was last posted
  clock   INTEGER NOT NULL DEFAULT 0 CHECK (clock IN (0, 1)), -- opened by the calendar, not by a message
  ended   INTEGER,
  ended_by INTEGER REFERENCES message(id) ON DELETE SET NULL, -- the message that settled it
  was     TEXT                              -- what the newest reason took the place of, as JSON; its withdrawal brings it back
) STRICT;
CREATE UNIQUE INDEX follow_up_open ON follow_up (site, action) WHERE state = 'open';
CREATE INDEX follow_up_opened ON follow_up (opened, action);
CREATE INDEX follow_up_source ON follow_up (source);
CREATE INDEX follow_up_due ON follow_up (due) WHERE state = 'open';
CREATE INDEX follow_up_owner ON follow_up (owner, due) WHERE state = 'open';
CREATE INDEX follow_up_ended ON follow_up (ended) WHERE ended IS NOT NULL;
CREATE INDEX follow_up_ended_by ON follow_up (ended_by) WHERE ended_by IS NOT NULL;

CREATE TABLE alert (
  id        INTEGER PRIMARY KEY,
  site      INTEGER NOT NULL REFERENCES site(id),
  codes     TEXT NOT NULL,                  -- findings that raised it
  urgency   TEXT NOT NULL,
  state     TEXT NOT NULL DEFAULT 'raised' CHECK (state IN ('raised', 'claimed', 'booked', 'settled', 'closed')),
  raised_at INTEGER NOT NULL,
  source    INTEGER NOT NULL REFERENCES message(id),
  opened    INTEGER NOT NULL REFERENCES message(id), -- the first source; it names the row for ever
  owner     TEXT NOT NULL DEFAULT '',       -- id of who claimed it
  booked    TEXT NOT NULL DEFAULT '',       -- day of the visit
  part      TEXT NOT NULL DEFAULT '' CHECK (part IN ('', 'morning', 'afternoon')),
  tech      TEXT NOT NULL DEFAULT '',       -- id of who goes
  change    INTEGER NOT NULL DEFAULT 1,
  ended     INTEGER,
  ended_by  INTEGER REFERENCES message(id) ON DELETE SET NULL, -- the message that settled or closed it
  reason    TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX alert_source ON alert (source);
CREATE INDEX alert_opened ON alert (opened);
CREATE INDEX alert_state ON alert (id) WHERE state IN ('raised', 'claimed', 'booked');
CREATE UNIQUE INDEX alert_open ON alert (site) WHERE state IN ('raised', 'claimed', 'booked');
CREATE INDEX alert_raised ON alert (raised_at);
CREATE INDEX alert_ended ON alert (ended) WHERE ended IS NOT NULL;
CREATE INDEX alert_ended_by ON alert (ended_by) WHERE ended_by IS NOT NULL;

CREATE TABLE alert_step (
  alert INTEGER NOT NULL REFERENCES alert(id),
  n     INTEGER NOT NULL,
  at    INTEGER NOT NULL,
  who   TEXT NOT NULL,
  what  TEXT NOT NULL,
  PRIMARY KEY (alert, n)
) STRICT, WITHOUT ROWID;

-- A question of ours that waits for an answer.
CREATE TABLE question (
  id      INTEGER PRIMARY KEY,
  message INTEGER NOT NULL REFERENCES message(id),
  channel TEXT NOT NULL,
  thread  TEXT NOT NULL,
  author  TEXT NOT NULL,
  at      INTEGER NOT NULL,
  kind    TEXT NOT NULL,
  body    TEXT NOT NULL,
  state   TEXT NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'answered', 'dropped'))
) STRICT;
CREATE INDEX question_message ON question (message);
CREATE INDEX question_author ON question (channel, author, at) WHERE state = 'open';
CREATE INDEX question_open ON question (channel, thread) WHERE state = 'open';

-- What is to be said to the team, committed with the rows it speaks of.
CREATE TABLE outbox (
  id      INTEGER PRIMARY KEY,
  key     TEXT NOT NULL UNIQUE,
  channel TEXT NOT NULL,
  thread  TEXT NOT NULL,
  body    TEXT NOT NULL,
  after   INTEGER NOT NULL,                 -- not to be sent before
  state   TEXT NOT NULL DEFAULT 'ready' CHECK (state IN ('ready', 'sending', 'sent', 'dead')),
  tries   INTEGER NOT NULL DEFAULT 0,
  since   INTEGER NOT NULL,                 -- when it came into its state
  ref     TEXT NOT NULL DEFAULT '',         -- the platform's name for the post
  error   TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX outbox_open ON outbox (state, after) WHERE state IN ('ready', 'sending');
CREATE INDEX outbox_worded ON outbox (since) WHERE state IN ('sent', 'dead') AND length(body) > 50; -- for retention
CREATE INDEX outbox_ref ON outbox (channel, ref) WHERE ref <> '';

-- What is to happen at a time, named after its cause. It happens once.
CREATE TABLE due (
  key   TEXT PRIMARY KEY,
  kind  TEXT NOT NULL,
  about INTEGER NOT NULL,                   -- the row that it is about
  at    INTEGER NOT NULL,                   -- planned
  state TEXT NOT NULL DEFAULT 'planned' CHECK (state IN ('planned', 'done', 'dropped'))
) STRICT, WITHOUT ROWID;
CREATE INDEX due_planned ON due (at) WHERE state = 'planned';
CREATE INDEX due_about ON due (kind, about) WHERE state = 'planned';

-- What each house's last report leaves to expect: derived, for lists over all houses.
CREATE TABLE outlook (
  site       INTEGER PRIMARY KEY REFERENCES site(id) ON DELETE CASCADE,
  day        TEXT NOT NULL,                 -- of the last visit
  house_psi  REAL,                          -- the last that a visit supported
  drift      TEXT NOT NULL,
  slope      REAL,                          -- psi a year
  crosses    TEXT,                          -- the day on which the trend leaves the band
  rank       INTEGER NOT NULL,              -- of the gravest finding: 0 now, 1 soon, 2 watch, 3 note
  finding    TEXT NOT NULL                  -- its code
) STRICT;
CREATE INDEX outlook_drift ON outlook (crosses) WHERE drift IN ('rising', 'falling');
CREATE INDEX outlook_rank ON outlook (rank, day);

-- The last slot of each clockwork job that was dealt with.
CREATE TABLE slot (
  job  TEXT PRIMARY KEY,
  last INTEGER NOT NULL
) STRICT;

-- How far a walk over all houses has come, so that it goes on after a stop.
CREATE TABLE walk (
  job   TEXT PRIMARY KEY,
  basis TEXT NOT NULL,                      -- the settings that it judges by: others begin it anew
  site  INTEGER NOT NULL,                   -- the last house dealt with
  done  INTEGER NOT NULL DEFAULT 0 CHECK (done IN (0, 1))
) STRICT;

-- That something was removed on request or by age, and how much; not what.
CREATE TABLE removal (
  id       INTEGER PRIMARY KEY,
  at       INTEGER NOT NULL,
  kind     TEXT NOT NULL CHECK (kind IN ('house', 'person', 'age')),
  messages INTEGER NOT NULL
) STRICT;

CREATE VIRTUAL TABLE message_words USING fts4 (content="message", text, tokenize=unicode61);
CREATE TRIGGER message_words_in AFTER INSERT ON message BEGIN
  INSERT INTO message_words (docid, text) VALUES (new.id, new.text);
END;
CREATE TRIGGER message_words_out BEFORE DELETE ON message BEGIN
  DELETE FROM message_words WHERE docid = old.id;
END;
CREATE TRIGGER message_words_gone BEFORE UPDATE OF text ON message BEGIN
  DELETE FROM message_words WHERE docid = old.id;
END;
CREATE TRIGGER message_words_new AFTER UPDATE OF text ON message BEGIN
  INSERT INTO message_words (docid, text) VALUES (new.id, new.text);
END;
