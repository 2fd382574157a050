import { formatFigure, formatLength, type Tape } from '#core/units/format.ts';
import { inches, mm } from '#core/units/length.ts';
import type { Drift } from '#core/placement/drift.ts';
import type { Plan } from './plan.ts';

/** How a search ended, in words for people. */
export function statusWords(status: Plan['status']): string {
	switch (status) {
		case 'optimal':
			return 'no better place on these figures';
		case 'bounded':
			return 'good places, the search was stopped before the proof';
		case 'impossible':
			return 'no place meets everything that must be met';
		case 'given':
			return 'every place was given and is judged as it stands';
	}
}

/** What a plan rests on, in words for people. */
export function basisWords(basis: Plan['basis']): string {
	return basis === 'settled' ? 'settled' : 'provisional, because something is not known';
}

/** The room round a mark in words for people: every side with some, or that there is none. Shape: figures on the tape. */
export function driftWords(drift: Omit<Drift, 'accessory'>, tape: Tape): string {
	const sides = (['left', 'right', 'lower', 'higher'] as const).map((side) =>
		drift[side] > 0 ? `${formatLength(mm(drift[side]), tape)} ${side}` : `none ${side}`
	);
	return sides.every((side) => side.startsWith('none')) ? 'no room' : sides.join(', ');
}

/** The finest an estimate is told: a finger's width of the tape says more than is known. */
const COARSE = { mm: mm(1), in: inches(1 / 4) } as const;

/** Between which lengths an estimate lies: "512 to 560 mm". */
export function bandWords(low: number, high: number, { unit }: Tape): string {
	const coarse: Tape = { unit, step: COARSE[unit] };
	return `${formatFigure(mm(low), coarse)} to ${formatLength(mm(high), coarse)}`;
}
