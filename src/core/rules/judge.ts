import type { Accessory, Mark } from '#core/case/accessory.ts';
import { sidesOf } from '#core/case/roles.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { mm } from '#core/units/length.ts';
import { answerOf, slackOf } from './answer.ts';
import { applies } from './applies.ts';
import type { BoundRow, Finding, Row } from './row.ts';

export { slackOf } from './answer.ts';

/** Marks by the id of their accessory. */
type MarksById = ReadonlyMap<string, Mark>;

/** Whether two marks are on such walls as a row speaks of. Shape: depends on walls, never on coordinates. */
export const concerns = ({ walls }: Row, a: Mark, b?: Mark): boolean =>
	walls === undefined || b === undefined || (walls === 'same') === (a.place.wall === b.place.wall);

/**
 * What the measure of a row gives for marks, or null where they are not on such walls,
 * not of such a shape, or one is not there.
 * Units: as the measure. Shape: for rows about marks; judge and search both ask here.
 */
export function readingOn(scene: Scene, row: Row, a: Mark, b?: Mark): Reading | null {
	if (row.on !== undefined && !sidesOf(scene.c.enclosure, row.on).includes(a.place.wall)) return null;
	if (row.shape !== undefined && row.shape !== ((a.variant.arm ?? a.variant.upright) ? 'L' : 'rectangular'))
		return null;
	const measure: Measure = MEASURES[row.measure];
	if (measure.about === 'mark') return measure.of(scene, a);
	return measure.about === 'pair' && b && concerns(row, a, b) ? measure.of(scene, a, b) : null;
}

/** The scene a row speaks of: the person as she is, or as expected later. */
export const sceneFor = (scene: Scene, { later }: BoundRow): Scene => (later && scene.later) ?? scene;

/** What a mark is of, with no other wall than the one it is on. */
const whereItIs = ({ accessory, place: { wall, variant } }: Mark): Accessory => ({
	...accessory,
	slots: [{ wall, variant }]
});

function readingOf(scene: Scene, { row, about }: BoundRow, marks: MarksById): Reading | null {
	const measure: Measure = MEASURES[row.measure];
	if (measure.about === 'case') return measure.of(scene, Array.from(marks.values(), whereItIs));
	const subject = marks.get(about[0] ?? '');
	return subject ? readingOn(scene, row, subject, marks.get(about[1] ?? '')) : null;
}

/**
 * What every row says about marks. The only evaluator: search, screen, command line and paper ask here.
 * Shape: one finding a bound row, in the order of the rows.
 */
export function judge(scene: Scene, rows: readonly BoundRow[], marks: readonly Mark[]): readonly Finding[] {
	const byId = new Map(marks.map((m) => [m.accessory.id, m]));
	return rows.map((bound) => {
		const seen = sceneFor(scene, bound);
		const reading = applies(bound.row.when, seen.c) ? readingOf(seen, bound, byId) : null;
		return reading === null ? { ...bound, answer: 'not-here' } : findingOf(bound, reading);
	});
}

/** The finding of one row on a reading. */
export function findingOf(bound: BoundRow, reading: Reading): Finding {
	const answer = answerOf(bound.row, reading);
	// What a question is about may be a figure: who answers must see it.
	if (answer === 'ask') return { ...bound, answer, ...(typeof reading === 'number' && { measured: reading }) };
	if (answer === 'unknown') return { ...bound, answer, missing: missingIn(reading) };
	// What is inside is inside even at its worst; what is outside is outside even at its best.
	const at = answer === 'inside' ? 'sure' : 'best';
	return { ...bound, answer, ...figures(bound.row, reading, at) };
}

/** Beyond this a distance stands for none at all. Units: mm. */
const NOWHERE = 10_000;

function figures(row: Row, reading: Reading, at: 'best' | 'sure'): Pick<Finding, 'measured' | 'slack'> {
	if (typeof reading !== 'number' && !('best' in reading)) return {};
	const slack = slackOf(row, reading)[at];
	const measured = typeof reading === 'number' ? reading : endWith(row, reading, slack);
	const { unit } = MEASURES[row.measure];
	if (unit === 'yes') return { measured };
	// There is no such place on the wall: a distance to it would be no figure.
	if (Math.abs(measured) >= NOWHERE) return { slack };
	return unit === 'mm' ? { measured: mm(measured), slack: mm(slack) } : { measured, slack };
}

/** The end of a reading that has this slack. */
const endWith = (row: Row, { best, sure }: { readonly best: number; readonly sure: number }, slack: number): number =>
	slackOf(row, best).best === slack ? best : sure;

const missingIn = (reading: Reading): string => (typeof reading === 'number' ? '' : reading.missing);
