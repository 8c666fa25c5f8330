package assess

import "math"

// Density is that of water at atmospheric pressure, kg/m³, from t in °C. The
// equation is Kell's, J. Chem. Eng. Data 20 (1975) 97, as quoted, good from 0
// to 100 °C; beyond that the nearer end is taken. (A shorter equation under
// the same name is another fit and is 0.13 kg/m³ off at 10 °C.)
func Density(t float64) float64 {
	t = clamp(t, 0, 100)
	return (999.83952 + t*(16.945176+t*(-7.9870401e-3+t*(-46.170461e-6+t*(105.56302e-9-t*280.54253e-12))))) /
		(1 + 16.879850e-3*t)
}

// SpecificVolume is that of water at atmospheric pressure, cm³/g, from °C.
func SpecificVolume(t float64) float64 { return 1000 / Density(t) }

// SpecificVolumeFt3 is that of water at atmospheric pressure, ft³/lb, from °F.
// The trade prints it with five digits, which are too coarse from 40 to 60 °F.
func SpecificVolumeFt3(f float64) float64 {
	const ft3PerM3 = 1 / (metrePerFoot * metrePerFoot * metrePerFoot)
	return kgPerPound * ft3PerM3 / Density(Celsius(f))
}

// HeadPSIPerFootAt is the pressure of a foot of standing water of f °F, from
// its density.
func HeadPSIPerFootAt(f float64) float64 {
	return Density(Celsius(f)) * StandardGravity * metrePerFoot / paPerPSI
}

// Water is the state of liquid water by IAPWS-IF97, the industrial standard of
// the International Association for the Properties of Water and Steam, region 1.
type Water struct {
	Volume          float64 // m³/kg
	SoundSpeed      float64 // m/s
	Expansion       float64 // cubic expansion at constant pressure, 1/K
	Compressibility float64 // isothermal, 1/Pa
}

// if97Water are the coefficients of region 1: I, J and n of
// gamma = Σ n (7.1 - pi)^I (tau - 1.222)^J. IAPWS-IF97 table 2, from memory;
// the release's own verification values are held in the tests. (Copies with
// the second coefficient -0.84548187389013 are in circulation: it is wrong.)
var if97Water = [34]struct {
	i, j int
	n    float64
}{
	{0, -2, 0.14632971213167}, {0, -1, -0.84548187169114}, {0, 0, -3.7563603672040},
	{0, 1, 3.3855169168385}, {0, 2, -0.95791963387872}, {0, 3, 0.15772038513228},
	{0, 4, -0.016616417199501}, {0, 5, 0.81214629983568e-3}, {1, -9, 0.28319080123804e-3},
	{1, -7, -0.60706301565874e-3}, {1, -1, -0.018990068218419}, {1, 0, -0.032529748770505},
	{1, 1, -0.021841717175414}, {1, 3, -0.52838357969930e-4}, {2, -3, -0.47184321073267e-3},
	{2, 0, -0.30001780793026e-3}, {2, 1, 0.47661393906987e-4}, {2, 3, -0.44141845330846e-5},
	{2, 17, -0.72694996297594e-15}, {3, -4, -0.31679644845054e-4}, {3, 0, -0.28270797985312e-5},
	{3, 6, -0.85205128120103e-9}, {4, -5, -0.22425281908000e-5}, {4, -2, -0.65171222895601e-6},
	{4, 10, -0.14341729937924e-12}, {5, -8, -0.40516996860117e-6}, {8, -11, -0.12734301741641e-8},
	{8, -6, -0.17424871230634e-9}, {21, -29, -0.68762131295531e-18}, {23, -31, 0.14478307828521e-19},
	{29, -38, 0.26335781662795e-22}, {30, -39, -0.11947622640071e-22}, {31, -40, 0.18228094581404e-23},
	{32, -41, -0.93537087292458e-25},
}

// WaterAt is water at a temperature (K) and an absolute pressure (MPa). It is
// meant for liquid water of 273.15 to 623.15 K and up to 100 MPa; outside, the
// nearer end is taken, and below the boiling pressure that pressure, so that no
// input gives nonsense.
func WaterAt(kelvin, megapascal float64) Water {
	const r = 461.526 // J/(kg K), gas constant of water in IF97
	t := clamp(kelvin, 273.15, 623.15)
	p := clamp(megapascal, SaturationMPa(t), 100)
	pi, tau := p/16.53, 1386/t
	a, b := 7.1-pi, tau-1.222
	var gp, gpp, gt, gtt, gpt float64
	for _, c := range if97Water {
		pa, pb := math.Pow(a, float64(c.i)), math.Pow(b, float64(c.j))
		i, j := float64(c.i), float64(c.j)
		gp -= c.n * i * pa / a * pb
		gpp += c.n * i * (i - 1) * pa / (a * a) * pb
		gt += c.n * pa * j * pb / b
		gtt += c.n * pa * j * (j - 1) * pb / (b * b)
		gpt -= c.n * i * pa / a * j * pb / b
	}
	d := gp - tau*gpt
	return Water{
		Volume:          r * t / (p * 1e6) * pi * gp,
		SoundSpeed:      math.Sqrt(r * t * gp * gp / (d*d/(tau*tau*gtt) - gpp)),
		Expansion:       d / (t * gp),
		Compressibility: -pi * gpp / (p * 1e6 * gp),
	}
}

// SaturationMPa is the pressure at which water of the temperature boils, MPa
// absolute: IAPWS-IF97 region 4, from memory, 273.15 to 647 K.
func SaturationMPa(kelvin float64) float64 {
	const (
		n1, n2, n3, n4, n5  = 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7
		n6, n7, n8, n9, n10 = 0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3
	)
	t := clamp(kelvin, 273.15, 647)
	th := t + n9/(t-n10)
	a := th*th + n1*th + n2
	b := n3*th*th + n4*th + n5
	c := n6*th*th + n7*th + n8
	x := 2 * c / (-b + math.Sqrt(b*b-4*a*c))
	return x * x * x * x
}

// molarMassWater in kg/mol: IAPWS, from memory.
const molarMassWater = 0.018015268

// MolPerDM3 is the water's molar density, mol/dm³, as handbooks print it.
func (w Water) MolPerDM3() float64 { return 1 / (w.Volume * molarMassWater * 1000) }

func clamp(v, lo, hi float64) float64 {
	if !(v >= lo) { // NaN too
		return lo
	}
	return math.Min(v, hi)
}
