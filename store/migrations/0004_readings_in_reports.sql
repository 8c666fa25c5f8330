-- A report stands with its house and holds its readings: one row where there
-- were a row, an entry of an index and a row a reading. It is found by its
-- message through the house that the message is filed under. What a message
-- ended is found by when that was. Foreign keys are off while this runs and are
-- looked through before it is kept.

CREATE TEMP TABLE was_report (message INTEGER PRIMARY KEY, site INTEGER, day TEXT, at INTEGER, author TEXT, house_psi REAL, street_psi REAL, band TEXT, valve_work INTEGER, unfinished INTEGER);
INSERT INTO was_report SELECT message, site, day, at, author, house_psi, street_psi, band, valve_work, unfinished FROM report ORDER BY message;
CREATE TEMP TABLE was_reading (report INTEGER PRIMARY KEY, site INTEGER, day TEXT, readings TEXT);
INSERT INTO was_reading SELECT report, site, day, json_group_array(json_array(iif(psi = CAST(psi AS INTEGER), CAST(psi AS INTEGER), psi), point, heater, flow, peak, moment, side, fair) ORDER BY n)
  FROM reading GROUP BY site, day, report;
DROP TABLE report;
DROP TABLE reading;

-- What one message reported about one house, with its readings. Its statements
-- stand in the message's frame. The message is filed under the same house: a
-- reference to it would want an index.
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
INSERT INTO report SELECT r.site, r.day, r.at, r.message, r.author, r.house_psi, r.street_psi, r.band, r.valve_work, r.unfinished, ifnull(d.readings, '[]')
  FROM temp.was_report r LEFT JOIN temp.was_reading d ON d.report = r.message ORDER BY r.site, r.day, r.at, r.message;
-- Readings without their report are a fault of the file that has to be told still.
INSERT INTO report (site, day, at, message, author, readings) SELECT site, day, 0, -abs(report), '', readings
  FROM temp.was_reading WHERE report NOT IN (SELECT message FROM temp.was_report);
UPDATE message SET site = r.site FROM temp.was_report r WHERE r.message = message.id AND message.site IS NOT r.site;
DROP TABLE temp.was_reading;
DROP TABLE temp.was_report;
CREATE INDEX report_day ON report (day);
CREATE INDEX report_unfinished ON report (day) WHERE unfinished = 1;
CREATE TRIGGER message_moved AFTER UPDATE OF site ON message WHEN old.site IS NOT NULL AND new.site IS NOT old.site BEGIN
  UPDATE report SET site = new.site WHERE site = old.site AND message = new.id;
END;

CREATE VIEW reading AS SELECT r.site, r.day, r.at, r.message AS report, d.key AS n, CAST(d.value ->> 0 AS REAL) AS psi, d.value ->> 1 AS point,
  d.value ->> 2 AS heater, d.value ->> 3 AS flow, d.value ->> 4 AS peak, d.value ->> 5 AS moment, d.value ->> 6 AS side, d.value ->> 7 AS fair
  FROM report r, json_each(r.readings) d;

CREATE TEMP TABLE was_follow_up AS SELECT * FROM follow_up;
DROP TABLE follow_up;
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
  ended   INTEGER,                          -- when the message that settled it was said, where one did
  ended_by INTEGER,                         -- the message that settled it; a reference would want an index
  was     TEXT                              -- what the newest reason took the place of, as JSON; its withdrawal brings it back
) STRICT;
INSERT INTO follow_up SELECT id, site, action, due, why, owner, source, opened, state, urgency, posted, clock, ended, ended_by, was FROM temp.was_follow_up ORDER BY id;
DROP TABLE temp.was_follow_up;
CREATE UNIQUE INDEX follow_up_open ON follow_up (site, action) WHERE state = 'open';
CREATE INDEX follow_up_opened ON follow_up (opened, action) WHERE clock = 1; -- few: a reference to message would want all
CREATE INDEX follow_up_source ON follow_up (source);
CREATE INDEX follow_up_due ON follow_up (owner, due) WHERE state = 'open';
CREATE INDEX follow_up_ended ON follow_up (ended) WHERE ended IS NOT NULL;
