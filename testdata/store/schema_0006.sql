CREATE INDEX alert_ended ON alert (ended) WHERE ended IS NOT NULL;
CREATE INDEX alert_ended_by ON alert (ended_by) WHERE ended_by IS NOT NULL;
CREATE INDEX alert_opened ON alert (opened);
CREATE INDEX alert_raised ON alert (raised_at);
CREATE INDEX alert_source ON alert (source);
CREATE INDEX alert_state ON alert (id) WHERE state NOT IN ('settled', 'closed');
CREATE INDEX correction_by ON correction (by);
CREATE INDEX due_about ON due (kind, about) WHERE state = 'planned';
CREATE INDEX due_planned ON due (at) WHERE state = 'planned';
CREATE INDEX equipment_life ON equipment (item, installed, ended) WHERE installed > '';
CREATE INDEX follow_up_due ON follow_up (owner, due) WHERE state = 'open';
CREATE INDEX follow_up_ended ON follow_up (ended) WHERE ended IS NOT NULL AND (ended_by IS NULL OR stray = 1);
CREATE INDEX follow_up_opened ON follow_up (opened, action) WHERE clock = 1;
CREATE INDEX follow_up_stray ON follow_up (source) WHERE stray = 1;
CREATE INDEX message_about ON message (about) WHERE about IS NOT NULL;
CREATE INDEX message_by ON message (by) WHERE by IS NOT NULL;
CREATE INDEX message_site ON message (site, at) WHERE site IS NOT NULL;
CREATE INDEX message_stuck ON message (state) WHERE state IN ('waiting', 'set_aside');
CREATE INDEX message_thread ON message (channel, thread) WHERE thread <> ts OR key <> channel || '/' || ts;
CREATE INDEX outbox_done_dead ON outbox_done (id) WHERE state = 'dead';
CREATE INDEX outbox_done_ref ON outbox_done (channel, ref) WHERE ref <> '';
CREATE INDEX question_author ON question (channel, author, at) WHERE state = 'open';
CREATE INDEX question_message ON question (message);
CREATE INDEX question_open ON question (channel, thread) WHERE state = 'open';
CREATE INDEX report_unfinished ON report (day) WHERE unfinished = 1;
CREATE INDEX site_drift ON site (crosses) WHERE drift IN ('rising', 'falling');
CREATE INDEX site_joined ON site (joined) WHERE joined IS NOT NULL;
CREATE INDEX site_look ON site (look) WHERE look <> '';
CREATE INDEX site_main ON site (street) WHERE main = 1;
CREATE INDEX site_postcode ON site (postcode) WHERE postcode <> '';
CREATE INDEX site_rank ON site (rank, visited) WHERE rank <= 1;
CREATE INDEX site_street ON site (street);
CREATE INDEX site_worst ON site (outside DESC) WHERE outside > 0;
CREATE TABLE alert (
  id        INTEGER PRIMARY KEY,
  site      INTEGER NOT NULL REFERENCES site(id),
  codes     TEXT NOT NULL,                  -- findings that raised it
  urgency   TEXT NOT NULL,
  state     TEXT NOT NULL DEFAULT 'raised' CHECK (state IN ('raised', 'claimed') OR state IN ('booked', 'settled') OR state = 'closed'),
  raised_at INTEGER NOT NULL,
  source    INTEGER NOT NULL REFERENCES message(id),
  opened    INTEGER NOT NULL REFERENCES message(id), -- the first source; it names the row for ever
  owner     TEXT NOT NULL DEFAULT '',       -- id of who claimed it
  booked    TEXT NOT NULL DEFAULT '',       -- day of the visit
  part      TEXT NOT NULL DEFAULT '' CHECK (part IN ('', 'morning') OR part = 'afternoon'),
  tech      TEXT NOT NULL DEFAULT '',       -- id of who goes
  change    INTEGER NOT NULL DEFAULT 1,
  ended     INTEGER,
  ended_by  INTEGER REFERENCES message(id) ON DELETE SET NULL, -- the message that settled or closed it
  reason    TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE alert_step (
  alert INTEGER NOT NULL REFERENCES alert(id),
  n     INTEGER NOT NULL,
  at    INTEGER NOT NULL,
  who   TEXT NOT NULL,
  what  TEXT NOT NULL,
  PRIMARY KEY (alert, n)
) STRICT, WITHOUT ROWID;
CREATE TABLE correction (
  message INTEGER NOT NULL REFERENCES message(id),
  by      INTEGER NOT NULL REFERENCES message(id),  -- the message that corrected it
  was     TEXT NOT NULL,                            -- the frame before
  frame   TEXT NOT NULL,
  PRIMARY KEY (message, by)
) STRICT;
CREATE TABLE diary (
  day  TEXT NOT NULL,
  page INTEGER NOT NULL,                    -- a message's number / 64
  PRIMARY KEY (day, page)
) STRICT, WITHOUT ROWID;
CREATE TABLE due (
  key   TEXT PRIMARY KEY,
  kind  TEXT NOT NULL,
  about INTEGER NOT NULL,                   -- the row that it is about
  at    INTEGER NOT NULL,                   -- planned
  state TEXT NOT NULL DEFAULT 'planned' CHECK (state IN ('planned', 'done') OR state = 'dropped')
) STRICT, WITHOUT ROWID;
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
CREATE TABLE follow_up (
  id      INTEGER PRIMARY KEY,
  site    INTEGER NOT NULL,                 -- a reference would want an index, as all below
  action  TEXT NOT NULL,
  due     TEXT NOT NULL,
  why     TEXT NOT NULL,
  owner   TEXT NOT NULL,                    -- who is to do it
  source  INTEGER NOT NULL,                 -- the message it came from
  opened  INTEGER NOT NULL,                 -- the first source; with the action it names the row for ever
  state   TEXT NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'done') OR state = 'dropped'), -- of a house and an action, one is open
  urgency TEXT NOT NULL DEFAULT 'watch',    -- of what called for it
  posted  TEXT NOT NULL DEFAULT '',         -- the day it was last posted
  clock   INTEGER NOT NULL DEFAULT 0 CHECK (clock IN (0, 1)), -- opened by the calendar, not by a message
  ended   INTEGER,                          -- when the message that settled it was said, where one did
  ended_by INTEGER,                         -- the message that settled it
  was     TEXT,                             -- what the newest reason took the place of, as JSON; its withdrawal brings it back
  stray   INTEGER NOT NULL DEFAULT 0 CHECK (stray IN (0, 1)) -- what it came from, or what settled it, is not filed under the same house
) STRICT;
CREATE TABLE follow_up_was (
  was INTEGER PRIMARY KEY,
  id  INTEGER NOT NULL
) STRICT;
CREATE TABLE message (
  id      INTEGER PRIMARY KEY,
  key     TEXT NOT NULL UNIQUE,             -- channel/ts, or that with what happened to it
  twin    TEXT,                             -- one gesture that may arrive under two keys
  kind    TEXT NOT NULL CHECK (kind IN ('said', 'edited') OR kind IN ('deleted', 'pressed') OR kind = 'imported'),
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
  state   TEXT NOT NULL DEFAULT 'taken' CHECK (state IN ('taken', 'waiting') OR state IN ('set_aside', 'replaced') OR state = 'retracted'),
  tries   INTEGER NOT NULL DEFAULT 0,
  error   TEXT NOT NULL DEFAULT '',
  by      INTEGER REFERENCES message(id),   -- the edit, deletion or undo that replaced or retracted it
  blank   INTEGER NOT NULL DEFAULT 0 CHECK (blank IN (0, 1)), -- its words were removed, what they meant stays
  frame   TEXT,                             -- what is held to be meant
  site    INTEGER REFERENCES site(id)       -- the house it was filed under
) STRICT;
CREATE TABLE outbox (
  id      INTEGER PRIMARY KEY,              -- from (message + 2^20) * 2^20 on; one that no row of outbox_done has
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
CREATE TABLE person (
  id      TEXT PRIMARY KEY,
  name    TEXT NOT NULL DEFAULT '',
  lang    TEXT NOT NULL DEFAULT '',         -- chosen
  heard   TEXT NOT NULL DEFAULT '',         -- in which they last wrote, when that was plain
  site    INTEGER REFERENCES site(id),      -- last reported on
  site_at INTEGER NOT NULL DEFAULT 0
, told TEXT NOT NULL DEFAULT '[]') STRICT;
CREATE TABLE question (
  id      INTEGER PRIMARY KEY,
  message INTEGER NOT NULL REFERENCES message(id),
  channel TEXT NOT NULL,
  thread  TEXT NOT NULL,
  author  TEXT NOT NULL,
  at      INTEGER NOT NULL,
  kind    TEXT NOT NULL,
  body    TEXT NOT NULL,
  state   TEXT NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'answered') OR state = 'dropped')
) STRICT;
CREATE TABLE removal (
  id       INTEGER PRIMARY KEY,
  at       INTEGER NOT NULL,
  kind     TEXT NOT NULL CHECK (kind IN ('house', 'person', 'age')),
  messages INTEGER NOT NULL
) STRICT;
CREATE TABLE report (
  site       INTEGER NOT NULL REFERENCES site(id),
  day        TEXT NOT NULL,
  at         INTEGER NOT NULL,
  message    INTEGER NOT NULL,
  author     TEXT NOT NULL,
  house_psi  REAL,                          -- as the visit's assessment left it
  street_psi REAL,
  band       TEXT NOT NULL DEFAULT 'none',
  valve_work INTEGER NOT NULL DEFAULT 0 CHECK (valve_work IN (0, 1)),
  unfinished INTEGER NOT NULL DEFAULT 0 CHECK (unfinished IN (0, 1)), -- work without a fair reading after it
  readings   TEXT NOT NULL DEFAULT '[]',    -- in the order told, each [psi, point, heater, flow, peak, moment, side, fair]
  PRIMARY KEY (site, day, at, message)
) STRICT, WITHOUT ROWID;
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
CREATE TABLE slot (
  job  TEXT PRIMARY KEY,
  last INTEGER NOT NULL
) STRICT;
CREATE TABLE walk (
  job   TEXT PRIMARY KEY,
  basis TEXT NOT NULL,                      -- the settings that it judges by: others begin it anew
  site  INTEGER NOT NULL,                   -- the last house dealt with
  done  INTEGER NOT NULL DEFAULT 0 CHECK (done IN (0, 1))
) STRICT;
CREATE TRIGGER message_moved AFTER UPDATE OF site ON message WHEN old.site IS NOT NULL AND new.site IS NOT old.site BEGIN
  UPDATE report SET site = new.site WHERE site = old.site AND message = new.id;
  UPDATE follow_up SET stray = 1 WHERE id > old.site + 1048576 << 20 AND id < old.site + 1048577 << 20 AND new.id IN (source, ended_by);
END;
CREATE TRIGGER message_words_gone BEFORE UPDATE OF text ON message
WHEN old.id <= (SELECT max(docid) FROM message_words_docsize) BEGIN
  DELETE FROM message_words WHERE docid = old.id;
END;
CREATE TRIGGER message_words_new AFTER UPDATE OF text ON message
WHEN new.id <= (SELECT max(docid) FROM message_words_docsize) BEGIN
  INSERT INTO message_words (docid, text) VALUES (new.id, new.text);
END;
CREATE TRIGGER message_words_out BEFORE DELETE ON message
WHEN old.id <= (SELECT max(docid) FROM message_words_docsize) BEGIN
  DELETE FROM message_words WHERE docid = old.id;
END;
CREATE TRIGGER outbox_once BEFORE INSERT ON outbox WHEN EXISTS (SELECT 1 FROM outbox_done WHERE key = new.key)
  OR EXISTS (SELECT 1 FROM outbox WHERE id >= new.id >> 20 << 20 AND id < (new.id >> 20) + 1 << 20 AND key = new.key) BEGIN
  SELECT RAISE(IGNORE);
END;
CREATE UNIQUE INDEX alert_open ON alert (site) WHERE state NOT IN ('settled', 'closed');
CREATE UNIQUE INDEX message_twin ON message (twin) WHERE twin IS NOT NULL;
CREATE UNIQUE INDEX outbox_other ON outbox (key) WHERE key NOT GLOB 'reply:*' AND key NOT GLOB 'react:*';
CREATE UNIQUE INDEX site_key ON site (loose, key, town, postcode);
CREATE VIEW message_indexed AS SELECT id AS rowid, text FROM message WHERE id <= (SELECT max(docid) FROM message_words_docsize);
CREATE VIEW reading AS SELECT r.site, r.day, r.at, r.message AS report, d.key AS n, CAST(d.value ->> 0 AS REAL) AS psi, d.value ->> 1 AS point,
  d.value ->> 2 AS heater, d.value ->> 3 AS flow, d.value ->> 4 AS peak, d.value ->> 5 AS moment, d.value ->> 6 AS side, d.value ->> 7 AS fair
  FROM report r, json_each(r.readings) d;
CREATE VIRTUAL TABLE message_words USING fts4 (content="message_indexed", text, tokenize=unicode61);
