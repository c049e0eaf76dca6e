import type { BenchSession } from '../../state/bench.svelte.ts';

/** A key of the bench as its help lists it. */
export interface Shortcut {
  readonly keys: string;
  readonly says: string;
}

/** What the help lists; the single letters work wherever no text is being typed. */
export const shortcuts: readonly Shortcut[] = [
  { keys: 'Arrow keys', says: 'bench_key_arrows' },
  { keys: 'Shift / Alt', says: 'bench_key_shift_alt' },
  { keys: 'Home / End', says: 'bench_key_home_end' },
  { keys: 'Esc', says: 'bench_key_escape' },
  { keys: 'Ctrl Z', says: 'bench_key_undo' },
  { keys: 'Ctrl Y', says: 'bench_key_redo' },
  { keys: 'H', says: 'bench_key_hold' },
  { keys: 'F', says: 'bench_key_stage' },
  { keys: 'P', says: 'bench_key_present' },
  { keys: 'Ctrl S', says: 'bench_key_save' },
];

/** What the bench can be told by a key besides what its session does itself. */
export interface Commands {
  readonly present: () => void;
  readonly save: () => void;
}

/** Whether a key event was a shortcut, and has been answered. */
export function answerKey(event: KeyboardEvent, bench: BenchSession, commands: Commands): boolean {
  const key = event.key.toLowerCase();
  if (event.ctrlKey || event.metaKey) {
    // In a field that is being typed in, the browser's own undo is the right one.
    if (isTyping(event.target)) return false;
    if (key === 'z' && !event.shiftKey) bench.undo();
    else if (key === 'y' || key === 'z') bench.redo();
    else if (key === 's') commands.save();
    else return false;
    return true;
  }
  if (event.altKey || isTyping(event.target)) return false;
  if (key === 'h') bench.hold();
  else if (key === 'f') bench.setStage(bench.joint.stage === 'fitUp' ? 'welded' : 'fitUp');
  else if (key === 'p') commands.present();
  else return false;
  return true;
}

function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement) return true;
  return target instanceof HTMLInputElement && target.type === 'text';
}
