import type { Plan } from '#core/plan.ts';
import { reportOf } from '#core/report.ts';
import type { Drawing } from './entity.ts';
import { itemList, type List } from './item-list.ts';
import { listSheets, listWidth } from './list-sheet.ts';
import { lettersFor } from './setting-out.ts';
import type { OnPaper, Reader } from './sheet.ts';
import type { FootWords } from './title-block.ts';

/**
 * The arithmetic of every bracket that is fixed, for whoever judges the wall; brackets that come to the same are told once, then what the parts themselves take.
 * Units: N and mm whatever the tape, as the tables of the trade print them. Shape: none where there is nothing to say.
 */
export function loadsSheetsOf(plan: Plan, how: OnPaper): readonly Drawing[] {
	const width = listWidth(how);
	const lists = [...loadLists(plan), adviceList(plan)].flatMap((list) => itemList(list, width));
	if (lists.length === 0) return [];
	const asked = { letters: '', says: `${because(plan, how.reader)}.${signed(plan, how.reader)}` };
	const blocks = [
		...itemList({ id: 'loads/asked', title: 'Where the force comes from', items: [asked] }, width),
		...lists
	];
	const force = String(Math.round(plan.scene.holds.demand.force));
	const says = `Every bracket that holds a person is asked to hold ${force} N. Forces in newtons, lengths in mm.`;
	return listSheets(plan, how, {
		title: 'Loads',
		says,
		blocks,
		unit: 'N, mm',
		foot: FOOT_WORDS
	});
}

/** Whose paper says that all of it carries the force, or that such a paper is wanted; nothing where none is asked for. */
function signed({ scene: { c, holds } }: Plan, reader: Reader): string {
	const { loadStatement: paper } = c.enclosure;
	if (holds.demand.statement === 'not asked') return '';
	if (holds.demand.statement === 'wanted' || !paper) return ' Bars, seat, fixings and wall are to be signed for it.';
	const by = reader === 'installer' ? '' : `, ${paper.by}`;
	return ` Signed for ${String(paper.load)} N: ${paper.document}${by}.`;
}

/** One list for each calculation, with the letters of what it is for; its first line is its title. */
function loadLists(plan: Plan): readonly List[] {
	const alike = new Map<string, { readonly ids: string[]; readonly lines: readonly string[] }>();
	for (const { id, fixings } of reportOf(plan).accessories) {
		for (const { lines = [], used = [], verdict } of fixings) {
			// What holds light things only is not calculated.
			if (verdict === 'carries' && used.length === 0) continue;
			const found = alike.get(lines.join('\n')) ?? { ids: [], lines };
			found.ids.push(id);
			alike.set(lines.join('\n'), found);
		}
	}
	return [...alike.values()]
		.filter(({ lines }) => lines.length > 0)
		.map(({ ids, lines: [title = '', ...says] }, i) => ({
			id: `loads/${String(i)}`,
			title: `${title.replace(/\.$/, '')}, ${String(ids.length)} ${ids.length === 1 ? 'bracket' : 'brackets'}`,
			items: says.map((line, j) => ({ letters: j === 0 ? lettersFor(plan, ids) : '', says: line }))
		}));
}

/** What the parts themselves take; parts of which the same is said together. */
function adviceList(plan: Plan): List {
	const alike = new Map<string, { readonly ids: string[]; readonly advice: readonly string[] }>();
	for (const { id, advice } of reportOf(plan).accessories) {
		const found = alike.get(advice.join('\n')) ?? { ids: [], advice };
		found.ids.push(id);
		alike.set(advice.join('\n'), found);
	}
	const items = [...alike.values()].flatMap(({ ids, advice }) =>
		advice.map((says, j) => ({ letters: j === 0 ? lettersFor(plan, ids) : '', says }))
	);
	return { id: 'loads/parts', title: 'What the parts themselves take: advice', items };
}

/** Why the force is asked; whoever fits the parts is not told that it is somebody's weight. */
const because = ({ scene: { c, holds } }: Plan, reader: Reader): string =>
	reader === 'installer' && holds.demand.force > c.enclosure.demand
		? 'what was set for this room'
		: holds.demand.because;

const FOOT_WORDS: FootWords = {
	id: 'foot',
	title: 'What these figures rest on',
	words:
		'Figures for wood are US practice for sound dry wood. The model of the flange changes by about 30 % with the point it turns about. Parts are generic until a real one is read off. No load test with a person; whoever is licensed to judge the wall decides.'
};
