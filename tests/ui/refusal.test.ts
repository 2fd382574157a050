import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Json } from '#core/log/json.ts';
import { refusalAt } from '#ui/state/refusal.ts';

type Walls = { enclosure: { walls: { back: { studs: unknown; backing: unknown } } } };

/** An example client with other things behind the back wall. */
function behind(studs: unknown, backing: unknown): Json {
	const json = JSON.parse(readFileSync('personas/clients/turns-left/case.json', 'utf8')) as Walls;
	Object.assign(json.enclosure.walls.back, { studs, backing });
	return json as unknown as Json;
}

const stud = (x: number) => ({ x, width: 38, how: 'measured' });
const wood = (thickness: number) => ({ kind: 'sheet', x0: 0, x1: 300, y0: 0, y1: 300, thickness, how: 'told' });

test.each([
	['a stud beyond its wall', { a: stud(2500) }, {}, 'beyond the end of its wall'],
	['a stud where one is', { a: stud(400), b: stud(410) }, {}, 'Another stud is there already'],
	['a sheet where another thickness is', {}, { a: wood(18), b: wood(12) }, 'already has another thickness']
])('[screen R3] %s is refused in words of the room', (_, studs, backing, says) => {
	expect(refusalAt(behind(studs, backing), ['enclosure', 'walls', 'back'], String)).toContain(says);
});

test('[screen R3] studs side by side and wood of one thickness stand', () => {
	const good = behind({ a: stud(400), b: stud(438) }, { a: wood(18), b: { ...wood(18), x0: 200 } });
	expect(refusalAt(good, ['enclosure', 'walls', 'back'], String)).toBeNull();
});
