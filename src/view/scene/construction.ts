/** Construction that may be drawn over the section, each with a switch of its own. */
export type Construction = Readonly<
  Record<
    'legs' | 'triangle' | 'throats' | 'chord' | 'band' | 'surfaces' | 'fusion' | 'toeAngles',
    boolean
  >
>;
