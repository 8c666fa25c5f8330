package store

// Derived tables in the order in which they can be emptied.
var derived = []string{"reading", "report", "equipment", "question", "follow_up", "alert_step", "alert"}

// idBefore is the id for a new row of a derived table: while the record is
// being rebuilt, that of the row with the same cause before, so that buttons
// and posts that name it stay right; else nil, and SQLite chooses.
func (tx *Tx) idBefore(table string, source int64, action string) any {
	return nil
}
