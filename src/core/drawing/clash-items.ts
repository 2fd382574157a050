import type { Clash, WayOut } from '#core/placement/answer.ts';
import type { Plan } from '#core/plan.ts';
import { onTape, type Tape } from '#core/units/format.ts';
import { figure } from './figure.ts';
import type { Item, List } from './item-list.ts';
import { lettersFor } from './setting-out.ts';

/** What cannot be met: all that fails by itself in one list, then every set that fails together in its own. */
export function clashLists(plan: Plan, tape: Tape): readonly List[] {
	const clashes = plan.clashes ?? [];
	const alone = clashes.filter(({ rows }) => rows.length === 1);
	const together = clashes.filter(({ rows }) => rows.length > 1);
	const title = alone.length > 1 ? 'These cannot be met, each by itself' : 'This cannot be met';
	return [
		{ id: 'clash/alone', title, items: itemsOf(plan, alone, tape) },
		...together.map((clash, i) => ({
			id: `clash/${String(i)}`,
			title: 'These cannot be met together',
			items: itemsOf(plan, [clash], tape)
		}))
	];
}

function itemsOf(plan: Plan, clashes: readonly Clash[], tape: Tape): readonly Item[] {
	const rows = clashes.flatMap((clash) => clash.rows);
	const told = [...new Set(rows.map((r) => r.says))].map((says) => ({
		letters: lettersFor(
			plan,
			rows.filter((r) => r.says === says).flatMap((r) => r.about)
		),
		says: onTape(says, tape)
	}));
	const unproved = clashes.some((clash) => clash.unproved);
	return unproved
		? [...told, { letters: '', says: 'The search ended before each of these was shown to be needed.' }]
		: told;
}

/** The ways out of the clashes, numbered: what each gives up, by how much, and what can be done about it. */
export const waysOutList = (plan: Plan, ways: readonly WayOut[], tape: Tape): List => ({
	id: 'ways-out',
	title: ways.length > 1 ? 'Ways out' : 'A way out',
	items: ways.flatMap(({ gives }, n) =>
		gives.map(({ about, says, short, next }): Item => {
			const number = ways.length > 1 ? `${String(n + 1)}. ` : '';
			const by = short === null ? 'It is then not met.' : `It then misses by ${figure(short, tape.unit)} ${tape.unit}.`;
			return {
				letters: lettersFor(plan, about),
				says: onTape(`${number}Give up: ${says} `, tape) + by + onTape(` Next: ${next}`, tape)
			};
		})
	)
});
