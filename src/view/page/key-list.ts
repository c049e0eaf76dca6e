/** A key of the bench as its help lists it. */
export interface Shortcut {
  readonly keys: string;
  readonly says: string;
}

/** What the help lists; the single letters work wherever no text is being typed. */
export const keyList: readonly Shortcut[] = [
  { keys: 'Arrow keys', says: 'bench_key_arrows' },
  { keys: 'Shift / Alt', says: 'bench_key_shift_alt' },
  { keys: 'Home / End', says: 'bench_key_home_end' },
  { keys: 'Esc', says: 'bench_key_escape' },
  { keys: 'Ctrl Z', says: 'bench_key_undo' },
  { keys: 'Ctrl Y', says: 'bench_key_redo' },
  { keys: 'H', says: 'bench_key_hold' },
  { keys: 'F', says: 'bench_key_stage' },
  { keys: 'P', says: 'bench_key_present' },
  { keys: 'C', says: 'bench_key_keep' },
  { keys: 'Ctrl S', says: 'bench_key_save' },
];
