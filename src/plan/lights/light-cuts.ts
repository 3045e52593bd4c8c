/** How the cut-outs that lights need begin their name: they are made in the shop, not on site. */
export const LIGHT_CUT = 'light'
