import { OwnLimitsSession } from './own-limits.svelte.ts';
import type { Shelf } from './shelf.ts';

let session: OwnLimitsSession | null = null;
let opening: Promise<OwnLimitsSession> | null = null;

/** The one session of a person's own sets. */
export const ownLimitsOn = (shelf: Shelf): OwnLimitsSession =>
  (session ??= new OwnLimitsSession(shelf));

/** The same, with what the shelf keeps taken down. */
export function ownLimitsHere(shelf: Shelf): Promise<OwnLimitsSession> {
  opening ??= open(ownLimitsOn(shelf));
  return opening;
}

async function open(own: OwnLimitsSession): Promise<OwnLimitsSession> {
  own.said = await own.open();
  return own;
}
