-- Reports are named by their messages, houses know whether the street main was
-- read at them, checksums cover the pictures, and messages get into the search
-- index later. Foreign keys are off while this runs and are looked through
-- before it is kept.
--
-- Tables are copied aside, made anew and filled again, not renamed: that would
-- change their names in what refers to them.

DROP TRIGGER report_out;
CREATE TEMP TABLE was_report AS SELECT * FROM report;
CREATE TEMP TABLE was_reading AS SELECT * FROM reading;
CREATE TEMP TABLE was_site AS SELECT * FROM site;
CREATE TEMP TABLE was_follow_up AS SELECT * FROM follow_up;
DROP TABLE report;
DROP TABLE reading;
DROP TABLE site;
DROP TABLE follow_up;

-- What one message reported about one house. Its statements stand in the
-- message's frame.
CREATE TABLE report (
  message    INTEGER PRIMARY KEY REFERENCES message(id),
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
INSERT INTO report SELECT message, site, day, at, author, house_psi, street_psi, band, valve_work, unfinished FROM temp.was_report ORDER BY message;
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
  report INTEGER NOT NULL,                  -- its message
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
CREATE UNIQUE INDEX temp.was_report_id ON was_report (id);
-- A reading without its report is a fault of the file that has to be told still.
INSERT INTO reading SELECT d.site, d.day, ifnull(r.message, -d.report), d.n, d.psi, d.point, d.heater, d.flow, d.peak, d.moment, d.side, d.fair
  FROM temp.was_reading d LEFT JOIN temp.was_report r ON r.id = d.report ORDER BY 1, 2, 3, 4;
DROP TABLE temp.was_reading;
DROP TABLE temp.was_report;
CREATE TRIGGER report_out AFTER DELETE ON report BEGIN
  DELETE FROM reading WHERE site = old.site AND day = old.day AND report = old.message;
END;

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
  look     TEXT NOT NULL DEFAULT '',        -- day from which the calendar alone may change what follows; empty: never
  main     INTEGER NOT NULL DEFAULT 0 CHECK (main IN (0, 1)) -- the street main's pressure was read here
) STRICT;
INSERT INTO site SELECT *, EXISTS (SELECT 1 FROM reading d WHERE d.site = was_site.id AND d.side = 'street' AND d.fair = 'yes') FROM temp.was_site ORDER BY id;
DROP TABLE temp.was_site;
CREATE UNIQUE INDEX site_key ON site (key, town, postcode);
CREATE INDEX site_loose ON site (loose);
CREATE INDEX site_street ON site (street);
CREATE INDEX site_joined ON site (joined) WHERE joined IS NOT NULL;
CREATE INDEX site_source ON site (source);
CREATE INDEX site_worst ON site (outside DESC) WHERE outside > 0;
CREATE INDEX site_look ON site (look) WHERE look <> '';
CREATE INDEX site_main ON site (street) WHERE main = 1; -- few houses of a street
CREATE INDEX site_postcode ON site (postcode) WHERE postcode <> '';

CREATE TABLE follow_up (
  id      INTEGER PRIMARY KEY,
  site    INTEGER NOT NULL REFERENCES site(id),
  action  TEXT NOT NULL,
  due     TEXT NOT NULL,
  why     TEXT NOT NULL,
  owner   TEXT NOT NULL,                    -- who is to do it
  source  INTEGER NOT NULL REFERENCES message(id),
  opened  INTEGER NOT NULL,                 -- the first source; with the action it names the row for ever
  state   TEXT NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'done', 'dropped')),
  urgency TEXT NOT NULL DEFAULT 'watch',    -- of what called for it
  posted  TEXT NOT NULL DEFAULT '',         -- the day it was last posted
  clock   INTEGER NOT NULL DEFAULT 0 CHECK (clock IN (0, 1)), -- opened by the calendar, not by a message
  ended   INTEGER,
  ended_by INTEGER REFERENCES message(id) ON DELETE SET NULL, -- the message that settled it
  was     TEXT                              -- what the newest reason took the place of, as JSON; its withdrawal brings it back
) STRICT;
INSERT INTO follow_up SELECT * FROM temp.was_follow_up ORDER BY id;
DROP TABLE temp.was_follow_up;
CREATE UNIQUE INDEX follow_up_open ON follow_up (site, action) WHERE state = 'open';
CREATE INDEX follow_up_opened ON follow_up (opened, action) WHERE clock = 1; -- few: a reference to message would want all
CREATE INDEX follow_up_source ON follow_up (source);
CREATE INDEX follow_up_due ON follow_up (due) WHERE state = 'open';
CREATE INDEX follow_up_owner ON follow_up (owner, due) WHERE state = 'open';
CREATE INDEX follow_up_ended ON follow_up (ended) WHERE ended IS NOT NULL;
CREATE INDEX follow_up_ended_by ON follow_up (ended_by) WHERE ended_by IS NOT NULL;

DROP INDEX outlook_rank;
CREATE INDEX outlook_rank ON outlook (rank, day) WHERE rank <= 1; -- few

-- sum covers the pictures too from now on. One that was wrong before stays
-- wrong, so that the damage is told.
UPDATE message SET sum = sum_2(key, author, text, links, at) WHERE sum <> 0 AND sum = sum_1(key, author, text, at);

DROP TRIGGER message_words_in;
DROP TRIGGER message_words_out;
DROP TRIGGER message_words_gone;
DROP TRIGGER message_words_new;
DROP TABLE message_words;
-- Messages get into the search index later, in the order of their ids: what is
-- after the last one in it is not in it.
CREATE VIEW message_indexed AS SELECT id AS rowid, text FROM message WHERE id <= (SELECT max(docid) FROM message_words_docsize);
CREATE VIRTUAL TABLE message_words USING fts4 (content="message_indexed", text, tokenize=unicode61);
INSERT INTO message_words (docid, text) SELECT id, text FROM message ORDER BY id;
CREATE TRIGGER message_words_out BEFORE DELETE ON message
WHEN old.id <= (SELECT max(docid) FROM message_words_docsize) BEGIN
  DELETE FROM message_words WHERE docid = old.id;
END;
CREATE TRIGGER message_words_gone BEFORE UPDATE OF text ON message
WHEN old.id <= (SELECT max(docid) FROM message_words_docsize) BEGIN
  DELETE FROM message_words WHERE docid = old.id;
END;
CREATE TRIGGER message_words_new AFTER UPDATE OF text ON message
WHEN new.id <= (SELECT max(docid) FROM message_words_docsize) BEGIN
  INSERT INTO message_words (docid, text) VALUES (new.id, new.text);
END;
