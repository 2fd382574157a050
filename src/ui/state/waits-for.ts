import type { Case } from '#core/case/record.ts';
import { missingCells, unseenWalls } from './open-counts.ts';

/** What a case waits for, in a few words. */
export function waitsFor(c: Case): string {
	const missing = missingCells(c);
	if (missing.length > 3) return `${String(missing.length)} of the first numbers`;
	if (missing.length > 0) return missing.map(({ label }) => label.toLowerCase()).join('; ');
	const unseen = unseenWalls(c);
	if (unseen.length > 0) return `a look behind the ${unseen.join(' and the ')} wall`;
	return 'a look at the places';
}

/** When something was changed, as one says it. */
export function whenWords(at: string, now: Date): string {
	const then = new Date(at);
	const days = Math.round((startOf(now) - startOf(then)) / 86_400_000);
	if (days === 0) return then.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
	if (days === 1) return 'yesterday';
	return then.toLocaleDateString('en-GB', { day: 'numeric', month: 'short' });
}

function startOf(moment: Date): number {
	return new Date(moment.getFullYear(), moment.getMonth(), moment.getDate()).getTime();
}
