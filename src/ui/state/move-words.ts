import type { Mark } from '#core/case/accessory.ts';
import { signed, figure } from '#core/drawing/figure.ts';
import { cornerOf } from '#core/drawing/setting-out.ts';
import type { Scene } from '#core/measures/scene.ts';
import { sameRow } from '#core/placement/worse.ts';
import type { Answer, Finding, Strength } from '#core/rules/row.ts';
import type { Tape } from '#core/units/format.ts';

/** A row whose answer differs from what it was before. */
export interface Turned {
	readonly was: Finding;
	readonly is: Finding;
}

const COUNTS: readonly Strength[] = ['must', 'should', 'prefer'];
const BEST_FIRST: readonly Answer[] = ['inside', 'borderline', 'unknown', 'outside'];
const MOST = 3;

/** Where a mark is, as it is set out: from the datum line and from its corner. */
export function placeWords(scene: Scene, { place }: Mark, { unit }: Tape): string {
	const corner = cornerOf(scene.room, place.wall);
	return `${signed(place.y, unit)} ${unit} from the datum line, ${figure(corner.from(place.x), unit)} ${unit} from the ${corner.side} ${corner.at}`;
}

/** The steering rows whose answer turned, what got worse first. */
export function turnedBetween(before: readonly Finding[], after: readonly Finding[]): readonly Turned[] {
	return after
		.flatMap((is, i): Turned[] => {
			const was = before[i];
			if (!was || was === is || !sameRow(was, is) || !COUNTS.includes(is.strength)) return [];
			return was.answer === is.answer ? [] : [{ was, is }];
		})
		.sort((a, b) => rise(a) - rise(b));
}

/** The same in a sentence or two. */
export function changedWords(before: readonly Finding[], after: readonly Finding[]): string {
	const turned = turnedBetween(before, after);
	const said = (words: string, which: readonly Turned[]): string[] => {
		if (which.length === 0) return [];
		const rows = which.slice(0, MOST).map(({ is }) => is.row.says.replace(/\.$/, ''));
		const more = which.length > MOST ? `; and ${String(which.length - MOST)} more` : '';
		return [`${words}: ${rows.join('; ')}${more}.`];
	};
	const to = (answer: Answer): readonly Turned[] => turned.filter(({ is }) => is.answer === answer);
	const told = [
		...said('Now outside', to('outside')),
		...said('Now not known', to('unknown')),
		...said('Now borderline', to('borderline')),
		...said('Now inside', to('inside'))
	];
	return told.length > 0 ? told.join(' ') : 'No answer changed.';
}

/** How far an answer rose; negative where it got worse. */
function rise({ was, is }: Turned): number {
	return BEST_FIRST.indexOf(was.answer) - BEST_FIRST.indexOf(is.answer);
}
