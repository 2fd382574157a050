import { caseOf } from '#core/case/read.ts';
import { caseSchema, type Problem } from '#core/case/record.ts';
import { WALL_IDS } from '#core/geometry/frame.ts';
import { valueAt } from '#core/log/change.ts';
import type { Json } from '#core/log/json.ts';
import { formatLength } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import { recordedName } from './names.ts';

type Issue = NonNullable<ReturnType<typeof caseSchema.safeParse>['error']>['issues'][number];

/** Why a state cannot be a case, at one path: one or two sentences, or null when nothing is wrong there. */
export function refusalAt(state: Json, path: readonly string[], show: (n: number) => string): string | null {
	const issues = issuesOf(state);
	const issue = issues.find(isAt(path)) ?? issues[0];
	return issue ? issueWords(issue, show) : contradictionIn(state);
}

/** The same for what is typed at the path alone, whatever is still missing beside it. */
export function limitAt(state: Json, path: readonly string[], show: (n: number) => string): string | null {
	// What is not there breaks no limit.
	const issue = valueAt(state, path) === undefined ? undefined : issuesOf(state).find(isAt(path));
	return issue ? issueWords(issue, show) : null;
}

function issuesOf(state: Json): readonly Issue[] {
	return caseSchema.safeParse(state).error?.issues ?? [];
}

const isAt =
	(path: readonly string[]) =>
	(issue: Issue): boolean =>
		path.every((key, i) => String(issue.path[i]) === key);

function issueWords(issue: Issue, show: (n: number) => string): string {
	if (issue.code === 'too_big') return `More than can be here: at most ${show(Number(issue.maximum))}.`;
	if (issue.code === 'too_small') return `Less than can be here: at least ${show(Number(issue.minimum))}.`;
	return issue.code === 'invalid_type' ? 'This is not a number that can stand here.' : `${issue.message}.`;
}

/** What parts of a record say against one another, and what to do about it. */
function contradictionIn(state: Json): string | null {
	const read = caseOf(state);
	const [problem] = read.kind === 'bad' ? read.problems : [];
	return problem ? wordsOf(problem, state) : null;
}

function wordsOf({ path, says }: Problem, state: Json): string {
	const [root = '', id = ''] = path.split('.');
	if (path === 'enclosure.seatWall') return 'This wall is behind who sits. Choose another wall for that first.';
	if (path === 'enclosure.frontWall') return 'A wall beside the entry needs its side and its length.';
	if (root === 'places') {
		const wall = WALL_IDS.find((one) => one === valueAt(state, ['places', id, 'wall'])) ?? 'back';
		return `${recordedName(id, wall)} is held where it could not be then. Let it go first, at the step Places.`;
	}
	if (says.startsWith('expected studs')) return 'Another stud is there already. Move or remove that one first.';
	if (says.startsWith('expected one thickness')) return 'What lies there already has another thickness.';
	if (says.includes('on its wall')) return 'It would lie beyond the end of its wall. Measure wall and distance again.';
	if (says.startsWith('expected x0')) return 'It would end before it begins. Change the other end first.';
	if (says.startsWith('expected where she sat'))
		return 'Points were taped from there. Take those away first, or say where the person sat.';
	const told = onTape(says, state);
	if (path === 'enclosure.diagonals') return `${told} Measure corner to corner again, or the width and depth.`;
	if (path === 'enclosure.drain') return `${told} Measure again from the back left corner.`;
	if (root === 'parts') return `${told} Measure it again.`;
	if (says.startsWith('expected it within')) return `${told} Measure again at this height.`;
	return told;
}

/** A sentence about lengths in mm, on the tape of the house. */
function onTape(says: string, state: Json): string {
	const unit = valueAt(state, ['tape', 'unit']) === 'in' ? 'in' : 'mm';
	const told = says.replace(/\d+(\.\d+)?/g, (n) => formatLength(mm(Number(n)), { unit }));
	return `${told.charAt(0).toUpperCase()}${told.slice(1)}.`;
}
