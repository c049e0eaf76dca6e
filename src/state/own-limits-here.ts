import { OwnLimitsSession } from './own-limits.svelte.ts';
import type { Shelf } from './shelf.ts';

let here: Promise<OwnLimitsSession> | null = null;

/** The one session of a person's own sets, opened from the shelf when it is first asked for. */
export function ownLimitsHere(shelf: Shelf): Promise<OwnLimitsSession> {
  here ??= opened(new OwnLimitsSession(shelf));
  return here;
}

async function opened(session: OwnLimitsSession): Promise<OwnLimitsSession> {
  session.said = await session.open();
  return session;
}
