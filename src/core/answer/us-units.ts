/** US units in the core's units. All exact by definition (psi: a ratio of two that are), NIST SP 811 appendix B. */
export const mm2PerSquareInch = 645.16;
export const m2PerSquareFoot = 0.09290304;
/** 144 cubic inches, 2.359737E-03 m3 in NIST SP 811. */
export const m3PerBoardFoot = 0.0254 ** 3 * 144;
export const m3PerCubicFoot = 0.028316846592;
export const litresPerFluidOunce = 0.0295735295625;
export const litresPerQuart = 0.946352946;
export const litresPerGallon = 3.785411784;
export const kilogramsPerPound = 0.45359237;
export const newtonsPerPoundForce = 4.4482216152605;
/** Pound-force per square inch. */
export const kilopascalsPerPsi = newtonsPerPoundForce / 0.64516;
export const micrometresPerMil = 25.4;
