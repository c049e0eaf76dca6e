import { OwnLimitsSession } from './own-limits.svelte.ts';
import type { Shelf } from './shelf.ts';

let session: OwnLimitsSession | null = null;
let opening: Promise<OwnLimitsSession> | null = null;

/** The one session of a person's own sets. */
export const ownLimitsOn = (shelf: Shelf): OwnLimitsSession =>
  (session ??= new OwnLimitsSession(shelf));

/** The same, with what the shelf keeps taken down; tried again if that fails. */
export function ownLimitsHere(shelf: Shelf): Promise<OwnLimitsSession> {
  opening ??= open(ownLimitsOn(shelf)).catch((error: unknown) => {
    opening = null;
    throw error;
  });
  return opening;
}

async function open(own: OwnLimitsSession): Promise<OwnLimitsSession> {
  own.said = await own.open();
  // another tab has written, or may have while this page lay in the history
  for (const event of ['storage', 'pageshow']) addEventListener(event, () => void own.follow());
  return own;
}
