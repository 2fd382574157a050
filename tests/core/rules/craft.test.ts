import { describe, expect, test } from 'vitest';
import { answerOf } from '#core/rules/answer.ts';
import { CRAFT } from '#core/rules/packs/craft.ts';

const answer = (id: string, measured: number) => {
	const row = CRAFT.rows.find((r) => r.id === id);
	if (!row) throw new Error(`no row ${id}`);
	return answerOf(row, measured);
};

describe('habits of setting out, fixtures', () => {
	test.each([
		['CRAFT-HOLDER', 300, 301],
		['CRAFT-OUTLET', 300, 301],
		['CRAFT-TEMPERATURE-ENTRY', 300, 301],
		['CRAFT-OUTLET-HEIGHT', 3, 4],
		['CRAFT-TEMPERATURE-HEIGHT', 3, 4]
	] as const)('[rules R3] %s: %d mm is inside, %d mm is not', (id, inside, outside) => {
		expect(answer(id, inside)).toBe('inside');
		expect(answer(id, outside)).toBe('outside');
	});
});
