/** From how hot a liquid burns. */

/** °C from which a liquid counts as one that burns. Skin held in water of 44 °C is burned in hours, at 49 °C in minutes. From memory. */
export const BURNS_FROM = 44;
