-- What waits to be said as an answer to a message lies together: the posts'
-- numbers begin with the message's, and no index is wanted to find them by
-- their keys. The few others stand behind the answers that came before them.

-- SQLite makes a tree of a list of three words or more each time it looks
-- whether a row's word is in it, which costs more than to insert the row; two
-- it compares. The words stay the same, so that the tables need not be made
-- anew: https://sqlite.org/lang_altertable.html#otheralter.
PRAGMA writable_schema = ON;
UPDATE sqlite_schema SET sql = replace(sql, '(kind IN (''said'', ''edited'', ''deleted'', ''pressed'', ''imported''))',
  '(kind IN (''said'', ''edited'') OR kind IN (''deleted'', ''pressed'') OR kind = ''imported'')') WHERE name = 'message';
UPDATE sqlite_schema SET sql = replace(sql, '(state IN (''taken'', ''waiting'', ''set_aside'', ''replaced'', ''retracted''))',
  '(state IN (''taken'', ''waiting'') OR state IN (''set_aside'', ''replaced'') OR state = ''retracted'')') WHERE name = 'message';
UPDATE sqlite_schema SET sql = replace(sql, '(state IN (''open'', ''done'', ''dropped''))',
  '(state IN (''open'', ''done'') OR state = ''dropped'')') WHERE name = 'follow_up';
UPDATE sqlite_schema SET sql = replace(sql, '(state IN (''raised'', ''claimed'', ''booked'', ''settled'', ''closed''))',
  '(state IN (''raised'', ''claimed'') OR state IN (''booked'', ''settled'') OR state = ''closed'')') WHERE name = 'alert';
UPDATE sqlite_schema SET sql = replace(sql, '(part IN ('''', ''morning'', ''afternoon''))',
  '(part IN ('''', ''morning'') OR part = ''afternoon'')') WHERE name = 'alert';
UPDATE sqlite_schema SET sql = replace(sql, '(state IN (''open'', ''answered'', ''dropped''))',
  '(state IN (''open'', ''answered'') OR state = ''dropped'')') WHERE name = 'question';
UPDATE sqlite_schema SET sql = replace(sql, '(state IN (''planned'', ''done'', ''dropped''))',
  '(state IN (''planned'', ''done'') OR state = ''dropped'')') WHERE name = 'due';
PRAGMA writable_schema = RESET;
DROP INDEX alert_state;
DROP INDEX alert_open;
CREATE INDEX alert_state ON alert (id) WHERE state NOT IN ('settled', 'closed');
CREATE UNIQUE INDEX alert_open ON alert (site) WHERE state NOT IN ('settled', 'closed');

CREATE TEMP TABLE waits AS SELECT *, ifnull(message, ifnull(max(message) OVER (ORDER BY id), 0)) AS beside
  FROM (SELECT *, iif(key GLOB 'reply:*' OR key GLOB 'react:*', CAST(substr(key, 7) AS INTEGER), NULL) AS message FROM outbox);
DROP TABLE outbox;

-- What is to be said to the team, committed with the rows it speaks of. It is
-- nearly always a handful of rows, and is read as a whole.
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
INSERT INTO outbox SELECT (beside + 1048576 << 20) + row_number() OVER (PARTITION BY beside ORDER BY id), key, channel, thread, body, after, state, tries, since, error
  FROM temp.waits ORDER BY 1;
DROP TABLE temp.waits;
CREATE UNIQUE INDEX outbox_other ON outbox (key) WHERE key NOT GLOB 'reply:*' AND key NOT GLOB 'react:*'; -- few
-- What was said once is not said again, nor what waits to be said.
CREATE TRIGGER outbox_once BEFORE INSERT ON outbox WHEN EXISTS (SELECT 1 FROM outbox_done WHERE key = new.key)
  OR EXISTS (SELECT 1 FROM outbox WHERE id >= new.id >> 20 << 20 AND id < (new.id >> 20) + 1 << 20 AND key = new.key) BEGIN
  SELECT RAISE(IGNORE);
END;
