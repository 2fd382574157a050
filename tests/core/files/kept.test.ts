import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { READERS, usualSheet } from '#core/drawing/sheet.ts';
import { fileOf } from '#core/files/file.ts';
import { planFrom, questionOf, type Plan } from '#core/plan.ts';
import { describe, expect, test } from 'vitest';
import { CLIENT_PLACES } from '../drawing/client-places.ts';
import { clientCase, clientPlan } from '../drawing/client-plans.ts';
import { FONTS } from '../render/fonts.ts';

/** The one whose search ends at its budget and not with the proof. */
const BOUNDED = 'stands-then-tires';

/** The plan the command line gives, its marks where it has them, without the search. */
function planOf(name: string): Plan {
	const question = questionOf(clientCase(name));
	const placed = clientPlan(name).marks;
	const marks = question.wanted.flatMap((accessory) =>
		placed
			.filter((mark) => mark.accessory.id === accessory.id)
			.map((mark) => ({ ...mark, accessory, stage: 'proposed' as const }))
	);
	const status = name === BOUNDED ? 'bounded' : 'optimal';
	return planFrom(question, { marks, status, cost: [], bound: [], evaluations: 0, nodes: 0 });
}

describe('[files R5] the sheets of every example client, looked at page by page', () => {
	test.each(Object.keys(CLIENT_PLACES))('%s: drawn as they were', { timeout: 60_000 }, (name) => {
		const plan = planOf(name);
		const { tape } = plan.scene.c;
		for (const reader of READERS) {
			const how = { sheet: usualSheet(tape), tape };
			const bytes = Buffer.from(fileOf(`${reader}.pdf`, { plan, beside: {}, how, fonts: FONTS }));
			const kept = path.join('tests', 'drawings', 'clients', name, `${reader}.pdf`);
			const same = existsSync(kept) && readFileSync(kept).equals(bytes);
			// To take changed sheets, look at every page and copy them over the kept ones.
			const changed = path.join(tmpdir(), 'changed-sheets', name);
			if (!same) {
				mkdirSync(changed, { recursive: true });
				writeFileSync(path.join(changed, `${reader}.pdf`), bytes);
			}
			expect.soft(same, `${kept} is drawn otherwise now: look at ${changed}`).toBe(true);
		}
	});
});
