/** µm below which a removal, an excess or a shortfall is rounding: far less than an atom. */
export const NOTHING = 1e-8;
