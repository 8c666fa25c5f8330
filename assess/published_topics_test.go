package assess

import (
	"strings"
	"testing"
)

// topics maps each topic of the numeric cases to the product's function that
// answers it.
var topics = map[string]func(*testing.T, given) answers{
	"unit conversion":                                    units,
	"water specific volume":                              specificVolume,
	"water density":                                      density,
	"compressed water volume and sound speed":            compressedWater,
	"saturated water density and sound speed":            saturatedWater,
	"thermal expansion volume":                           expansionVolume,
	"expansion tank size":                                tankSize,
	"pressure after expansion":                           afterExpansion,
	"usable acceptance with a wrong air charge":          wrongCharge,
	"pressure rise per degree in closed water":           risePerDegree,
	"gauge error band":                                   gaugeError,
	"gauge reading against a limit":                      gaugeLimit,
	"scald exposure time":                                scald,
	"static head":                                        head,
	"water hammer":                                       hammer,
	"flow and leakage against pressure":                  leakage,
	"demand curve, IPC flush tanks":                      demand(IPCFlushTanks),
	"demand curve, IPC flushometer valves":               demand(IPCFlushometers),
	"demand curve, NSPC flush tanks (not the IPC curve)": demand(NSPCFlushTanks),
	"fixture load values":                                fixtureLoad,
	"house demand":                                       houseDemand,
	"design flow and flow pressure at outlets":           outletNeed,
	"statistics":                                         statistics,
	"static pressure band":                               staticBand,
	"fixture working pressure":                           workingPressure,
	"relief valve facts":                                 reliefValve,
	"PRV":                                                reduction,
}

func units(t *testing.T, in given) answers {
	from := map[string]PressureUnit{
		"pressure_psi": UnitPSI, "pressure_bar": UnitBar, "pressure_kPa": UnitKPa, "pressure_MPa": UnitMPa,
		"pressure_kgf_per_cm2": UnitKgfPerCM2, "head_m_h2o_conventional": UnitMetreOfWater, "head_ft_h2o_conventional": UnitFootOfWater,
	}
	to := map[string]PressureUnit{
		"pressure_Pa": UnitPa, "pressure_kPa": UnitKPa, "pressure_psi": UnitPSI, "head_m_h2o_conventional": UnitMetreOfWater,
	}
	out := answers{}
	for key := range in {
		switch key {
		case "pressure_psig":
			out["pressure_psia"] = AbsolutePSI(in.num(key))
		case "volume_gal_us":
			out["volume_L"] = Litres(in.num(key))
		default:
			for name, unit := range to {
				v, ok := Convert(in.num(key), from[key], unit)
				if !ok {
					t.Errorf("no conversion from %s to %s", key, name)
				}
				out[name] = v
			}
		}
	}
	return out
}

func specificVolume(_ *testing.T, in given) answers {
	if in.has("temperature_degF") {
		return answers{"specific_volume_ft3_per_lb": SpecificVolumeFt3(in.num("temperature_degF"))}
	}
	return answers{"specific_volume_cm3_per_g": SpecificVolume(in.num("temperature_degC"))}
}

func density(_ *testing.T, in given) answers {
	return answers{"density_kg_per_m3": Density(in.num("temperature_degC"))}
}

func compressedWater(_ *testing.T, in given) answers {
	w := WaterAt(in.num("temperature_K"), in.num("pressure_MPa_absolute"))
	return answers{"specific_volume_m3_per_kg": w.Volume, "sound_speed_m_per_s": w.SoundSpeed}
}

func saturatedWater(_ *testing.T, in given) answers {
	k := in.num("temperature_K")
	w := WaterAt(k, SaturationMPa(k))
	return answers{"molar_density_mol_per_dm3": w.MolPerDM3(), "sound_speed_m_per_s": w.SoundSpeed}
}

func expansionVolume(_ *testing.T, in given) answers {
	return answers{"expansion_gal_us": ExpandedGal(in.num("water_volume_gal_us"), in.num("cold_degF"), in.num("hot_degF"))}
}

// sameAtmosphere makes sure that a case asks for the atmosphere the product takes.
func sameAtmosphere(t *testing.T, in given, key string) {
	if in.num(key) != tankAtmospherePSI {
		t.Errorf("%s = %v, the product takes %v", key, in[key], tankAtmospherePSI)
	}
}

func tankSize(t *testing.T, in given) answers {
	out := answers{}
	size := func(gal float64, ok bool) {
		if !ok {
			t.Error("no tank is large enough")
		}
		out["tank_gal_us"] = gal
	}
	switch {
	case in.has("cold_psia"):
		sameAtmosphere(t, in, "atmospheric_psia")
		out["acceptance_factor_diaphragm"] = Acceptance(in.num("cold_psia"), in.num("hot_psia"))
		out["acceptance_factor_plain_steel"] = PlainAcceptance(in.num("cold_psia"), in.num("hot_psia"))
	case in.has("specific_volume_cold_ft3_per_lb"):
		out["net_expansion_gal_us"] = SteelSystemExpandedGal(in.num("system_gal_us"), in.num("specific_volume_cold_ft3_per_lb"),
			in.num("specific_volume_hot_ft3_per_lb"), in.num("linear_expansion_per_degF"), in.num("temperature_rise_degF"))
	case in.has("average_water_degF"):
		sameAtmosphere(t, in, "atmospheric_psi")
		size(HeatingTankGal(in.num("system_gal_us"), in.num("average_water_degF"), in.num("min_psig"), in.num("max_psig")))
	default:
		sameAtmosphere(t, in, "atmospheric_psi")
		var grow float64
		if in.has("expansion_gal_us") {
			grow = in.num("expansion_gal_us")
		} else {
			grow = ExpandedGal(in.num("heater_gal_us"), in.num("cold_degF"), in.num("hot_degF"))
			out["expansion_gal_us"] = grow
		}
		size(TankGal(grow, in.num("static_and_air_charge_psig"), in.num("limit_psig")))
	}
	return out
}

func afterExpansion(t *testing.T, in given) answers {
	sameAtmosphere(t, in, "atmospheric_psi")
	static := in.num("static_and_air_charge_psig")
	psi, ok := FinalPSI(in.num("tank_gal_us"), static, static, in.num("expansion_gal_us"))
	return answers{"tank_can_accept": ok, "final_psig": psi}
}

func wrongCharge(t *testing.T, in given) answers {
	sameAtmosphere(t, in, "atmospheric_psi")
	return answers{"acceptance_gal_us": AcceptanceGal(in.num("tank_gal_us"), in.num("air_charge_psig"), in.num("static_psig"), in.num("limit_psig"))}
}

func risePerDegree(t *testing.T, in given) answers {
	if in.num("pressure_MPa_absolute") != risePressureMPa {
		t.Errorf("the product takes %v MPa", risePressureMPa)
	}
	var v Vessel
	if in.text("vessel") != "rigid" {
		v = HeaterVessel(50)
		if v.DiameterOverWall != in.num("diameter_over_wall") || v.YoungPa != in.num("youngs_modulus_Pa") ||
			v.Poisson != in.num("poisson_ratio") || v.LinearPerK != in.num("steel_linear_expansion_per_K") {
			t.Errorf("the product's heater is another: %+v", v)
		}
	}
	return answers{"rise_psi_per_degF": RisePSIPerF(in.num("water_degF"), v)}
}

func gaugeError(t *testing.T, in given) answers {
	switch {
	case in.has("true_psig"):
		psi, percent := GaugeError(in.num("indicated_psig"), in.num("true_psig"), in.num("gauge_span_psi"))
		return answers{"error_psi": psi, "error_pct_of_span": percent}
	case in.has("en837_class"):
		span, _ := Convert(in.num("gauge_span_bar"), UnitBar, UnitPSI)
		g := GaugeSpec{Grade: formatPercent(in.num("en837_class")), SpanPSI: span}
		bar, _ := Convert(g.PlusMinus(span/2), UnitPSI, UnitBar)
		return answers{"plus_minus_bar": bar}
	case in.has("accuracy_pct_of_span"):
		g := GaugeSpec{Grade: formatPercent(in.num("accuracy_pct_of_span")), SpanPSI: in.num("gauge_span_psi")}
		return answers{"plus_minus_psi": g.PlusMinus(in.num("reading_psi"))}
	}
	grade, _, _ := strings.Cut(in.text("gauge_grade"), " ")
	g := GaugeSpec{Grade: grade, SpanPSI: in.num("gauge_span_psi")}
	if err := g.Check(); err != nil {
		t.Error(err)
	}
	if in.has("reading_psi") {
		return answers{"plus_minus_psi": g.PlusMinus(in.num("reading_psi"))}
	}
	return answers{"middle_half_plus_minus_psi": g.PlusMinus(g.SpanPSI / 2), "remainder_plus_minus_psi": g.PlusMinus(g.SpanPSI * 0.9)}
}

func gaugeLimit(_ *testing.T, in given) answers {
	g := GaugeSpec{Grade: in.text("gauge_grade"), SpanPSI: in.num("gauge_span_psi")}
	low, high := g.Interval(in.num("reading_psi"))
	side := g.AgainstLimit(in.num("reading_psi"), in.num("limit_psi"))
	return answers{
		"low_psi": low, "high_psi": high,
		"whole_interval_above_limit": side == Above, "whole_interval_at_or_below_limit": side == AtOrBelow,
	}
}

func scald(t *testing.T, in given) answers {
	second, third, ok := ScaldSeconds(ScaldTable(in.text("table")), in.num("water_degF"))
	if !ok {
		t.Error("the table says nothing")
	}
	return answers{"second_degree_s": second, "third_degree_s": third}
}

func head(t *testing.T, in given) answers {
	if in.has("water_degF") {
		return answers{"psi_per_ft": HeadPSIPerFootAt(in.num("water_degF"))}
	}
	if in.num("psi_per_ft") != HeadPSIPerFoot {
		t.Errorf("the product takes %v psi a foot", HeadPSIPerFoot)
	}
	return answers{"pressure_change_psi": HeadPSI(in.num("outlet_above_gauge_ft"))}
}

func hammer(t *testing.T, in given) answers {
	switch {
	case in.has("pipe"):
		pipe, ok := pipeNamed(in.text("pipe"))
		if !ok || pipe.InsideIn != in.num("inside_diameter_in") || pipe.WallIn != in.num("wall_in") || pipe.youngPa() != in.num("youngs_modulus_Pa") ||
			waterBulkPa != in.num("bulk_modulus_Pa") || waterKgPerM3 != in.num("density_kg_per_m3") {
			t.Errorf("the product's %s is another: %+v", in.text("pipe"), pipe)
		}
		return answers{"wave_speed_m_per_s": pipe.WaveSpeed(), "surge_psi": SurgePSI(pipe, in.num("velocity_change_ft_per_s"))}
	case in.has("wave_speed_m_per_s"):
		const rho = 1000 // cancels: the case is in metres of the same water
		g, a, l, v := in.num("gravity_m_per_s2"), in.num("wave_speed_m_per_s"), in.num("pipe_length_m"), in.num("velocity_m_per_s")
		return answers{
			"instant_closure_head_m": surgePa(rho, a, v) / rho / g,
			"round_trip_s":           roundTrip(l, a),
			"slow_closure_head_m":    slowSurgePa(rho, l, v, in.num("closure_s")) / rho / g,
		}
	case in.has("closure_s"):
		v, l, s := in.num("velocity_change_ft_per_s"), in.num("pipe_length_ft"), in.num("closure_s")
		return answers{"rule_of_thumb_rise_psi": RuleOfThumbSurgePSI(v, l, s), "rigid_column_rise_psi": RigidColumnPSI(v, l, s)}
	}
	return answers{"wave_speed_m_per_s": waveSpeed(in.num("bulk_modulus_Pa"), in.num("density_kg_per_m3"), in.num("youngs_modulus_Pa"), in.num("diameter_over_wall"))}
}

// pipeNamed reads the cases' names of pipes, "copper 3/4 type L".
func pipeNamed(name string) (Pipe, bool) {
	f := strings.Fields(name)
	size := map[string]float64{"1/2": 0.5, "3/4": 0.75, "1": 1}[f[1]]
	return PipeOf(PipeMaterial(strings.ToLower(f[0])), size)
}

func leakage(t *testing.T, in given) answers {
	first := func(keys ...string) float64 {
		for _, k := range keys {
			if in.has(k) {
				return in.num(k)
			}
		}
		t.Fatalf("none of %v is given", keys)
		return 0
	}
	ratio, ok := FlowRatio(first("first_psi", "first_head_m"), first("second_psi", "second_head_m"), first("exponent", "exponent_N1"))
	if !ok {
		t.Error("no ratio")
	}
	return answers{"flow_ratio": ratio, "change_pct": 100 * (ratio - 1), "reduction_pct": 100 * (1 - ratio)}
}

func demand(curve DemandCurve) func(*testing.T, given) answers {
	return func(t *testing.T, in given) answers {
		gpm, ok := DemandGPM(curve, in.num("load_wsfu"))
		if !ok || curve.Source() == "" {
			t.Errorf("%s does not reach %v units", curve, in.num("load_wsfu"))
		}
		return answers{"demand_gpm": gpm}
	}
}

func fixtureLoad(t *testing.T, in given) answers {
	u, ok := UnitsOf(in.text("fixture"))
	if !ok {
		t.Error("the fixture is not known")
	}
	return answers{"cold_wsfu": u.Cold, "hot_wsfu": u.Hot, "total_wsfu": u.Total}
}

func houseDemand(t *testing.T, in given) answers {
	counts := map[string]int{}
	for name, n := range in["fixture_counts"].(map[string]any) {
		counts[name] = int(n.(float64))
	}
	wsfu, gpm, ok := HouseDemand(counts, IPCFlushTanks)
	if !ok {
		t.Error("no demand")
	}
	return answers{"load_wsfu": wsfu, "demand_gpm": gpm}
}

func outletNeed(t *testing.T, in given) answers {
	n, ok := NeedOf(in.text("outlet"))
	if !ok {
		t.Error("the outlet is not known")
	}
	return answers{"flow_gpm": n.GPM, "flow_pressure_psi": n.PSI}
}

func staticBand(_ *testing.T, in given) answers {
	b := BandOf(in.num("static_psi"), [2]float64{BandLowPSI, BandHighPSI})
	return answers{"exceeds_80_psi": b == BandHigh || b == OverRelief, "below_40_psi": b == BandLow, "at_or_above_150_psi": b == OverRelief}
}

func workingPressure(t *testing.T, in given) answers {
	low, high, ok := WorkingPressure(in.text("fixture"))
	if !ok {
		t.Error("the fixture is not known")
	}
	return answers{"min_psi": low, "max_psi": high}
}

func reliefValve(_ *testing.T, in given) answers {
	if strings.HasPrefix(in.text("item"), "discharge pipe") {
		return answers{"max_above_floor_in": DischargeEndAboveFloorIn, "max_length_ft": DischargeMaxFeet, "max_elbows": DischargeMaxElbows}
	}
	return answers{"set_pressure_psi": HeaterReliefPSI, "set_temperature_degF": HeaterReliefF}
}

func reduction(_ *testing.T, in given) answers {
	if in.has("between_bar") {
		most := in.num("max_ratio")
		one, _ := Reduction(in.num("inlet_bar"), in.num("outlet_bar"), most)
		first, over1 := Reduction(in.num("inlet_bar"), in.num("between_bar"), most)
		second, over2 := Reduction(in.num("between_bar"), in.num("outlet_bar"), most)
		return answers{"single_stage_ratio": one, "first_stage_ratio": first, "second_stage_ratio": second, "two_stage_within_max": !over1 && !over2}
	}
	most := 0.0
	if in.has("max_ratio") {
		most = in.num("max_ratio")
	}
	ratio, two := Reduction(in.num("inlet_psi"), in.num("outlet_psi"), most)
	return answers{"ratio": ratio, "two_stage_advised": two}
}
