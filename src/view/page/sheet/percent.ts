/** How much more or less than as specified a share is, in whole per cent: +31 %, −12 %. */
export const percent = (ratio: number): string => {
  const whole = Math.round((ratio - 1) * 100);
  return `${whole >= 0 ? '+' : '−'}${Math.abs(whole)} %`;
};
