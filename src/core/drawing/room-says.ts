import type { Enclosure } from '#core/case/record.ts';
import type { Scene } from '#core/measures/scene.ts';
import { applies } from '#core/rules/applies.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { closingSays } from './entry-closing.ts';
import { figure } from './figure.ts';
import { asTold } from './seen.ts';

/** What keeps the drill waiting on walls of somebody else. */
const NOT_AGREED = 'Nothing is drilled before whoever owns these walls has agreed in writing.';

/**
 * What the survey tells of the room beside what is drawn: whose leave is missing, sizes at several heights, what closes the
 * entry, the drain.
 */
export function roomSays({ c, room }: Pick<Scene, 'c' | 'room'>, unit: LengthUnit): readonly string[] {
	const { enclosure } = c;
	return [
		applies({ permission: ['wanted', 'refused'] }, c) ? NOT_AGREED : '',
		sizesSay(enclosure, unit),
		closingSays(enclosure, room, unit),
		drainSays(enclosure, unit)
	].filter((says) => says !== '');
}

/** Width and depth as measured low, in the middle and high; empty where each was taken once. */
function sizesSay(e: Enclosure, unit: LengthUnit): string {
	const sizes = [
		['Width', e.widthLow, e.width, e.widthHigh],
		['Depth', e.depthLow, e.depth, e.depthHigh]
	] as const;
	const says = sizes.flatMap(([name, low, middle, high]) => {
		if (!low && !high) return [];
		const each = [
			...(low ? [`${figure(low.value, unit)} low`] : []),
			figure(middle.value, unit),
			...(high ? [`${figure(high.value, unit)} high`] : [])
		];
		return [`${name} ${each.join(', ')}.`];
	});
	return says.length > 0 ? `${says.join(' ')} The least counts.` : '';
}

function drainSays({ drain }: Enclosure, unit: LengthUnit): string {
	if (!drain) return '';
	const [x, y, wide, deep] = [drain.x, drain.y, drain.wide, drain.deep].map((n) => figure(n, unit));
	const size = `${wide ?? ''} wide, ${deep ?? ''} deep`;
	return `Drain ${size}: its middle ${x ?? ''} from the left, ${y ?? ''} from the back${asTold(drain.how)}.`;
}
