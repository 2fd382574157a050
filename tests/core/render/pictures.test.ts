import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { elevationOf } from '#core/drawing/elevation.ts';
import { marksSheetsOf } from '#core/drawing/marks-sheet.ts';
import type { Drawing } from '#core/drawing/entity.ts';
import { svgOf } from '#core/render/svg.ts';
import { describe, expect, test } from 'vitest';
import { CHILD, EXAMPLE, fixtureCase, fixturePlan, mirrored } from '../drawing/fixture.ts';
import { planOf, TEST_ROOMS } from '../drawing/rooms.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const LETTER = { reader: 'therapist', sheet: 'Letter', tape: { unit: 'in' } } as const;

const left = fixturePlan(fixtureCase({ client: CHILD }));
const right = fixturePlan(fixtureCase({ client: CHILD, enclosure: { seatWall: 'right' } }), mirrored(EXAMPLE, 914));

const PICTURES: readonly (readonly [string, () => Drawing | undefined])[] = [
	['control-wall-a4-mm', () => elevationOf(left, 'right', A4)],
	['control-wall-letter-in', () => elevationOf(left, 'right', LETTER)],
	['control-wall-right-hand-room', () => elevationOf(right, 'left', A4)],
	['seat-wall-not-known', () => elevationOf(left, 'left', A4)],
	['back-wall-with-reach', () => elevationOf(fixturePlan(fixtureCase()), 'back', A4)],
	['marks', () => marksSheetsOf(left, A4)[0]],
	['wall-beside-the-entry', () => elevationOf(planOf(TEST_ROOMS['alternate-roll-in']), 'front', A4)],
	['rails-beside-the-seat-later', () => elevationOf(planOf(TEST_ROOMS.corner), 'left', LETTER)],
	['over-bath', () => elevationOf(planOf(TEST_ROOMS['over-bath']), 'back', A4)]
];

describe('pictures that were looked at', () => {
	test.each(PICTURES)('[render R3] %s is drawn as it was when somebody looked at it', (name, draw) => {
		const drawing = draw();
		if (!drawing) throw new Error('nothing was drawn');
		const svg = svgOf(drawing);
		const kept = path.join('tests', 'drawings', `${name}.svg`);
		const same = existsSync(kept) && readFileSync(kept, 'utf8') === svg;
		// To take a changed picture, look at it and copy it over the kept one.
		const changed = path.join(tmpdir(), `${name}-changed.svg`);
		if (!same) writeFileSync(changed, svg);
		expect(same, `${kept} is drawn otherwise now: look at ${changed}`).toBe(true);
	});
});
