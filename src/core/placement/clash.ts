import type { Accessory } from '#core/case/accessory.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { BoundRow } from '#core/rules/row.ts';
import type { Clash } from './answer.ts';
import { problemOf } from './problem.ts';
import { Search, type Progress } from './search.ts';

/** Rows one question "can these be met together" may ask. Source: ours. */
const BUDGET = 5_000_000;

/** True when some plan meets these rows, false when none does, null when the budget ends first. */
function* meets(
	scene: Scene,
	rows: readonly BoundRow[],
	wanted: readonly Accessory[]
): Generator<Progress, boolean | null, undefined> {
	const search = new Search(problemOf(scene, rows, wanted), { until: 'first', evaluations: BUDGET });
	const run = search.run();
	let step = run.next();
	while (!step.done) {
		yield { ...search.tally, found: null, bound: search.bound };
		step = run.next();
	}
	if (search.found) return true;
	return step.value === 'proved' ? false : null;
}

/** Accessories the rows speak of; the others play no part in their clash. */
const spokenOf = (rows: readonly BoundRow[], wanted: readonly Accessory[]): readonly Accessory[] =>
	wanted.filter((a) => rows.some((r) => r.about.includes(a.id)));

/**
 * Musts that cannot all be met: each dropped in turn, and left out when the rest still clash.
 * Shape: an irreducible set, every member needed; nothing when the rows can be met or the budget ends.
 */
export function* clashOf(
	scene: Scene,
	rows: readonly BoundRow[],
	wanted: readonly Accessory[]
): Generator<Progress, Clash | undefined, undefined> {
	let musts = rows.filter((r) => r.strength === 'must' && r.about.length > 0);
	for (const accessory of wanted) {
		// Most clashes lie in what one accessory asks: try that smaller set first.
		const own = musts.filter((r) => r.about.every((id) => id === accessory.id || id === 'seat'));
		if ((yield* meets(scene, own, spokenOf(own, wanted))) === false) {
			musts = own;
			break;
		}
	}
	if ((yield* meets(scene, musts, spokenOf(musts, wanted))) !== false) return undefined;
	for (const row of musts) {
		const rest = musts.filter((r) => r !== row);
		if ((yield* meets(scene, rest, spokenOf(rest, wanted))) === false) musts = rest;
	}
	return { rows: musts.map(({ row, about }) => ({ row: row.id, about, says: row.says })) };
}
