import type { Accessory, Mark } from '#core/case/accessory.ts';
import type { Scene } from '#core/measures/scene.ts';
import { judge } from '#core/rules/judge.ts';
import type { Answer, BoundRow, Finding } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import type { Probes, Reason } from './answer.ts';
import { leansOf } from '#core/measures/lean-need.ts';

interface Question {
	readonly scene: Scene;
	readonly wanted: readonly Accessory[];
	readonly rows: readonly BoundRow[];
}

/** How far a mark is moved to see what holds it. Units: mm. */
const NUDGE = 10;
const DIRECTIONS = [
	['left', 'x', -1],
	['right', 'x', 1],
	['lower', 'y', -1],
	['higher', 'y', 1]
] as const;
const RANK: readonly Answer[] = ['inside', 'borderline', 'unknown', 'outside'];
const STEERING = ['must', 'should', 'prefer'] as const;

const same = (a: Finding, b: Finding): boolean =>
	a.row.id === b.row.id && a.about.join() === b.about.join() && a.strength === b.strength;

/** True when the second finding is worse for its row than the first. */
function worse(was: Finding, is: Finding): boolean {
	const shortfall = (f: Finding) => Math.max(0, -(f.slack ?? 0));
	return RANK.indexOf(is.answer) > RANK.indexOf(was.answer) || shortfall(is) > shortfall(was) + 1e-9;
}

function nudged(marks: readonly Mark[], { accessory }: Mark, axis: 'x' | 'y', by: number): readonly Mark[] {
	// What shares a height line moves up and down together.
	const moves = (m: Mark) =>
		m.accessory.id === accessory.id ||
		(axis === 'y' && m.accessory.line !== undefined && m.accessory.line === accessory.line);
	return marks.map((m) => (moves(m) ? { ...m, place: { ...m.place, [axis]: mm(m.place[axis] + by) } } : m));
}

/** The rows that get worse when a mark moves a little, strongest first, at most two a direction. */
function holding(question: Question, marks: readonly Mark[], mark: Mark, findings: readonly Finding[]): Reason[] {
	const { scene, rows } = question;
	const line = mark.accessory.line;
	const ids = marks.filter((m) => m === mark || (line && m.accessory.line === line)).map((m) => m.accessory.id);
	const touching = rows.filter((r) => r.about.some((id) => ids.includes(id)));
	return DIRECTIONS.flatMap(([towards, axis, sign]) => {
		const held = judge(scene, touching, nudged(marks, mark, axis, sign * NUDGE)).filter((f) => {
			const was = findings.find((g) => same(f, g));
			return was && worse(was, f);
		});
		const ranked = STEERING.flatMap((strength) => held.filter((f) => f.strength === strength));
		const once = ranked.filter((f, i) => ranked.findIndex((g) => g.row === f.row) === i);
		return once.slice(0, 2).map(({ row, strength }) => ({
			accessory: mark.accessory.id,
			towards,
			row: row.id,
			strength,
			says: `${String(NUDGE)} mm ${towards} is worse for this: ${row.says}`
		}));
	});
}

/** Each thing that is not known once, with everything it is about. */
function questionsOf(findings: readonly Finding[]): Probes['questions'] {
	const asked = new Map<string, Set<string>>();
	for (const f of findings) {
		if (f.answer !== 'unknown' || f.missing === undefined) continue;
		const about = asked.get(f.missing) ?? new Set<string>();
		for (const id of f.about) about.add(id);
		asked.set(f.missing, about);
	}
	return [...asked].map(([asks, about], i) => ({ id: `q${String(i + 1)}`, about: [...about], asks }));
}

/** What is asked of an answer afterwards: why each mark is where it is, leans needed, and what is open. */
export function probe(question: Question, marks: readonly Mark[], findings: readonly Finding[]): Probes {
	return {
		reasons: marks.flatMap((mark) => holding(question, marks, mark, findings)),
		leans: leansOf(question.scene, marks),
		questions: questionsOf(findings)
	};
}
