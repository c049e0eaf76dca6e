import type { BenchSession } from '../../state/bench.svelte.ts';

/** What the bench can be told by a key besides what its session does itself. */
export interface Commands {
  readonly present: () => void;
  readonly save: () => void;
}

/** Whether a key event was a shortcut, and has been answered. */
export function answerKey(event: KeyboardEvent, bench: BenchSession, commands: Commands): boolean {
  const key = event.key.toLowerCase();
  if (event.ctrlKey || event.metaKey) {
    // In a text that is being typed, the browser's own undo is the right one.
    if (isTyping(event.target) && !isSettled(event.target)) return false;
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

/** A figure's field says so itself once what was typed has become the value. */
const isSettled = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && 'settled' in target.dataset;

function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement) return true;
  return target instanceof HTMLInputElement && target.type === 'text';
}
