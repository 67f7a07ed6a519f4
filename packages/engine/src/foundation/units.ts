/**
 * Exact factors between the units of the workshop and SI; the only place where one is turned into the other. Source: NIST SP
 * 811, appendix B (from memory): the inch, pound and US gallon are exact by definition, the rest follow by arithmetic.
 */
export const M_PER_INCH = 0.0254;
export const M_PER_FOOT = 0.3048;
export const M_PER_YARD = 0.9144;
export const KG_PER_POUND = 0.45359237;
export const KG_PER_OUNCE = 0.028349523125;
export const M3_PER_US_FLUID_OUNCE = 29.5735295625e-6;
export const M2_PER_SQUARE_INCH = 0.00064516;
export const M2_PER_SQUARE_FOOT = 0.09290304;
export const M2_PER_SQUARE_YARD = 0.83612736;
/** 0.3048 cubed. */
export const M3_PER_CUBIC_FOOT = 0.028316846592;
export const M3_PER_CUBIC_INCH = 1.6387064e-5;
/** Ounce over square yard; 0.0339057… */
export const KG_M2_PER_OUNCE_YD2 = KG_PER_OUNCE / M2_PER_SQUARE_YARD;
/** Pound over cubic foot; 16.0184… */
export const KG_M3_PER_POUND_FT3 = KG_PER_POUND / M3_PER_CUBIC_FOOT;
export const INCHES_PER_FOOT = 12;
export const OUNCES_PER_POUND = 16;
export const S_PER_MINUTE = 60;
export const S_PER_HOUR = 3600;
export const S_PER_DAY = 86400;
const K_AT_0_C = 273.15;
/** 0 degrees Fahrenheit is 459.67 Fahrenheit degrees above absolute zero. */
const F_DEGREES_BELOW_0_F = 459.67;
const F_DEGREES_PER_K = 1.8;

export const kelvinFromCelsius = (celsius: number): number => celsius + K_AT_0_C;
export const celsiusFromKelvin = (temperatureK: number): number => temperatureK - K_AT_0_C;
export const kelvinFromFahrenheit = (fahrenheit: number): number =>
  (fahrenheit + F_DEGREES_BELOW_0_F) / F_DEGREES_PER_K;
export const fahrenheitFromKelvin = (temperatureK: number): number =>
  temperatureK * F_DEGREES_PER_K - F_DEGREES_BELOW_0_F;

export const radFromDegrees = (degrees: number): number => (degrees * Math.PI) / 180;
export const degreesFromRad = (angleRad: number): number => (angleRad * 180) / Math.PI;
