package intents

import "testing"

// Street lines as Spanish speakers write them.
func TestSpanishSites(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"en el 4 de Heron Bayou Ln atrás 66", "4 Heron Bayou Ln | 66 rear_bibb"},
		{"ya termine en el 390 de Lomita Trace, atras 62", "390 Lomita Trce | 62 rear_bibb"},
		{"en el 22 d Alder St cocina 61", "22 Alder St | 61 kitchen"},
		{"estoy en 310 Bonito Ln, atrás 70", "310 Bonito Ln | 70 rear_bibb"},
		{"estoy en la 310 Bonito Ln, atrás 70", "310 Bonito Ln | 70 rear_bibb"},
		{"ando en el 310 Bonito Ln y atrás trae 70", "310 Bonito Ln | 70 rear_bibb"},
		{"310 Bonito Ln: atrás 70", "310 Bonito Ln | 70 rear_bibb"},
		{"la casa del 310 Bonito Ln, atrás 70", "310 Bonito Ln | 70 rear_bibb"},
		{"Calle Luna #77, atrás 70", "Calle Luna #77 | 70 rear_bibb"},
		{"Calle Marina #22 la llave del costado marca 65", "Calle Marina #22 | 65 side_bibb"},
		{"Buenas, en Calle Marina #22 la llave del costado marca 4.5 bar", "Calle Marina #22 | 65.3 side_bibb"},
		{"Calle 8 #1420, cocina 61", "Calle 8 #1420 | 61 kitchen"},
		{"calle luna numero 77 atras 70", "Calle Luna 77 | 70 rear_bibb"},
		{"Avenida del Sol 1450, cocina 61", "Avenida Del Sol 1450 | 61 kitchen"},
		{"Paseo Real 220 apto 3, cocina 61", "Paseo Real 220 Apt 3 | 61 kitchen"},
		{"605 Coral apto 9, 81 en el lavabo", "605 Coral Apt 9 | 81 bath"},
		{"apto 6, 1900 Gable St, 70 en el lavabo", "1900 Gable St Apt 6 | 70 bath"},
		{"1900 Gable St unidad B, 70 en el lavabo", "1900 Gable St Unit B | 70 bath"},
		{"1900 Gable St depto 4, 70 en el lavabo", "1900 Gable St Apt 4 | 70 bath"},
		{"Vista Grande 1105\nenfrente 66", "Vista Grande 1105 | 66 front_bibb"},
		{"en Vista Grande 1105, enfrente 66", "Vista Grande 1105 | 66 front_bibb"},
		{"14 Sendero Way, atrás 66", "14 Sendero Way | 66 rear_bibb"},
		{"9 Camino Real, atrás 66", "9 Camino Real | 66 rear_bibb"},
		{"dirección: 88 Palo Verde Ct\natrás 66", "88 Palo Verde Ct | 66 rear_bibb"},
		{"Domicilio: Calle Sauce 45. Atrás 66", "Calle Sauce 45 | 66 rear_bibb"},
		{"con la señora del 26 Pomelo Ct, atrás 66", "26 Pomelo Ct | 66 rear_bibb"},
		{"el 4 de julio no trabajamos", "ask none"},
		{"compré 4 de los grandes", "ask none"},
		{"Cocina 66", "66 kitchen"},
		{"La Lavadora 66", "66 laundry"},
		{"unidad 4 del 1900 Gable St, 71 cocina", "1900 Gable St Unit 4 | 71 kitchen"},
		{"departamento 2 en el 1900 Gable St, tina 58", "1900 Gable St Apt 2 | 58 bath"},
		{"depa 2 en 1900 Gable St, tina 58", "1900 Gable St Apt 2 | 58 bath"},
		{"Blvd. Marina 22, cocina 62", "Blvd Marina 22 | 62 kitchen"},
		{"Carr. Vieja 2200, cocina 62", "Carr Vieja 2200 | 62 kitchen"},
	})
}
