import { describe, expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import { readCase } from '#core/case/read.ts';
import type { Case } from '#core/case/record.ts';
import { overlap, type Box } from '#core/drawing/entity.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import { questionOf } from '#core/plan.ts';
import { mm } from '#core/units/length.ts';
import { balloonShapes } from '#ui/drawing/balloon-shapes.ts';
import { behindShapes } from '#ui/drawing/behind-shapes.ts';
import { elevationShapes } from '#ui/drawing/elevation-shapes.ts';
import { partBox } from '#ui/drawing/part-box.ts';
import { ReachField } from '#ui/drawing/reach-field.ts';
import { heightFor, screenView } from '#ui/drawing/screen-view.ts';
import type { Shape } from '#ui/drawing/shape.ts';
import { covered, laidWords } from '#ui/drawing/words.ts';
import { EXAMPLES } from '#ui/state/examples.ts';
import { sidesSeen } from '#ui/state/room-words.ts';
import { aCase } from './a-case.ts';
import { someMarks } from './a-plan.ts';

const cases: readonly Case[] = EXAMPLES.flatMap((text) => {
	const read = readCase(text);
	return read.kind === 'case' ? [read.case] : [];
});

const isWord = ({ id, tag }: Shape): boolean => tag === 'text' && /^words\/|-words$|\/words$/.test(id);
const lettered = (marks: readonly Mark[]) =>
	marks.map((mark, i) => ({ mark, letter: String.fromCharCode(65 + i), answer: 'inside' as const, wishes: 0 }));

/** One wall of a case as a phone or a tablet draws it, with the marks somewhere on it and one of them touched. */
function drawnOn(c: Case, wall: WallId, { width, touched }: { width: number; touched: string }) {
	const question = questionOf(c);
	const { scene } = question;
	const marks = someMarks(question);
	const framed = { room: scene.room, wall, marks: marks.filter(({ place }) => place.wall === wall), width };
	const view = screenView({ ...framed, height: Math.min(heightFor(framed), 500) });
	const shapes = elevationShapes({
		...{ scene, wall, touched, view, from: [], field: new ReachField(), unit: c.tape.unit },
		lettered: lettered(marks)
	});
	return { shapes, view, marks: framed.marks };
}

/** Whether somebody of the case may lean when seated. */
const leans = (c: Case): boolean =>
	WALL_IDS.some((wall) =>
		drawnOn(c, wall, { width: 620, touched: 'control' }).shapes.some(({ id }) => id === 'reach/leaning-edge')
	);

/** How far the middle of a word is from the line of a field, px. */
function offLine({ attrs }: Shape, shapes: readonly Shape[], name: string): number {
	const d = String(shapes.find(({ id }) => id === `reach/${name}-edge`)?.attrs['d']);
	const points = d
		.split(/[MLZ]+/)
		.filter((one) => one !== '')
		.map((one) => one.split(' ').map(Number));
	return Math.min(...points.map(([x = 0, y = 0]) => Math.hypot(x - Number(attrs['x']), y - Number(attrs['y']) + 5)));
}

/** A hair less, so that what only touches is not an overlap. */
const shrunk = ({ x0, y0, x1, y1 }: Box): Box => ({ x0: x0 + 0.5, y0: y0 + 0.5, x1: x1 - 0.5, y1: y1 - 0.5 });

describe('words on the drawing', () => {
	test.each(cases.map((c) => [c.id, c] as const))(
		'[ui R17] of %s no word lies on a part, on the seat in profile, on a letter or on another word',
		(_, c) => {
			const { scene, wanted } = questionOf(c);
			let leaning = 0;
			for (const wall of sidesSeen(scene.room, [])) {
				for (const { id: touched } of wanted.filter(({ kind }) => kind === 'control' || kind === 'seat')) {
					for (const width of [320, 390, 620]) {
						const { shapes, view, marks } = drawnOn(c, wall, { width, touched });
						const words = shapes.filter(isWord);
						const others = shapes.filter(
							(one) => !isWord(one) && (one.tag === 'text' || one.id.startsWith('profile/'))
						);
						const letters = shapes.filter(({ id }) => id.endsWith('/balloon'));
						const taken = [...covered([...others, ...letters]), ...marks.map((mark) => partBox(mark, view))];
						words.forEach((word, i) => {
							const [box] = covered([word]) as [Box];
							const under = [...taken, ...covered(words.slice(i + 1))].filter((other) => overlap(shrunk(box), other));
							expect(under, `${word.id} on the ${wall} wall at ${String(width)} px`).toEqual([]);
							if (word.id === 'reach/leaning-words') leaning++;
						});
					}
				}
			}
			expect(leaning > 0).toBe(leans(c));
		}
	);

	test('[ui R17] the name of a field stands on its own line, where there is room as on a tablet', () => {
		let told = 0;
		for (const c of cases) {
			for (const wall of sidesSeen(questionOf(c).scene.room, [])) {
				const { shapes } = drawnOn(c, wall, { width: 620, touched: 'control' });
				for (const name of ['easy', 'stretched', 'leaning']) {
					const word = shapes.find(({ id }) => id === `reach/${name}-words`);
					if (!word) continue;
					told++;
					expect(offLine(word, shapes, name), `${name} of ${c.id} on the ${wall} wall`).toBeLessThan(12);
				}
			}
		}
		expect(told).toBeGreaterThan(10);
	});

	test('[ui R17] a word takes its first wish that is free, then the nearest place inside what it names, else none', () => {
		const within = { x0: 0, y0: 0, x1: 300, y1: 100 };
		const word = { id: 'w', says: ['stud'], wishes: [[40, 50]] as const, within };
		const at = (taken: readonly Box[]) => laidWords([word], taken)[0]?.attrs['x'];
		expect(at([])).toBe(40);
		expect(Number(at([{ x0: 20, y0: 0, x1: 60, y1: 100 }]))).toBeGreaterThan(60);
		expect(at([within])).toBeUndefined();
	});

	test('[ui R17] where the fullest words find no room, shorter ones do', () => {
		const within = { x0: 0, y0: 0, x1: 70, y1: 30 };
		const word = { id: 'w', says: ['reinforced, 1300 N by its paper', '1300 N'], wishes: [[35, 15]] as const, within };
		expect(
			laidWords([word], [])[0]
				?.runs?.map(({ text }) => text)
				.join('')
		).toBe('1300 N');
	});
});

test('[ui R17] no letter covers the part of another, where there is room', () => {
	const { opened } = aCase();
	const room = roomOf(opened.case.enclosure);
	const two = someMarks(questionOf(opened.case)).filter(({ variant }) =>
		['control', 'handset-rest'].includes(variant.kind)
	);
	const close = two.map((mark, i) => ({
		...mark,
		place: { ...mark.place, wall: 'back' as const, x: mm(400 + 130 * i), y: mm(0) }
	}));
	const view = screenView({ room, wall: 'back', marks: close, width: 390, height: 400 });
	const balloons = covered(balloonShapes(lettered(close), view).filter(({ id }) => id.endsWith('/balloon')));
	expect(balloons).toHaveLength(2);
	balloons.forEach((balloon, i) => {
		close.forEach((mark, n) => {
			if (n !== i) expect(overlap(balloon, partBox(mark, view))).toBe(false);
		});
	});
});

test('[ui R15] what is behind a wall is drawn as far as the wall goes: along it, and down to its floor', () => {
	const { opened } = aCase();
	const { enclosure } = opened.case;
	const measured = (value: number) => ({ value: mm(value), how: 'measured' as const });
	const stud = (x: number) => ({ x: mm(x), width: mm(38), how: 'measured' as const });
	const front = { ...enclosure.walls.front, stands: true, studs: { in: stud(1300), edge: stud(1000), out: stud(400) } };
	const alternate: Case = {
		...opened.case,
		enclosure: {
			...enclosure,
			...{ type: 'alternate-roll-in', width: measured(1700), depth: measured(800), datum: measured(1000) },
			frontWall: { side: 'left', length: measured(700) },
			walls: { ...enclosure.walls, front }
		}
	};
	const room = roomOf(alternate.enclosure);
	const view = screenView({ room, wall: 'front', marks: [], width: 700, height: 700 });
	const shapes = behindShapes({ scene: { c: alternate, room }, wall: 'front', view, needed: [], kept: [], unit: 'mm' });
	const lines = (id: string) => covered(shapes.filter((one) => one.id === `stud/${id}`));
	expect(lines('in')).toHaveLength(2);
	expect(lines('edge')).toHaveLength(1);
	expect(lines('out')).toHaveLength(0);
	for (const { x0, y1 } of [...lines('in'), ...lines('edge')]) {
		expect(x0).toBeGreaterThanOrEqual(view.x(1000));
		expect(y1).toBeLessThanOrEqual(view.y(room.floorUnder('front', 1000, 1700).low) + 0.1);
	}
});
