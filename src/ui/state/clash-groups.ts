import type { Clash } from '#core/placement/answer.ts';

/** What cannot be had, as it is read: rows that clash with nothing but the room each once, with all they are about. */
export interface ClashGroup {
	readonly kind: 'alone' | 'together';
	readonly rows: Clash['rows'];
	readonly unproved: boolean;
}

/** Clashes put together for reading. */
export function clashGroups(clashes: readonly Clash[]): readonly ClashGroup[] {
	const alone = clashes.filter(({ rows }) => rows.length === 1);
	const together = clashes.filter(({ rows }) => rows.length > 1);
	const bySays = new Map<string, Clash['rows'][number]>();
	for (const row of alone.flatMap(({ rows }) => rows)) {
		const about = [...(bySays.get(row.says)?.about ?? []), ...row.about];
		bySays.set(row.says, { ...row, about });
	}
	const isOpen = (some: readonly Clash[]): boolean => some.some(({ unproved }) => unproved === true);
	return [
		...(alone.length > 0 ? [{ kind: 'alone' as const, rows: [...bySays.values()], unproved: isOpen(alone) }] : []),
		...together.map((clash) => ({ kind: 'together' as const, rows: clash.rows, unproved: isOpen([clash]) }))
	];
}
