import type { Rect } from '#core/geometry/vec.ts';
import { reinforcementOf } from '#core/needs/reinforcement.ts';
import type { Plan } from '#core/plan.ts';
import { onTape } from '#core/units/format.ts';
import type { Drawing } from '../entity.ts';
import { figure, inBoth, type Units } from '../figure.ts';
import { itemList, type Item, type List } from '../item-list.ts';
import { listSheets, listWidth } from '../list-sheet.ts';
import { lettersFor, settingOut, wallName, wallsUsed } from '../setting-out.ts';
import { unitsOn, type OnPaper } from '../sheet.ts';
import { CAUTIONS } from '../title-block.ts';
import { unitWords } from '../view.ts';
import { areaSays, faceSays, keptSays } from '../wall-says.ts';
import { packed, solid } from '../schedule.ts';

/**
 * What must be behind the walls before anything is screwed to them: backing to add, what is kept solid, what is packed;
 * then what is known of each wall as a whole. Shape: none where nothing must be.
 */
export function behindSheets(plan: Plan, how: OnPaper): readonly Drawing[] {
	if (!mustBeBehind(plan, how)) return [];
	const width = listWidth(how);
	return listSheets(plan, how, {
		title: 'Behind the walls',
		says: 'Seen from inside; positions as for a mark.',
		unit: unitWords(unitsOn(how)),
		blocks: [...lists(plan, how), wallsAsWhole(plan, how)].flatMap((list) => itemList(list, width)),
		foot: CAUTIONS
	});
}

/** Whether anything must be added, kept or packed behind the walls. */
export const mustBeBehind = (plan: Plan, how: OnPaper): boolean =>
	lists(plan, how).some(({ items }) => items.length > 0);

const lists = (plan: Plan, how: OnPaper): readonly List[] => [toAdd(plan, how), toKeep(plan, how), toPack(plan, how)];

function toAdd(plan: Plan, how: OnPaper): List {
	const { room } = plan.scene;
	const units = unitsOn(how);
	const items = plan.backing.map((piece): Item => {
		const { thickness } = piece;
		const thick = thickness === undefined ? '' : `, ${inBoth(units, (unit) => figure(thickness, unit))} thick`;
		const where = areaSays(room, piece, units);
		return {
			letters: lettersFor(plan, piece.marks),
			says: `${wallName(plan, piece.wall)}: ${where}; ${sizeOf(piece.rect, units)}${thick}. ${onTape(piece.how, how.tape)}`
		};
	});
	return { id: 'add', title: 'Backing to add, before anything is fixed there', items };
}

/** Width by height. */
const sizeOf = ({ x0, y0, x1, y1 }: Rect, units: Units): string =>
	inBoth(units, (unit) => [x1 - x0, y1 - y0].map((n) => figure(n, unit)).join(' \u00d7 '));

function toKeep(plan: Plan, how: OnPaper): List {
	const units = unitsOn(how);
	const items = reinforcementOf(plan.scene).map((kept): Item => ({
		letters: lettersFor(plan, kept.of),
		says: `${wallName(plan, kept.wall)}, ${sizeOf(kept.rect, units)}. ${keptSays(plan.scene.room, kept, units)}`
	}));
	return { id: 'keep', title: 'Kept solid, for what may be fitted one day', items };
}

function toPack(plan: Plan, { tape: { unit } }: OnPaper): List {
	const items = settingOut(plan).flatMap(({ letter, fixings, mark }): readonly Item[] => {
		const { wall } = mark.place;
		const face = plan.scene.c.enclosure.walls[wall].facing?.kind ?? '';
		const says = [...packed(fixings, unit), ...solid(fixings, { unit, face })];
		return says.length > 0 ? [{ letters: letter, says: `${wallName(plan, wall)}: ${says.join('; ')}.` }] : [];
	});
	return { id: 'pack', title: 'Packing', items };
}

/** What is known of each wall with marks as a whole. */
export function wallsAsWhole(plan: Plan, how: OnPaper): List {
	const items = wallsUsed(plan).flatMap((wall): readonly Item[] => {
		const says = faceSays(plan.scene, wall, unitsOn(how));
		const here = plan.marks.filter(({ place }) => place.wall === wall).map(({ accessory }) => accessory.id);
		if (says.length === 0) return [];
		return [{ letters: lettersFor(plan, here), says: `${wallName(plan, wall)}. ${says.join(' ')}` }];
	});
	return { id: 'walls', title: 'The walls as a whole', items };
}
