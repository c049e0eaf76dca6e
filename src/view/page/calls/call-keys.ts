import type { CallsSession } from '../../../state/calls.svelte.ts';

/** Letters of the calls. */
const letters = { a: 'accept', r: 'reject', f: 'refer' } as const;
const isLetter = (key: string): key is keyof typeof letters => Object.hasOwn(letters, key);

/** What the keys of a question do besides what its session does itself. */
interface Meant {
  readonly commit: () => void;
  /** whether what follows feedback may be asked for yet */
  readonly mayGoOn: boolean;
}

/** Whether a key was for the question, and has been answered. */
export function answerKey(event: KeyboardEvent, session: CallsSession, meant: Meant): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey || session.question === null) return false;
  // a key held down is one press: it must not make calls by itself
  if (event.repeat || isOwnKey(event)) return false;
  if (session.paused) return goOn(event.key, () => session.pause(false));
  if (session.made !== null) return goOn(event.key, () => meant.mayGoOn && session.next());
  return callKey(event.key, session, meant);
}

function goOn(key: string, go: () => void): boolean {
  if (key === 'Enter') go();
  return key === 'Enter';
}

function callKey(key: string, session: CallsSession, { commit }: Meant): boolean {
  const letter = key.toLowerCase();
  if (isLetter(letter)) {
    const call = letters[letter];
    if (call === 'refer' && !session.refers) return false;
    if (session.draft.mark(call)) commit();
    return true;
  }
  if (/^[1-9]$/.test(key)) {
    const fault = session.draft.names[Number(key) - 1];
    // what is accepted has no fault to name: a digit must not turn the call round
    if (fault === undefined || session.draft.call === 'accept') return false;
    session.draft.name(fault);
    return true;
  }
  switch (key) {
    case 'Enter':
      if (session.draft.answer !== null) commit();
      return session.draft.answer !== null;
    case 'Escape':
      session.draft.takeBack();
      return true;
    case 'ArrowRight':
    case 'ArrowLeft':
      session.draft.surer(key === 'ArrowRight' ? 1 : -1);
      return true;
    case 'ArrowDown':
    case 'ArrowUp':
      if (session.draft.call !== 'reject') return false;
      session.draft.nameNext(key === 'ArrowDown' ? 1 : -1);
      return true;
    default:
      return false;
  }
}

/** Whether what has the focus answers this key itself. */
function isOwnKey({ target, key }: KeyboardEvent): boolean {
  if (!(target instanceof Element)) return false;
  if (key === 'Enter') return target.closest('a, summary, .tool') !== null;
  return key.startsWith('Arrow') && target instanceof HTMLInputElement;
}
