/** Physical constants shared by the models; each with its unit and source. */

/** Standard acceleration of gravity, m/s². 3rd CGPM (1901); ISO 2533. */
export const GRAVITY_MS2 = 9.80665;
/** 0 °C in kelvin. ITS-90 by definition. */
export const ZERO_C_K = 273.15;
/** Stefan–Boltzmann constant, W/(m² K⁴). SI 2019, CODATA. */
export const STEFAN_BOLTZMANN_WM2K4 = 5.670374419e-8;
/** Latent heat of evaporation of water at 100 °C, J/kg. Steam tables (IAPWS). */
export const LATENT_HEAT_JKG = 2.2565e6;
/** Molar mass of water, kg/mol. IAPWS R6-95. */
export const WATER_KGMOL = 0.018015268;
/** Heat capacity of dry air at constant pressure, J/(kg K). ASHRAE Handbook of Fundamentals, ch. 1. */
export const AIR_HEAT_CAPACITY_JKGK = 1006;
/** Gas constant of dry air, J/(kg K). ISO 2533. */
export const AIR_GAS_JKGK = 287.05287;
/** Usual room temperature, °C; common practice, no published source. */
export const USUAL_ROOM_C = 20;
/** Litres in a cubic metre. */
export const JOULES_KWH = 3.6e6;
