package assess

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestDemandNamesItsTable(t *testing.T) {
	// The same ten fixture units ask for 14.6 gpm by one code and 8 by another.
	ipc, _ := DemandGPM(IPCFlushTanks, 10)
	nspc, _ := DemandGPM(NSPCFlushTanks, 10)
	if ipc != 14.6 || nspc != 8 {
		t.Errorf("IPC %v, NSPC %v", ipc, nspc)
	}
	for _, c := range []DemandCurve{IPCFlushTanks, IPCFlushometers, NSPCFlushTanks} {
		if c.Source() == "" {
			t.Errorf("%s names no source", c)
		}
	}
	if _, ok := DemandGPM(IPCFlushTanks, 1001); ok {
		t.Error("above its last row a table says nothing")
	}
	if _, ok := DemandGPM("no table", 10); ok {
		t.Error("a table that does not exist says nothing")
	}
	if _, _, ok := HouseDemand(map[string]int{"hot tub": 1}, IPCFlushTanks); ok {
		t.Error("a fixture that the table does not hold is not guessed")
	}
}

func TestMoreFixturesNeverAskForLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.SampledFrom([]DemandCurve{IPCFlushTanks, IPCFlushometers, NSPCFlushTanks}).Draw(t, "curve")
		a := rapid.Float64Range(0, 1000).Draw(t, "units")
		b := a + rapid.Float64Range(0, 200).Draw(t, "more")
		less, ok := DemandGPM(c, a)
		more, ok2 := DemandGPM(c, b)
		if ok && ok2 && more < less {
			t.Fatalf("%s: %v units ask for %v, %v for %v gpm", c, a, less, b, more)
		}
	})
}

func TestScaldTimes(t *testing.T) {
	if adult, child, ok := QuickestScald(140); !ok || adult != 5 || child != 2.5 {
		t.Errorf("140 °F: adult %v s, child %v s", adult, child)
	}
	if _, _, ok := ScaldSeconds(CPSCLeaflet, 110); ok {
		t.Error("below its first row a table says nothing")
	}
	_, at135, _ := ScaldSeconds(CPSCLeaflet, 135)
	if !(at135 < 30 && at135 > 6) {
		t.Errorf("135 °F lies between 130 and 140: %v s", at135)
	}
	if p := ScaldPhrase(140, English); !strings.Contains(p, "140 °F") || !strings.Contains(p, "5 seconds") {
		t.Errorf("%q", p)
	}
	if p := ScaldPhrase(120, Spanish); !strings.Contains(p, "5 minutos") {
		t.Errorf("%q", p)
	}
	if p := ScaldPhrase(90, English); p != "" {
		t.Errorf("%q", p)
	}
}

func TestHotterWaterNeverBurnsSlower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		table := rapid.SampledFrom([]ScaldTable{CPSCLeaflet, ScaldTable1, ScaldTable2}).Draw(t, "table")
		f := rapid.Float64Range(100, 210).Draw(t, "f")
		hotter := f + rapid.Float64Range(0, 30).Draw(t, "more")
		s2, s3, ok := ScaldSeconds(table, f)
		h2, h3, ok2 := ScaldSeconds(table, hotter)
		if ok && (!ok2 || h3 > s3 || h2 > s2) {
			t.Fatalf("%s: %v °F %v/%v s, %v °F %v/%v s", table, f, s2, s3, hotter, h2, h3)
		}
	})
}
