package assess

import (
	"strconv"
	"testing"
)

func formatPercent(p float64) string { return strconv.FormatFloat(p, 'g', -1, 64) }

// statistics answers the cases on series of values.
func statistics(t *testing.T, in given) answers {
	switch m := in.text("method"); m {
	case "ordinary least squares":
		l, ok := LeastSquares(in.list("x_values"), in.list("y_values"))
		if !ok {
			t.Error("no line")
		}
		return answers{
			"intercept": l.Intercept, "slope": l.Slope, "intercept_std_error": l.InterceptSE, "slope_std_error": l.SlopeSE,
			"residual_std_dev": l.ResidualSD, "r_squared": l.RSquared, "residual_sum_of_squares": l.ResidualSS, "f_statistic": l.F,
		}
	case "Weibull maximum likelihood, right-censored":
		return weibull(t, in)
	case "Mann-Kendall trend test, one tie", "Mann-Kendall trend test and Sen slope, many ties", "Theil-Sen slope, median intercept, index from 0":
		y := in.list("values")
		k := MannKendall(y)
		s, ok := TheilSen(index(len(y)), y, driftInterval)
		if !ok {
			t.Error("no slope")
		}
		return answers{"S": k.S, "variance_S": k.Variance, "Z": k.Z, "p_one_sided": k.OneSided(), "slope_per_step": s.PerX, "intercept_at_index_0": s.Intercept}
	case "Theil slope":
		s, ok := TheilSen(in.list("x_values"), in.list("y_values"), driftInterval)
		if !ok {
			t.Error("no slope")
		}
		return answers{"S": MannKendall(in.list("y_values")).S, "slope": s.PerX, "slope_rounded": s.PerX}
	case "seasonal Mann-Kendall":
		seasons := int(in.num("season_length"))
		k := SeasonalMannKendall(in.list("values"), seasons)
		slope, ok := SeasonalSlope(in.list("values"), seasons)
		if !ok {
			t.Error("no slope")
		}
		return answers{"S": k.S, "variance_S": k.Variance, "Z": k.Z, "slope_per_season_cycle": slope}
	case "tabular CUSUM":
		c := CUSUMOf(in.list("values"), in.num("target"), in.num("slack_k"), in.num("limit_h"))
		return answers{"upper_sums": c.Upper, "lower_sums": c.Lower, "plain_cumulative_sums": c.Plain, "first_signal_sample_1based": c.Signal}
	case "EWMA chart":
		c := EWMAOf(in.list("values"), in.num("start"), in.num("sigma"), in.num("smoothing_lambda"), in.num("limit_width_sigmas"))
		return answers{"ewma": c.Average, "upper_limit": c.FinalUpper, "lower_limit": c.FinalLower, "signals": len(c.Signals)}
	case "EWMA chart with exact limits":
		c := EWMAOf(in.list("values"), in.num("target"), in.num("sigma"), in.num("smoothing_lambda"), in.num("limit_width_sigmas"))
		return answers{"ewma": c.Average, "upper_limit_first_point": c.Upper[0], "upper_limit_asymptotic": c.FinalUpper, "signal_samples_1based": c.Signals}
	case "individuals chart":
		if in.num("d2") != movingRangeD2 {
			t.Errorf("the product takes %v", movingRangeD2)
		}
		c, ok := IndividualsOf(in.list("values"))
		if !ok {
			t.Error("no chart")
		}
		return answers{"centre": c.Centre, "mean_moving_range": c.MovingRange, "upper_limit": c.Upper, "lower_limit": c.Lower}
	case "Grubbs outlier test, one-sided, 5 %":
		g, ok := GrubbsOf(in.list("values"), 0.05)
		if !ok {
			t.Error("no test")
		}
		return answers{"G": g.G, "critical_value": g.Critical, "reject_outlier": g.Outlier, "largest_possible_z": g.LargestZ}
	default:
		t.Fatalf("nothing answers the method %q", m)
		return nil
	}
}

func index(n int) []float64 {
	x := make([]float64, n)
	for i := range x {
		x[i] = float64(i)
	}
	return x
}

func weibull(t *testing.T, in given) answers {
	key := "times_h"
	if in.has("times_d") {
		key = "times_d"
	}
	var lives []Life
	failed := in.list("failed_1_censored_0")
	for i, v := range in.list(key) {
		lives = append(lives, Life{Years: v, Ended: failed[i] == 1})
	}
	c, err := FitLives(lives)
	if err != nil {
		t.Error(err)
	}
	return answers{
		"scale_eta_h": c.Scale, "shape_beta": c.Shape, "log_likelihood": c.LogLikelihood, "negative_log_likelihood": -c.LogLikelihood,
		"aic": c.AIC(), "mean_life_h": c.Mean(), "life_std_dev_h": c.StdDev(),
		"log_scale_eta": c.logScale(), "one_over_shape_beta": 1 / c.Shape,
	}
}
