import type { How } from '#core/case/fact.ts';

/** Seen, not only told. */
export const isSeen = (how: How): boolean => how === 'measured' || how === 'observed' || how === 'declared';

/** How something is known, in words after what it is. */
export const asKnown = (how: How): string => (isSeen(how) ? 'as seen' : `as ${how}`);

/** The same after a comma, only where nobody saw it. */
export const asTold = (how: How): string => (isSeen(how) ? '' : `, ${asKnown(how)}`);
