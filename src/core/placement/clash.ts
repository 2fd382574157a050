import type { Accessory } from '#core/case/accessory.ts';
import type { BoundRow } from '#core/rules/row.ts';
import type { Clash } from './answer.ts';
import type { Progress } from './search.ts';
import { meets, type Question } from './solve.ts';

/** Rows one question "can these be met together" may ask. Source: ours. */
const BUDGET = 1_000_000;

type Rows = readonly BoundRow[];

/** Rows that clash; proved when a search met the rest without any one of them. */
interface Found {
	readonly rows: Rows;
	readonly proved: boolean;
}

function* meetable(question: Question, rows: Rows): Generator<Progress, boolean | null, undefined> {
	return rows.length === 0 || (yield* meets({ ...question, rows }, BUDGET));
}

/** Sets of accessories from small to large: most clashes lie in what one or two of them ask. */
function groupsOf({ wanted }: Question): readonly (readonly string[])[] {
	const ids = wanted.map((a) => a.id);
	const pairs = ids.flatMap((a, i) => ids.slice(i + 1).map((b) => [a, b]));
	return [...ids.map((id) => [id]), ...pairs, ids];
}

/**
 * A clash with its idle members dropped, each in turn while the rest still clash: large sets are quickest to refute.
 * Shape: what could not be dropped for want of budget is asked again at the end, among fewer.
 */
function* narrowed(question: Question, rows: Rows): Generator<Progress, Found, undefined> {
	let kept = rows;
	let open: Rows = [];
	for (const row of rows) {
		const rest = kept.filter((r) => r !== row);
		const met = yield* meetable(question, rest);
		if (met === false) kept = rest;
		if (met === null) open = [...open, row];
	}
	for (const row of open) {
		const rest = kept.filter((r) => r !== row);
		const met = yield* meetable(question, rest);
		if (met === false) kept = rest;
		if (met !== null) open = open.filter((r) => r !== row);
	}
	return { rows: kept, proved: open.length === 0 };
}

/**
 * Every set of musts that cannot be met together and shares no row with one before it.
 * Shape: irreducible, without any one member the rest are met; with all sets relaxed nothing is left that clashes.
 * Fewer, or none, when a budget ends.
 */
export function* clashesOf(question: Question): Generator<Progress, readonly Found[], undefined> {
	const missing = partless(question).map((a) => a.id);
	let musts: Rows = question.rows.filter(
		(r) => r.strength === 'must' && r.about.length > 0 && !r.about.some((id) => missing.includes(id))
	);
	const found: Found[] = [];
	for (const ids of groupsOf(question)) {
		for (;;) {
			const own = musts.filter((r) => r.about.every((id) => ids.includes(id)));
			if ((yield* meetable(question, own)) !== false) break;
			const clash: Found = yield* narrowed(question, own);
			found.push(clash);
			musts = musts.filter((r) => !clash.rows.includes(r));
		}
	}
	return found;
}

/** What is wanted and not given, and no part that is sold fits its walls: no row is needed to make that impossible. */
const partless = ({ scene, wanted }: Question): readonly Accessory[] =>
	wanted.filter((a) => a.slots.length === 0 && scene.c.places[a.id] === undefined);

/** Every clash as plain data: what no part fits, each alone, then rows that cannot be met together. */
export const clashesTold = (question: Question, clashes: readonly Found[]): readonly Clash[] => [
	...partless(question).map((a) => ({
		rows: [{ row: a.because, about: [a.id], says: `Every ${a.kind.replaceAll('-', ' ')} is longer than its wall.` }]
	})),
	...clashes.map(({ rows, proved }) => ({
		rows: rows.map(({ row, about }) => ({ row: row.id, about, says: row.says })),
		...(!proved && { unproved: true as const })
	}))
];
