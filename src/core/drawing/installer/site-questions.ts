import type { MeasureId } from '#core/measures/registry.ts';
import type { Plan } from '#core/plan.ts';
import { paragraph, space, stacked, type Block } from '../block.ts';
import type { Drawing } from '../entity.ts';
import { listSheets, listWidth } from '../list-sheet.ts';
import { questionBox, wallQuestions, type WallQuestion } from '../question.ts';
import { settingOut, wallName, wallsUsed } from '../setting-out.ts';
import type { OnPaper } from '../sheet.ts';
import { CAUTIONS } from '../title-block.ts';

/** Measures that ask of the room alone when they cannot be taken; what others ask may be about a person. */
const OF_THE_ROOM: readonly MeasureId[] = [
	'threshold',
	'floor-fall',
	'water-temperature',
	'hose-length',
	'hose-to-spare',
	'front-wall-length',
	'drain-present',
	'feet-off-drain',
	'clear-of-door',
	'ceiling-holds',
	'seat-off-rims'
];

/**
 * Every open question that is answered on site: what is behind each wall, with the marks it keeps from being drilled, then
 * what is not known of the room. Shape: none where nothing is open.
 */
export function siteQuestions(plan: Plan, how: OnPaper): readonly Drawing[] {
	const width = listWidth(how);
	const blocks = [...behind(plan, width), ...ofRoom(plan, width)];
	if (blocks.length === 0) return [];
	return listSheets(plan, how, {
		title: 'To find out on site',
		says: 'Nothing is drilled for a mark that is named here before its answer is in.',
		blocks,
		foot: CAUTIONS
	});
}

function behind(plan: Plan, width: number): readonly Block[] {
	const sets = settingOut(plan);
	return wallsUsed(plan).flatMap((wall) => {
		const here = sets.filter((s) => s.mark.place.wall === wall);
		return wallQuestions(plan, here, 'installer').map((question) =>
			asked({ ...question, id: `${wall}/${question.id}` }, wallName(plan, wall), width)
		);
	});
}

/** A question under the name of its wall. */
const asked = (question: WallQuestion, where: string, width: number): Block =>
	stacked(
		paragraph(`${question.id}/where`, where, { size: 11, weight: 'semibold', width }),
		space(0.8),
		questionBox(question, width),
		space(2)
	);

const ANSWER = ['Found: ________________________________________  by ______________  on ____________'] as const;

/** What is not known of the room, each once with the letters it touches. */
function ofRoom(plan: Plan, width: number): readonly Block[] {
	const about = new Map(plan.scene.room.unknowns.map((says) => [says, new Set<string>()]));
	for (const { row, answer, missing, about: ids } of plan.findings) {
		if (answer !== 'unknown' || missing === undefined || !OF_THE_ROOM.includes(row.measure)) continue;
		about.set(missing, new Set([...(about.get(missing) ?? []), ...ids]));
	}
	const sets = settingOut(plan);
	return [...about].map(([asks, ids], i) => {
		const touched = sets.filter(({ id }) => ids.has(id));
		const head = touched.length > 0 ? 'to be known for this' : 'The room';
		return stacked(
			questionBox({ id: `room/${String(i)}`, asks, answers: ANSWER, sets: touched, head }, width),
			space(2)
		);
	});
}
