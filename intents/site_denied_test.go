package intents

import "testing"

// The right house among two numbers, where one is denied or taken back; a message of no
// more than that puts the last report right.
func TestHousePutRightWithinTheMessage(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ text, site, tells string }{
		{"rear 72, that was 22 Pine not 24 Pine", "22 Pine", "rear_bibb 72"},
		{"24 Pine rear 72. that was 22 Pine not 24 Pine", "22 Pine", "rear_bibb 72"},
		{"it was 22 Pine not 24, 66 front", "22 Pine", "front_bibb 66"},
		{"wrong house, not 24 Pine, 22. 66 front", "22 Pine", "correct front_bibb 66"},
		{"24 Pine 66 rear scratch 24, meant 22 Pine", "22 Pine", "rear_bibb 66"},
		{"scratch 24, meant 22 Pine, 66 rear", "22 Pine", "rear_bibb 66"},
		{"66 rear at 24 Pine, sorry 22 Pine", "22 Pine", "rear_bibb 66"},
		{"66 rear, 22 not 24 Pine", "22 Pine", "rear_bibb 66"},
		{"22 not 24 Pine St, 66 rear", "22 Pine St", "rear_bibb 66"},
		{"not 24 Pine but 22 Pine 66 rear", "22 Pine", "rear_bibb 66"},
		{"22 Pine instead of 24 Pine, 66 rear", "22 Pine", "rear_bibb 66"},
		{"1208 Alder not 1280, kitchen 66", "1208 Alder", "kitchen 66"},
		{"1208 Alder Rd, not 1280 Alder Rd, kitchen 66", "1208 Alder Rd", "kitchen 66"},
		{"atrás 66, es 22 Pine en vez de 24 Pine", "22 Pine", "rear_bibb 66"},
		{"atrás 66 en 22 Pine no 24", "22 Pine", "rear_bibb 66"},
		{"wrong house, not 24 Pine, 22", "22 Pine", "correct"},
		{"wrong house, not 24 Pine, its 22 Pine", "22 Pine", "correct"},
		{"that was 22 Pine, not 24", "22 Pine", "correct"},
		{"wrong address should be 22 Pine", "22 Pine", "correct"},
		{"it was supposed to be 22 Pine", "22 Pine", "correct"},
		{"I meant 22 Pine", "22 Pine", "correct"},
		// no house is denied
		{"rear 66 not 68 at 22 Pine", "22 Pine", "correct rear_bibb 66"},
		{"22 Pine not 64 psi at the rear, 66", "22 Pine", "correct rear_bibb 66"},
		{"we are at 22 Pine, not home till 24", "22 Pine", "none"},
		{"next stop should be 22 Pine", "22 Pine", "none"},
		{"I'm not at 22 Pine yet, 24 Oak rear 66", "24 Oak", "rear_bibb 66"},
		{"wrong house, take 24 Pine back out", "24 Pine", "undo"},
	} {
		f := p.Parse(c.text, Context{})
		got := told(f)
		for _, a := range f.Asks() {
			if got != "" {
				got = " " + got
			}
			got = string(a.About) + got
		}
		if f.Site != c.site || got != c.tells {
			t.Errorf("%q\n got %q %s\nwant %q %s", c.text, f.Site, got, c.site, c.tells)
		}
	}
}
