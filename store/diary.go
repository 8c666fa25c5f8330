package store

import "lazyhand/assess"

// The diary tells on which days which messages told something. A page of it is
// 64 messages in the order of their numbers: nearly all of them are of one day,
// so that it is written in once a page and not once a message.

// noteDay notes that a message told something of a day.
func (tx *Tx) noteDay(day assess.Date, message int64) error {
	return tx.put(`INSERT INTO diary (day, page) VALUES (?1, ?2 >> 6) ON CONFLICT DO NOTHING`, day.String(), message)
}

// onPage is the condition that a message stands on a page of the diary.
func onPage(message, diary string) string {
	return message + `.id >= ` + diary + `.page << 6 AND ` + message + `.id < ` + diary + `.page + 1 << 6`
}

// reportsOfDays joins the days d of the diary, their messages m and the reports
// r of those days, in this order. Its reader says which days.
var reportsOfDays = `diary d CROSS JOIN message m ON ` + onPage("m", "d") + ` CROSS JOIN report r ON r.site = m.site AND r.day = d.day AND r.message = m.id`
