import type { Mark } from '#core/case/accessory.ts';
import type { Scene } from '#core/measures/scene.ts';
import { judge } from '#core/rules/judge.ts';
import type { BoundRow, Finding } from '#core/rules/row.ts';
import { aboveFloor } from './above-floor.ts';
import type { Reason } from './answer.ts';
import { nudged, together } from './nudge.ts';
import { shortOf } from './price.ts';
import { called, citation, clauseOf, figureOf, inMm, limitOf, outBy } from './told.ts';
import { fallen, sameRow, STEERING, worse } from './worse.ts';

/** How far a mark is moved to see what holds it. Units: mm. */
const NUDGE = 10;

const AXES = [
	{
		axis: 'along',
		on: 'x',
		ways: [
			['left', -1],
			['right', 1]
		]
	},
	{
		axis: 'height',
		on: 'y',
		ways: [
			['lower', -1],
			['higher', 1]
		]
	}
] as const;

/** A row that gets worse when a mark moves: which way, what it says now and then. */
interface Hold {
	readonly towards: string;
	readonly was: Finding;
	readonly is: Finding;
}

/** Everything an answer is explained from. */
interface Explained {
	readonly scene: Scene;
	readonly rows: readonly BoundRow[];
	readonly marks: readonly Mark[];
	readonly findings: readonly Finding[];
}

/** Stronger first; then the one whose answer falls deepest; then the one that loses most. */
function byForce(a: Hold, b: Hold): number {
	const strength = ({ was }: Hold) => STEERING.findIndex((s) => s === was.strength);
	const loss = ({ was, is }: Hold) => shortOf(is) - shortOf(was);
	return strength(a) - strength(b) || fallen(b.was, b.is) - fallen(a.was, a.is) || loss(b) - loss(a);
}

/** The row with most force against each way a mark may move along an axis, the strongest first. */
function holdsOf({ scene, rows, marks, findings }: Explained, mark: Mark, { on, ways }: (typeof AXES)[number]): Hold[] {
	const ids = marks.filter((m) => (on === 'y' ? together(m, mark) : m === mark)).map((m) => m.accessory.id);
	const touching = rows.filter((r) => STEERING.some((s) => s === r.strength) && r.about.some((id) => ids.includes(id)));
	return ways
		.flatMap(([towards, sign]) => {
			const then = judge(scene, touching, nudged(marks, mark, on, sign * NUDGE));
			const holds = then.flatMap((is): Hold[] => {
				const was = findings.find((f) => sameRow(f, is));
				return was && worse(was, is) ? [{ towards, was, is }] : [];
			});
			return holds.toSorted(byForce).slice(0, 1);
		})
		.toSorted(byForce);
}

/** One sentence a client follows. */
function plainOf({ scene, marks }: Explained, mark: Mark, axis: 'along' | 'height', hold: Hold | undefined): string {
	const name = called(mark);
	const where = axis === 'height' ? `is ${inMm(aboveFloor(scene, mark))} above the floor` : 'is here along the wall';
	if (!hold) {
		const alike = `within ${String(NUDGE)} mm all is the same`;
		return axis === 'height'
			? `Nothing asks for exactly this height of the ${name}; ${alike}.`
			: `Nothing asks for exactly this place of the ${name} along the wall; ${alike}.`;
	}
	const clause = clauseOf(hold.was, marks, mark);
	if (mark.stage !== 'proposed')
		return `The ${name} ${where} because it was given; ${hold.towards} is worse for this: ${clause}.`;
	switch (hold.was.answer) {
		case 'inside':
			return `The ${name} ${where} so that ${clause}.`;
		case 'unknown':
			return `The ${name} ${where} so that, as far as is known, ${clause}.`;
		default:
			return `The ${name} ${where} to come as near as it can to this: ${clause}.`;
	}
}

/** What a move does to a row, in figures. */
function lossOf({ towards, was, is }: Hold): string {
	const move = `${String(NUDGE)} mm ${towards}`;
	const [before, after] = [shortOf(was), shortOf(is)];
	if (is.answer === 'unknown') return `${move}: no longer known to be inside`;
	if (before === 0) return `${move}: outside${after > 0 && is.slack !== undefined ? ` by ${outBy(after)}` : ''}`;
	return `${move}: ${outBy(after - before)} further outside`;
}

const measuredOf = ({ row, measured, missing }: Finding): string =>
	measured === undefined ? (missing === undefined ? 'no figure' : 'not known') : `measured ${figureOf(row, measured)}`;

/** One line for who must defend it. */
function expertOf(holds: readonly Hold[]): string {
	if (holds.length === 0) return `No row changes within ${String(NUDGE)} mm either way.`;
	const line = (hold: Hold) =>
		`${citation(hold.was.row)} (${hold.was.strength}): ${measuredOf(hold.was)}, limit ${limitOf(hold.was.row)}; ${lossOf(hold)}`;
	return `${holds.map(line).join(' | ')}.`;
}

/**
 * Why every mark is where it is: for each of its two coordinates the strongest reason, and the rows behind it.
 * Shape: along the wall, then height, in the order of the marks; lengths in mm, for `onTape`.
 */
export const reasonsOf = (explained: Explained): readonly Reason[] =>
	explained.marks.flatMap((mark) =>
		AXES.map((way) => {
			const holds = holdsOf(explained, mark, way);
			return {
				accessory: mark.accessory.id,
				axis: way.axis,
				rows: holds.map((h) => h.was.row.id),
				says: plainOf(explained, mark, way.axis, holds[0]),
				expert: expertOf(holds)
			};
		})
	);
