-- A house's follow-ups lie together: their numbers begin with its own, and no
-- index is wanted to find them. What they came from and what settled them is
-- nearly always filed under the same house. What was told on a day is found by
-- the messages of that day. Foreign keys are off while this runs and are looked
-- through before it is kept.

CREATE TEMP TABLE was_follow_up AS SELECT *, (site + 1048576 << 20) + row_number() OVER (PARTITION BY site ORDER BY id) AS number FROM follow_up;
DROP TABLE follow_up;
-- Those of a house have the numbers from (site + 2^20) * 2^20 on: more than any
-- had in a record of version 4.
CREATE TABLE follow_up (
  id      INTEGER PRIMARY KEY,
  site    INTEGER NOT NULL,                 -- a reference would want an index, as all below
  action  TEXT NOT NULL,
  due     TEXT NOT NULL,
  why     TEXT NOT NULL,
  owner   TEXT NOT NULL,                    -- who is to do it
  source  INTEGER NOT NULL,                 -- the message it came from
  opened  INTEGER NOT NULL,                 -- the first source; with the action it names the row for ever
  state   TEXT NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'done', 'dropped')), -- of a house and an action, one is open
  urgency TEXT NOT NULL DEFAULT 'watch',    -- of what called for it
  posted  TEXT NOT NULL DEFAULT '',         -- the day it was last posted
  clock   INTEGER NOT NULL DEFAULT 0 CHECK (clock IN (0, 1)), -- opened by the calendar, not by a message
  ended   INTEGER,                          -- when the message that settled it was said, where one did
  ended_by INTEGER,                         -- the message that settled it
  was     TEXT,                             -- what the newest reason took the place of, as JSON; its withdrawal brings it back
  stray   INTEGER NOT NULL DEFAULT 0 CHECK (stray IN (0, 1)) -- what it came from, or what settled it, is not filed under the same house
) STRICT;
INSERT INTO follow_up (id, site, action, due, why, owner, source, opened, state, urgency, posted, clock, ended, ended_by, was, stray)
  SELECT w.number, w.site, w.action, w.due, w.why, w.owner, w.source, w.opened, w.state, w.urgency, w.posted, w.clock, w.ended, w.ended_by, w.was,
    s.site IS NOT w.site OR w.ended_by IS NOT NULL AND e.site IS NOT w.site
  FROM temp.was_follow_up w LEFT JOIN message s ON s.id = w.source LEFT JOIN message e ON e.id = w.ended_by ORDER BY w.number;
CREATE INDEX follow_up_opened ON follow_up (opened, action) WHERE clock = 1; -- few
CREATE INDEX follow_up_due ON follow_up (owner, due) WHERE state = 'open';
CREATE INDEX follow_up_stray ON follow_up (source) WHERE stray = 1; -- few
CREATE INDEX follow_up_ended ON follow_up (ended) WHERE ended IS NOT NULL AND (ended_by IS NULL OR stray = 1); -- few

-- Numbers by which follow-ups were known before: buttons name them.
CREATE TABLE follow_up_was (
  was INTEGER PRIMARY KEY,
  id  INTEGER NOT NULL
) STRICT;
INSERT INTO follow_up_was SELECT id, number FROM temp.was_follow_up ORDER BY id;
DROP TABLE temp.was_follow_up;

-- A message that is moved to another house takes its report along; follow-ups
-- stay.
DROP TRIGGER message_moved;
CREATE TRIGGER message_moved AFTER UPDATE OF site ON message WHEN old.site IS NOT NULL AND new.site IS NOT old.site BEGIN
  UPDATE report SET site = new.site WHERE site = old.site AND message = new.id;
  UPDATE follow_up SET stray = 1 WHERE id > old.site + 1048576 << 20 AND id < old.site + 1048577 << 20 AND new.id IN (source, ended_by);
END;

-- On which days which messages told something: reports by the day of the visit,
-- what settled a follow-up by when it was said (UTC). A page is 64 messages.
CREATE TABLE diary (
  day  TEXT NOT NULL,
  page INTEGER NOT NULL,                    -- a message's number / 64
  PRIMARY KEY (day, page)
) STRICT, WITHOUT ROWID;
INSERT INTO diary SELECT day, message >> 6 FROM report WHERE message > 0
  UNION SELECT date(ended / 1000, 'unixepoch'), ended_by >> 6 FROM follow_up WHERE ended_by IS NOT NULL;
DROP INDEX report_day;
