import { elevationOf } from '#core/drawing/elevation.ts';
import type { Drawing, Path, Spot } from '#core/drawing/entity.ts';
import { LAYERS, type Layer, type Style } from '#core/drawing/layers.ts';
import { cornerOf, wallsUsed } from '#core/drawing/setting-out.ts';
import { spanOf } from '#core/drawing/wall-ends.ts';
import { write } from '#core/drawing/type.ts';
import { arcCurves } from '#core/render/arc.ts';
import { dxfOf } from '#core/render/dxf.ts';
import { polylinesOf } from '#core/render/dxf-polyline.ts';
import { reportOf } from '#core/report.ts';
import DxfParser, { type ICircleEntity, type ILwpolylineEntity, type ITextEntity } from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fixtureCase, fixturePlan, EXAMPLE, mirrored } from '../drawing/fixture.ts';

const plans = {
	'seat on the left': fixturePlan(fixtureCase()),
	'seat on the right': fixturePlan(fixtureCase({ enclosure: { seatWall: 'right' } }), mirrored(EXAMPLE, 914))
};
const how = { reader: 'installer', sheet: 'A4', tape: { unit: 'mm' } } as const;

/** Read by an independent reader, the npm package dxf-parser. */
function read(text: string) {
	const dxf = new DxfParser().parseSync(text);
	if (!dxf) throw new Error('not a DXF');
	return dxf;
}

const textsIn = (text: string) => read(text).entities.filter((e): e is ITextEntity => e.type === 'TEXT');

describe.each(Object.entries(plans))('a wall as a DXF, %s', (_, plan) => {
	const { room } = plan.scene;
	const bars = reportOf(plan).accessories.filter(({ kind }) => kind.endsWith('-bar'));

	test('[render R7] the plan has bars to look for', () => {
		expect(bars.flatMap((m) => m.fixings).length).toBeGreaterThanOrEqual(4);
	});

	test.each(wallsUsed(plan))(
		'[render R7] %s: every flange of a bar lies where plan.json has it, to 0.01 mm',
		(wall) => {
			for (const tape of ['mm', 'in'] as const) {
				const dxf = read(dxfOf(elevationOf(plan, wall, { ...how, tape: { unit: tape } })));
				const { from, to } = spanOf(room, wall);
				const zero = cornerOf(room, wall).side === 'left' ? from : to;
				const centres = dxf.entities.filter((e): e is ICircleEntity => e.type === 'CIRCLE').map((c) => c.center);
				for (const mark of bars.filter((m) => m.wall === wall)) {
					for (const fixing of mark.fixings) {
						const off = centres.map((c) => Math.hypot(c.x + zero - fixing.x, c.y - fixing.y));
						expect([mark.id, Math.min(...off) < 0.01]).toEqual([mark.id, true]);
					}
				}
			}
		}
	);

	test('[render R7] the sides of a wall are as far apart as the wall is long', () => {
		const wall = room.controlWall;
		const dxf = read(dxfOf(elevationOf(plan, wall, how)));
		const outline = dxf.entities.filter((e): e is ILwpolylineEntity => e.layer === 'OUTLINE');
		const upright = outline.flatMap(({ vertices: v }) =>
			v.flatMap((a, i) => (v[i + 1] && Math.abs((v[i + 1]?.x ?? 0) - a.x) < 1e-6 ? [a.x] : []))
		);
		expect(Math.max(...upright) - Math.min(...upright)).toBeCloseTo(room.walls[wall].length, 3);
	});
});

describe('a DXF', () => {
	const plan = plans['seat on the left'];
	const drawing = elevationOf(plan, 'right', how);
	const text = dxfOf(drawing);
	const dxf = read(text);
	const scale = drawing.frame?.scale ?? 0;

	test('[render R7] is in mm', () => {
		expect(dxf.header).toMatchObject({ $INSUNITS: 4, $MEASUREMENT: 1, $ACADVER: 'AC1015' });
	});

	test('[render R7] has the layers of what is drawn of the wall, with dashes as long as on paper at its scale', () => {
		const { layers } = dxf.tables.layer;
		const { lineTypes } = dxf.tables.lineType;
		for (const e of drawing.entities) {
			if (e.kind !== 'path' || e.picture !== 'wall') continue;
			const { stroke, dash = [] }: Style = LAYERS[e.layer];
			if (!stroke) continue;
			const name = e.layer.toUpperCase();
			expect(name).toMatch(/^[A-Z0-9_-]+$/);
			expect(Object.keys(layers)).toContain(name);
			const pattern = dash.map((length, i) => (i % 2 === 0 ? length : -length) * scale);
			expect(lineTypes[name]?.pattern ?? []).toEqual(pattern.map((n) => expect.closeTo(n, 4) as number));
		}
		expect(Object.keys(layers)).toEqual(expect.arrayContaining(['TEXT', 'NOTES']));
		// What is drawn is on a layer that is there.
		expect([...new Set(dxf.entities.map((e) => e.layer))].filter((name) => !(name in layers))).toEqual([]);
	});

	test('[render R7] has every text of the wall and beside it once, and none of a picture at another scale', () => {
		const wanted = drawing.entities.flatMap((e) =>
			e.kind === 'text' && (e.picture === undefined || e.picture === 'wall') ? [e] : []
		);
		const found = textsIn(text);
		expect(found.map((t) => t.layer)).toEqual(wanted.map((t) => (t.picture === 'wall' ? 'TEXT' : 'NOTES')));
		expect(found.filter((t) => t.layer === 'TEXT').map((t) => t.text)).toEqual(
			expect.arrayContaining(['C', '+560', '-150'])
		);
		expect(drawing.entities.some((e) => e.kind === 'text' && e.picture === 'key')).toBe(true);
	});

	test('[render R7] a fraction is 1/2, a minus is -, what is beyond ASCII is its number, a sign of control is itself', () => {
		const at = { picture: 'wall' } as const;
		const entities = ['34 1/2', '-150', '\u00e9\u2190', '50%%d', 'a^b'].map((words, i) => ({
			...write(String(i), words, [i, 0], { size: 10 }),
			...at
		}));
		const sheet: Drawing = { ...drawing, entities };
		const made = dxfOf(sheet);
		expect(made).toMatch(/^[\n -~]*$/);
		const lines = made.split('\n');
		const words = lines.flatMap((line, i) => (line === 'AcDbText' && lines[i + 9] === '1' ? [lines[i + 10]] : []));
		expect(words).toEqual(['34 1/2', '-150', '\\U+00E9\\U+2190', '50%%037%%037d', 'a^ b']);
	});

	test('[render R7] a capital is as high as on paper at its scale', () => {
		const size = 24;
		const made = dxfOf({ ...drawing, entities: [write('x', 'X', [0, 0], { size })] });
		// Source: capitals of Source Sans 3 are 660 of 1000 high.
		expect(textsIn(made)[0]?.textHeight).toBeCloseTo(((size * 25.4) / 72) * 0.66 * scale, 3);
	});

	test('[render R7] the same drawing gives the same bytes; no record has the number of another', () => {
		expect(dxfOf(elevationOf(plan, 'right', how))).toBe(text);
		const lines = text.split('\n');
		const handles = lines.flatMap((line, i) => (i % 2 === 0 && line === '5' ? [lines[i + 1]] : []));
		// The first is that of the header: the next to be given.
		expect(new Set(handles).size).toBe(handles.length);
		expect(handles.length).toBeGreaterThan(100);
	});

	test('[render R7] of anything but a wall is refused', () => {
		expect(() => dxfOf({ title: 't', size: { width: 1, height: 1 }, entities: [] })).toThrow(RangeError);
	});
});

describe('an arc in a DXF', () => {
	test('[render R7] bends through the point its curves bend through', () => {
		const angle = fc.double({ min: -3, max: 3, noNaN: true });
		const sweep = fc.double({ min: 0.05, max: 3, noNaN: true });
		fc.assert(
			fc.property(
				angle,
				sweep,
				fc.double({ min: 1, max: 80, noNaN: true }),
				fc.boolean(),
				(start, by, radius, clockwise) => {
					const on = (a: number): Spot => [radius * Math.cos(a), radius * Math.sin(a)];
					const [from, to] = [on(start), on(start + (clockwise ? by : -by))];
					const layer: Layer = 'thing';
					const path: Path = {
						kind: 'path',
						id: 'arc',
						layer,
						closed: false,
						d: [
							{ by: 'move', to: from },
							{ by: 'arc', to, radius, clockwise }
						]
					};
					const [line] = polylinesOf(path, { scale: 10, origin: [0, 0], picture: 'wall' });
					const [a, b] = line?.points ?? [];
					if (!a || !b) throw new Error('no arc');
					// Source: the sagitta is the bulge times half the chord, to the right of the way where it is negative.
					const [dx, dy] = [b.to[0] - a.to[0], b.to[1] - a.to[1]];
					const middle = [(a.to[0] + b.to[0]) / 2 + (a.bulge * dy) / 2, (a.to[1] + b.to[1]) / 2 - (a.bulge * dx) / 2];
					const half = on(start + (clockwise ? by : -by) / 2);
					expect(middle[0]).toBeCloseTo(half[0] * 10, 4);
					expect(middle[1]).toBeCloseTo(-half[1] * 10, 4);
					const curves = arcCurves(from, { by: 'arc', to, radius, clockwise });
					expect(curves.at(-1)?.[2][0]).toBeCloseTo(to[0], 6);
				}
			)
		);
	});
});
