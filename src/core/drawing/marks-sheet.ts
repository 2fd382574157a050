import type { WayOut } from '#core/placement/answer.ts';
import type { Plan } from '#core/plan.ts';
import { onTape, type Tape } from '#core/units/format.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { basisWords, driftWords, statusWords } from '#core/words.ts';
import { indented, paragraph, space, stacked, type Block } from './block.ts';
import type { Drawing } from './entity.ts';
import { clashLists, waysOutList } from './clash-items.ts';
import { findingCounts, findingLists } from './finding-items.ts';
import { figure } from './figure.ts';
import { itemList, itemLists, type Item } from './item-list.ts';
import { listSheets, listWidth } from './list-sheet.ts';
import { marksList, roomWithLetters } from './marks-list.ts';
import { roomSays } from './room-says.ts';
import { cornerOf, lettersFor, wallName, wallsUsed, type SetOut } from './setting-out.ts';
import { unitsOn, type OnPaper } from './sheet.ts';
import { unitWords } from './view.ts';
import { contrastSays, wallSays } from './wall-says.ts';
import type { FootWords } from './title-block.ts';

/**
 * The sheets that go before the elevations: where everything is, every mark, what is not inside, what lean is needed,
 * what to ask, and what these figures leave out.
 * Units and frame: mm of the sheet. Shape: as many sheets as it takes; nothing is left out for want of room.
 */
export function marksSheetsOf(plan: Plan, how: OnPaper, ways: readonly WayOut[] = []): readonly Drawing[] {
	const width = listWidth(how);
	return listSheets(plan, how, {
		title: 'Marks',
		says: plan.marks.length > 0 ? 'Read together with the sheet of each wall.' : 'There is nothing to set out.',
		blocks: [...blocksOf(plan, how, width), ...notMet(plan, how, { ways, width }), ...toTell(plan, how, width)],
		unit: unitWords(unitsOn(how)),
		foot: LEFT_OUT
	});
}

function blocksOf(plan: Plan, how: OnPaper, width: number): readonly Block[] {
	const { unit } = how.tape;
	const says = (set: SetOut) => [markSays(plan, set, unit)];
	const walls = { id: 'walls', title: 'Walls', items: wallItems(plan, how) };
	return [
		summary(plan, how, width),
		...(plan.marks.length > 0 ? [...marksList(plan, { unit, width, both: how.both, says }), space(5)] : []),
		...itemList(walls, width)
	];
}

/** Where a mark is, why, and the room it has to move. */
function markSays(plan: Plan, { mark, tall, drift }: SetOut, unit: LengthUnit): string {
	return [
		`${wallName(plan, mark.place.wall)}.`,
		mark.accessory.reason,
		...(tall === undefined ? [] : [`From floor to ceiling ${figure(tall, unit)} ${unit}.`]),
		...(drift ? [`Room to move: ${driftWords(drift, { unit })}.`] : [])
	].join(' ');
}

/** What is said of each wall with marks as a whole, and what parts to be bought must read to be seen beside it. */
function wallItems(plan: Plan, how: OnPaper): readonly Item[] {
	return wallsUsed(plan).flatMap((wall) => {
		const says = [...wallSays(plan.scene, wall, unitsOn(how)), contrastSays(plan.scene.c.enclosure.walls[wall])].filter(
			(one) => one !== ''
		);
		const here = plan.marks.filter((m) => m.place.wall === wall).map((m) => m.accessory.id);
		if (says.length === 0) return [];
		return [{ letters: lettersFor(plan, here), says: `${wallName(plan, wall)}. ${says.join(' ')}` }];
	});
}

/** What has no place, what stands against it, and the ways out of that. */
function notMet(
	plan: Plan,
	{ tape }: OnPaper,
	{ ways, width }: { ways: readonly WayOut[]; width: number }
): readonly Block[] {
	return [
		...clashLists(plan, tape).flatMap((list) => itemList(list, width)),
		...itemList(waysOutList(plan, ways, tape), width),
		...itemList({ id: 'wanted', title: 'Wanted, and without a place', items: unplaced(plan) }, width),
		...itemList({ id: 'nowhere', title: 'Wanted, and no wall here can take it', items: nowhere(plan) }, width)
	];
}

function toTell(plan: Plan, how: OnPaper, width: number): readonly Block[] {
	return [
		...itemLists('findings', 'Not inside, or not known', findingLists(plan, how.tape), width),
		...itemList({ id: 'leans', title: 'Lean needed', items: leans(plan, how.tape) }, width),
		...itemList({ id: 'questions', title: 'To ask', items: questions(plan) }, width)
	];
}

const LATER = 'A letter in a thin ring is for later: nothing is drilled there now, and it is kept clear.';

/** From where the figures along each wall with a mark count. */
export function cornerWords(plan: Plan): string {
	const { room } = plan.scene;
	const used = wallsUsed(plan);
	const corners = used.map((wall) => cornerOf(room, wall));
	const says =
		'From corner is from the inside corner with the back wall; on the back wall from the corner on the side of the seat';
	const front = used.includes('front') ? '; on the wall beside the entry from its own corner' : '';
	const other = corners.some((c) => !c.usual) ? ' Where that side is open it is from the other corner.' : '';
	const end = corners.some((c) => c.at === 'end') ? ' Where there is no corner it is from the end of the wall.' : '';
	return `${says}${front}.${other}${end}`;
}

/** The room with its letters, and beside it what the plan rests on. */
function summary(plan: Plan, how: OnPaper, width: number): Block {
	const { room } = plan.scene;
	const size = 44;
	const above = figure(-room.bathroomFloor, how.tape.unit);
	const level =
		above === '0'
			? 'Heights count from the bathroom floor at the entry, F.'
			: 'F is the bathroom floor at the entry. The datum line is level round all walls.';
	// Where no place was found nothing rests on anything.
	const rests = plan.status === 'impossible' && plan.basis === 'settled' ? '' : `; ${basisWords(plan.basis)}`;
	const says = `${statusWords(plan.status)}${rests}.`;
	const hand = { size: 10.5, width: width - size - 14 };
	const words = stacked(
		paragraph('summary/status', `${says[0]?.toUpperCase() ?? ''}${says.slice(1)}`, { ...hand, weight: 'semibold' }),
		space(2),
		paragraph('summary/level', level, hand),
		space(2),
		...roomSays(plan.scene, how.tape.unit).flatMap((says, i) => [
			paragraph(`summary/room/${String(i)}`, says, hand),
			space(2)
		]),
		...(plan.marks.length > 0 ? [paragraph('summary/corner', cornerWords(plan), hand), space(2)] : []),
		...(plan.marks.some((m) => m.accessory.when === 'later')
			? [paragraph('summary/later', LATER, hand), space(2)]
			: []),
		...(plan.marks.length > 0 && (plan.basis === 'provisional' || plan.probes.waits.some((w) => w.about.length > 0))
			? [
					paragraph(
						'summary/open',
						'A letter in a dashed ring is open: nothing is drilled there before its question is answered.',
						hand
					),
					space(2)
				]
			: []),
		findingCounts(plan)
	);
	const picture = roomWithLetters(plan, size);
	return {
		height: Math.max(picture.height, words.height + 6) + 4,
		draw: (x, y) => [...picture.draw(x, y), ...indented(size + 14, words).draw(x, y + 5)]
	};
}

const nowhere = (plan: Plan): readonly Item[] => plan.nowhere.map(({ reason }) => ({ letters: '', says: reason }));

const leans = (plan: Plan, tape: Tape): readonly Item[] =>
	plan.probes.leans.map((l) => ({ letters: lettersFor(plan, [l.accessory]), says: onTape(l.says, tape) }));

const unplaced = (plan: Plan): readonly Item[] =>
	plan.wanted
		.filter(({ id }) => !plan.marks.some((m) => m.accessory.id === id))
		.map(({ id, reason }) => ({ letters: lettersFor(plan, [id]), says: reason }));

/** Questions that ask the same are one. */
function questions(plan: Plan): readonly Item[] {
	const asked = plan.probes.questions;
	return [...new Set(asked.map((q) => q.asks))].map((says) => ({
		letters: lettersFor(
			plan,
			asked.filter((q) => q.asks === says).flatMap((q) => q.about)
		),
		says
	}));
}

/** What these figures leave out. */
const LEFT_OUT: FootWords = {
	id: 'left-out',
	title: 'Not in these figures',
	words:
		'Wet and soapy reach, the spray itself, a bar in the arm\u2019s way, tiring within the shower. Survey figures come from bath and toilet studies, mostly young or small samples. The person\u2019s own trial outranks all of it.'
};
