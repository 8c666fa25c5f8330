package intents

import "testing"

// The office writes whole sentences: calls passed on, appointments, papers.
func TestSpanishOffice(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"Para Beto: la Sra. Quintana (tel. 555-0142) de 2716 Harbor Light Dr reporta golpeteo en la tubería. Pasar mañana a las 10.", "2716 Harbor Light Dr | hammer; plan other 1"},
		{"¿Qué visitas tenemos pendientes para esta semana?", "ask due"},
		{"Me pasan la hoja del cliente de 405 Lindero Way por favor", "405 Lindero Way | ask report"},
		{"El técnico reporta: 5150 Marsh Hawk, presión en lavandería 83 psi, boiler apagado.", "5150 Marsh Hawk | 83 laundry idle"},
		{"Se reagenda 405 Lindero Way para dentro de dos semanas.", "405 Lindero Way | ask snooze 14"},
		{"La orden 88213 ya se cobró, $240.", "ask none"},
		{"Ya se hizo la revisión pendiente de 92 Cobble Ct, quedó cerrada.", "92 Cobble Ct | ask done"},
		{"Mándame el resumen del equipo", "ask summary"},
		{"Corrección de 61 Fennel Ct: la presión de la cocina es 64 y no 74", "61 Fennel Ct | 64 kitchen; ask correct"},
		{"Cliente en 3300 Bluebonnet pregunta por qué le llegó tan alto el recibo, 190 dólares.", "3300 Bluebonnet | ask none"},
		{"Cómo se usa esto?", "ask help"},
		{"Se recibió llamada de 4410 Linden Park, la clienta dice que no tiene agua desde las 7 am", "4410 Linden Park | no_water"},
		{"Favor de cancelar el último reporte, fue un error.", "ask undo"},
		{"Necesito el reporte para la clienta de 22 Palmer Pl", "22 Palmer Pl | ask report"},
		{"¿Cuáles revisiones vencen este viernes?", "ask due"},
		{"Agendar revisión de presión en 610 Ginger Ct para el 30 de junio", "610 Ginger Ct | plan recheck 15"},
		{"El técnico olvidó poner el dato: 902 Bayberry Ct calentador eléctrico, 40 galones, 2016", "902 Bayberry Ct | heater: 2016 40gal electric"},
		{"Posponer 1244 Sparrow Hill Rd un mes por favor", "1244 Sparrow Hill Rd | ask snooze 30"},
		{"¿Cuántas visitas hizo el equipo esta semana?", "ask summary"},
		{"La factura 4471 de 5521 Redwing Dr quedó pagada, $1,250", "5521 Redwing Dr | ask none"},
		{"El inspector llega a las 2 a 33 Polk Sq", "33 Polk Sq | ask none"},
		{"Llamó la Sra. Pineda del 2290 Harvest Hill Ln: agua amarilla en toda la casa desde el lunes.", "2290 Harvest Hill Ln | rusty_water"},
		{"Recordatorio: el 25 de junio revisar 2290 Harvest Hill Ln", "2290 Harvest Hill Ln | plan recheck 10"},
		{"Por favor pasen a cobrar a 15 Cotton Gin Rd", "15 Cotton Gin Rd | ask none"},
		{"Jorge dice que midió 78 en la lavadora de 2290 Harvest Hill Ln con el calentador apagado", "2290 Harvest Hill Ln | 78 laundry idle"},
		{"¿Ya quedó lo de 15 Cotton Gin Rd?", "15 Cotton Gin Rd | ask history"},
		{"¿Qué tanque de expansión le toca a un calentador de 50 galones con 75 libras?", "ask tank_size 50gal 75psi"},
		{"¿A cuánto equivalen 60 libras en bar?", "ask convert 60 psi bar"},
		{"Bórrenlo, ese reporte era de otra dirección", "ask undo"},
		{"El cliente de 718 Gatewood canceló", "718 Gatewood | ask none"},
	})
}
