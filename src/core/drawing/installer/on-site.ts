import type { Plan } from '#core/plan.ts';
import { space, stacked, paragraph, type Block } from '../block.ts';
import type { Drawing } from '../entity.ts';
import { partName } from '../figure.ts';
import { itemList, type List } from '../item-list.ts';
import { listSheets, listWidth } from '../list-sheet.ts';
import { line, rectangle } from '../path.ts';
import { settingOut, wallName, type SetOut } from '../setting-out.ts';
import type { OnPaper } from '../sheet.ts';
import { TABLE_TAG, tag } from '../tag.ts';
import { CAUTIONS } from '../title-block.ts';
import { write } from '../type.ts';

const numbered = (says: readonly string[]): List['items'] =>
	says.map((one, i) => ({ letters: String(i + 1), says: one }));

/** What comes first. Source: structure-and-drawing reference 4.4 to 4.6; the words are ours. */
const BEFORE = [
	'Local codes and licensed practice come first; whoever is licensed to judge the wall decides.',
	'Mark the datum line round all walls with a level. Set every mark out from the corner and from that line, two figures a point, and have somebody else read them again.',
	'Does the drawing agree with the table, and both with the wall? If not, stop and ring.',
	'Scan for cables, pipes and metal. Where cables may run, switch the circuit off and prove it dead.',
	'Prove the backing. The first hole is a probe, inside the footprint of the flange: look for wood dust and depth, for no hollow and no metal.'
] as const;

const WHILE = [
	'No hammer on tile. Slow, with water; the hole through the tile is larger than the screw, so that the screw never bears on it.',
	'Missed? Stop. Move no farther than the room to move, else ring. Fill and seal every hole that stays empty.',
	'Seal inside each hole and round each bracket. Stainless screws, the last turns by hand.',
	'Read the load marked on each part: it is at least the force of its mark.'
] as const;

const AFTER = [
	'Leave it dry until the sealant has cured. Write down until when.',
	'Test after that: flush, nothing turns or creaks; then pull by hand in every direction, little by little. Not with the people who live here.',
	'Limit the hot water and measure it, mixed, at the handset. Write it down.'
] as const;

const STOP = [
	'Stop and ring when drawing and table differ; when a bit meets water, metal, a cable or nothing; when a tile cracks; when a part is not the one that is named; when a mark is open.'
] as const;

/** What is done before, while and after drilling, and a row to tick for every mark. */
export function onSiteSheets(plan: Plan, how: OnPaper): readonly Drawing[] {
	const width = listWidth(how);
	const lists: readonly List[] = [
		{ id: 'stop', title: 'Stop signs', items: STOP.map((says) => ({ letters: '', says })) },
		{ id: 'before', title: 'Before the first hole', items: numbered(BEFORE) },
		{ id: 'while', title: 'While drilling and fixing', items: numbered(WHILE) },
		{ id: 'after', title: 'After', items: numbered(AFTER) }
	];
	return listSheets(plan, how, {
		title: 'On site',
		says: 'Tick each mark once it is on the wall, before it is drilled.',
		blocks: [...lists.flatMap((list) => itemList(list, width)), ...confirmed(plan, how, width), ...written(width)],
		foot: CAUTIONS
	});
}

/** What may be ticked of a mark on its wall. */
const ANSWERS = ['agrees with the sheet', 'agrees, note', 'stop and ring'] as const;

/** A row for every mark under one head: what was found, what was fitted, when. */
function confirmed(plan: Plan, how: OnPaper, width: number): readonly Block[] {
	const head = (id: string, title: string): Block => ({
		height: 8,
		draw: (x, y) => [
			write(`${id}/title`, title, [x, y + 4.6], { size: 12, weight: 'semibold', heading: 2 }),
			line(`${id}/rule`, 'rule', [x, y + 7.2], [x + width, y + 7.2])
		]
	});
	const rows = settingOut(plan).map((set) => row(plan, set, { how, width }));
	const again = head('confirm/again', 'Marks on the wall, continued');
	return rows.map((block, i) => (i === 0 ? stacked(head('confirm', 'Marks on the wall'), block) : { ...block, again }));
}

function row(plan: Plan, set: SetOut, { how, width }: { readonly how: OnPaper; readonly width: number }): Block {
	const id = `confirm/${set.id}`;
	const left = 8;
	const state = set.later ? ', for later: no holes now' : set.open ? ', open: do not drill' : '';
	const name = paragraph(
		`${id}/name`,
		`${partName(set.mark, how.tape.unit)}. ${wallName(plan, set.mark.place.wall)}${state}`,
		{ size: 10.5, weight: 'semibold', tone: set.later ? 'grey' : 'ink', width: width - left }
	);
	const step = (width - left) / ANSWERS.length;
	const height = name.height + 15.4;
	return {
		height,
		draw: (x, y) => [
			...tag(`${id}/tag`, set, [x + TABLE_TAG, y + 4], TABLE_TAG),
			...name.draw(x + left, y + 1.6),
			...ANSWERS.flatMap((says, i) => ticked(`${id}/${String(i)}`, says, [x + left + i * step, y + name.height + 6])),
			...blanks(id, [x + left, y + name.height + 12.6], width - left),
			line(`${id}/rule`, 'rule', [x, y + height], [x + width, y + height])
		]
	};
}

const ticked = (id: string, says: string, [x, y]: readonly [number, number]) => [
	rectangle(`${id}/box`, 'tick-box', { x0: x, y0: y - 2.9, x1: x + 3.4, y1: y + 0.5 }),
	write(id, says, [x + 5, y], { size: 10 })
];

/** Blanks of a row, by their share of its width. */
const BLANKS = [
	['found', 0, 0.36],
	['part fitted', 0.38, 0.8],
	['date', 0.82, 1]
] as const;

const blanks = (id: string, [x, y]: readonly [number, number], width: number) =>
	BLANKS.flatMap(([says, from, to]) => {
		const word = write(`${id}/${says}`, says, [x + from * width, y], { size: 9, tone: 'grey' });
		return [
			word,
			line(`${id}/${says}/line`, 'cell', [x + from * width + word.width + 1.6, y + 0.6], [x + to * width, y + 0.6])
		];
	});

/** What is written down at the end. */
const WRITTEN = [
	['Sealed, dry until', 'Kind of test, by whom'],
	['Water at the handset, hottest', 'Everything handed over on']
] as const;

function written(width: number): readonly Block[] {
	const half = width / 2;
	return [
		space(3),
		{
			height: 9 * WRITTEN.length,
			draw: (x, y) =>
				WRITTEN.flatMap((pair, i) =>
					pair.flatMap((says, j) => {
						const id = `written/${String(i)}/${String(j)}`;
						const word = write(id, says, [x + j * half, y + 6 + 9 * i], { size: 10 });
						const end = x + (j + 1) * half - (j === 0 ? 4 : 0);
						return [
							word,
							line(`${id}/line`, 'cell', [x + j * half + word.width + 1.6, y + 6.6 + 9 * i], [end, y + 6.6 + 9 * i])
						];
					})
				)
		}
	];
}
