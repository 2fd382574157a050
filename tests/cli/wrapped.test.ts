import { expect, test } from 'vitest';
import { wrapped } from '#cli/wrapped.ts';

test('[cli R6] a word wider than a terminal is cut, and nothing of it is lost', () => {
	const word = 'x'.repeat(400);
	const lines = wrapped(`  goals: ${word} and more`);
	for (const line of lines) expect(line.length).toBeLessThanOrEqual(100);
	expect(lines.join('').replaceAll(' ', '')).toBe(`goals:${word}andmore`);
});
