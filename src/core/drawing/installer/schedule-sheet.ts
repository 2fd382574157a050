import type { Plan } from '#core/plan.ts';
import { onTape } from '#core/units/format.ts';
import { driftWords } from '#core/words.ts';
import { space } from '../block.ts';
import type { Drawing } from '../entity.ts';
import { itemList } from '../item-list.ts';
import { listSheets, listWidth } from '../list-sheet.ts';
import { marksList } from '../marks-list.ts';
import { held } from '../schedule.ts';
import { wallName, type SetOut } from '../setting-out.ts';
import { unitsOn, type OnPaper } from '../sheet.ts';
import { CAUTIONS } from '../title-block.ts';
import { unitWords } from '../view.ts';
import { mustBeBehind, wallsAsWhole } from './behind-sheet.ts';

/**
 * Every mark of every wall: letter, part, wall, figures from corner and datum line and above the floor, into what, the
 * force, the room to move; where nothing must be added or packed behind the walls, what is known of these. Why it is wanted,
 * and for whom, is not told. Shape: none without a mark.
 */
export function scheduleSheets(plan: Plan, how: OnPaper): readonly Drawing[] {
	if (plan.marks.length === 0) return [];
	const { unit } = how.tape;
	const width = listWidth(how);
	const says = (set: SetOut) => [saysOf(plan, set, how)];
	return listSheets(plan, how, {
		title: 'Marks',
		says: 'Every mark, read together with the sheet of its wall.',
		blocks: [
			...marksList(plan, { unit, width, both: how.both, says }),
			space(5),
			...(mustBeBehind(plan, how) ? [] : itemList(wallsAsWhole(plan, how), width))
		],
		unit: unitWords(unitsOn(how)),
		foot: CAUTIONS
	});
}

function saysOf(plan: Plan, set: SetOut, { tape }: OnPaper): string {
	const { c, holds } = plan.scene;
	const { wall } = set.mark.place;
	const into = held(set, {
		unit: tape.unit,
		force: holds.demand.force,
		face: c.enclosure.walls[wall].facing?.kind ?? '',
		ceilingHolds: c.enclosure.ceilingHolds
	});
	return [
		`${wallName(plan, wall)}.`,
		...(set.open && !set.later ? ['Open: do not drill.'] : []),
		`${into[0]?.toUpperCase() ?? ''}${onTape(into, tape).slice(1)}.`,
		...(set.drift ? [`Room to move: ${driftWords(set.drift, { unit: tape.unit })}.`] : [])
	].join(' ');
}
