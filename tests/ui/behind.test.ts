import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { screenView } from '#ui/drawing/screen-view.ts';
import { sizeGrips, touchBox } from '#ui/drawing/thing-boxes.ts';
import ThingGrips from '#ui/panels/thing-grips.svelte';
import { behindWall, NEW_KINDS, newThing, thingsBehind } from '#ui/state/behind.ts';
import { PlanState } from '#ui/state/plan-state.svelte.ts';
import { dragged, steppedOn, WHOLE, type Spread } from '#ui/state/spread.ts';
import { ThingHands } from '#ui/state/thing-hands.svelte.ts';
import { aCase } from './a-case.ts';

vi.mock('#ui/state/planner.ts', () => ({
	planner: { plan: () => undefined, stands: () => undefined, drop: () => undefined }
}));

beforeAll(() => {
	// The page of the tests has no pointers to capture.
	Element.prototype.setPointerCapture = () => undefined;
});

const on = { area: { from: 0, to: 914.4, bottom: -1000, top: 1000 }, step: 5 };
const stud: Spread = { x: 407, width: 38 };
const area: Spread = { x0: 102, x1: 202, y0: -50, y1: 50 };

describe('[ui R19] what is behind a wall, moved and sized by hand', () => {
	test('a drag ends on marking steps and on the wall, and keeps the size', () => {
		expect(dragged(stud, WHOLE, { x: 21, y: 300 }, on)).toEqual({ x: 430, width: 38 });
		expect(dragged(area, WHOLE, { x: 10, y: 12 }, on)).toEqual({ x0: 110, x1: 210, y0: -40, y1: 60 });
		expect(dragged(stud, WHOLE, { x: 2000, y: 0 }, on)).toEqual({ x: 910, width: 38 });
		expect(dragged(area, WHOLE, { x: -2000, y: 5000 }, on)).toEqual({ x0: 0, x1: 100, y0: 900, y1: 1000 });
	});

	test('an edge or a corner sizes only what it holds, and never to nothing', () => {
		expect(dragged(area, { across: 1, up: 0 }, { x: 31, y: 99 }, on)).toEqual({ ...area, x1: 235 });
		expect(dragged(area, { across: -1, up: 1 }, { x: -31, y: 31 }, on)).toEqual({ x0: 70, x1: 202, y0: -50, y1: 80 });
		expect(dragged(area, { across: 1, up: 0 }, { x: -900, y: 0 }, on)).toEqual({ ...area, x1: 110 });
	});

	test('a step goes to the next marking step, along its own axis alone', () => {
		expect(steppedOn(stud, false, { x: 1, y: 0 }, on)).toEqual({ x: 410, width: 38 });
		expect(steppedOn(stud, false, { x: -10, y: 0 }, on)).toEqual({ x: 360, width: 38 });
		expect(steppedOn(area, false, { x: 0, y: 1 }, on)).toEqual({ x0: 102, x1: 202, y0: -45, y1: 55 });
		expect(steppedOn(area, true, { x: 1, y: 0 }, on)).toEqual({ ...area, x1: 205 });
		expect(steppedOn(stud, true, { x: 1, y: 0 }, on)).toEqual({ x: 407, width: 40 });
		expect(steppedOn(stud, true, { x: 0, y: 1 }, on)).toEqual(stud);
	});

	test('what was recorded beyond its wall comes back only when moved there', () => {
		const beyond: Spread = { x0: -52, x1: 1000, y0: 0, y1: 100 };
		expect(steppedOn(beyond, false, { x: 0, y: 1 }, on)).toEqual({ ...beyond, y0: 5, y1: 105 });
	});

	test('a new thing has its middle where it was put, and its size is one that is sold', () => {
		const made = (i: number, x: number) => {
			const kind = NEW_KINDS[i];
			return kind && newThing(kind, 'mm', { x, y: 3 }, on).made;
		};
		expect(made(0, 403)).toEqual({ x: 405, width: 38, how: 'measured' });
		expect(made(1, 403)).toMatchObject({ kind: 'blocking', x0: 205, x1: 605, thickness: 38, how: 'measured' });
		expect(made(2, 0)).toEqual({ kind: 'pipe', x0: 0, x1: 100, y0: -45, y1: 55, how: 'measured' });
		const bar = { what: 'grab-bar', fate: 'keep', how: 'measured' };
		expect(made(3, 300)).toEqual({ ...bar, x0: 0, x1: 600, y0: -35, y1: 40 });
	});

	test('grips are a finger wide each, and leave the middle to a finger', () => {
		const box = { x0: 200, x1: 210, y0: 300, y1: 460 };
		const grips = sizeGrips(box, { width: 600, height: 600 });
		const { left, top, width, height } = touchBox(box);
		expect(Math.min(width, height)).toBe(44);
		const middles = [...grips, { x: left + width / 2, y: top + height / 2 }];
		for (const [i, a] of middles.entries()) {
			for (const b of middles.slice(i + 1)) {
				expect(Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y))).toBeGreaterThanOrEqual(44);
			}
		}
	});
});

function behind() {
	const { opened, kept } = aCase();
	const put = (group: string, id: string, to: Record<string, number | string>) =>
		opened.act([{ path: ['enclosure', 'walls', 'back', group, id], to }]);
	put('studs', 'b', { x: 605, width: 38, how: 'measured' });
	put('studs', 'a', { x: 200, width: 38, how: 'measured' });
	put('keepOuts', 'p', { kind: 'pipe', x0: 300, x1: 400, y0: 0, y1: 100, how: 'measured' });
	const plan = new PlanState(() => opened.case);
	const hands = new ThingHands(opened, plan, behindWall('back'));
	const { room } = plan.question.scene;
	const view = screenView({ room, wall: 'back', marks: [], width: 390, height: 480 });
	const onremove = () => hands.remove();
	render(ThingGrips, { view, hands, area: room.walls.back, label: 'Things', unit: 'mm', onremove });
	const walls = () => opened.case.enclosure.walls.back;
	return { opened, kept, hands, view, walls };
}

const thing = (name: RegExp): HTMLElement => screen.getByRole('button', { name });

function pointer(kind: string, x: number, y: number): PointerEvent {
	return new PointerEvent(kind, { bubbles: true, pointerId: 7, button: 0, clientX: x, clientY: y });
}

describe('[ui R19] what is behind a wall, on its drawing', () => {
	test('each is a button, from left to right, called as the tables call it', () => {
		behind();
		const names = screen.getAllByRole('button').map((button) => button.getAttribute('aria-label'));
		expect(names).toEqual([
			'Stud 2, middle 200, 38 wide',
			'Keep-out 1, pipe, from 300 to 400, low 0, high +100',
			'Stud 1, middle 605, 38 wide'
		]);
	});

	test('arrows move only what is chosen; a run of them is one step of the history', async () => {
		const { opened, hands, walls } = behind();
		thing(/^Stud 1/).focus();
		await userEvent.keyboard('{ArrowRight}');
		expect(hands.holding).toBe(false);
		await userEvent.keyboard('{Enter}{ArrowRight}{Shift>}{ArrowLeft}{/Shift}');
		expect(thing(/^Stud 1/).getAttribute('aria-label')).toContain('middle 560');
		expect(walls().studs['b']?.x).toBe(605);
		await userEvent.keyboard('{Enter}');
		expect(walls().studs['b']).toEqual({ x: 560, width: 38, how: 'measured' });
		opened.undo();
		expect(walls().studs['b']?.x).toBe(605);
	});

	test('Alt sizes, Escape takes back and then lets go, Delete takes away', async () => {
		const { hands, walls } = behind();
		thing(/^Keep-out/).focus();
		await userEvent.keyboard('{Enter}{Alt>}{ArrowUp}{ArrowRight}{/Alt}');
		hands.keep();
		expect(walls().keepOuts['p']).toMatchObject({ x0: 300, x1: 405, y0: 0, y1: 105 });
		await userEvent.keyboard('{ArrowUp}');
		hands.back();
		expect(walls().keepOuts['p']?.y0).toBe(0);
		expect(hands.chosen?.key).toBe('keepOuts/p');
		hands.back();
		expect(hands.chosen).toBeUndefined();
		await userEvent.keyboard('{Enter}{Delete}');
		expect(walls().keepOuts).toEqual({});
	});

	test('a drag is one entry; one that is refused stays in hand with the reason, and goes back when left', async () => {
		const { kept, hands, view, walls } = behind();
		const before = kept.length;
		const drag = (mm: number): void => {
			thing(/^Stud 2/).dispatchEvent(pointer('pointerdown', 0, 0));
			for (const share of [0.3, 0.6, 1]) {
				thing(/^Stud 2/).dispatchEvent(pointer('pointermove', mm * share * view.scale, 0));
			}
			thing(/^Stud 2/).dispatchEvent(pointer('pointerup', 0, 0));
		};
		drag(100);
		expect(walls().studs['a']?.x).toBe(300);
		expect(kept.length).toBe(before + 1);
		await tick();
		drag(305);
		expect(hands.why).toMatch(/^Another stud is there already/);
		expect(hands.chosen?.spread).toEqual({ x: 605, width: 38 });
		hands.leave();
		expect(walls().studs['a']?.x).toBe(300);
		expect(kept.length).toBe(before + 1);
	});

	test('a bar on the wall and an electric point are taken in hand like all else', async () => {
		const { opened, walls } = behind();
		const at = ['enclosure', 'walls', 'back'];
		const spread = { x0: 450, x1: 550, y0: 200, y1: 240, how: 'measured' };
		opened.act([
			{ path: [...at, 'existing', 'bar'], to: { what: 'grab-bar', fate: 'keep', ...spread } },
			{ path: [...at, 'keepOuts', 'p', 'kind'], to: 'electric-point' }
		]);
		await tick();
		expect(thing(/^Keep-out 1, switch, socket, lamp or fan,/)).toBeDefined();
		thing(/^Existing thing 1, grab bar, from 450 to 550,/).focus();
		await userEvent.keyboard('{Enter}{ArrowUp}{Enter}');
		expect(walls().existing['bar']).toMatchObject({ ...spread, y0: 205, y1: 245 });
		await userEvent.keyboard('{Delete}');
		expect(walls().existing).toEqual({});
	});

	test('what is added is chosen, with an id and a name of its own', () => {
		const { hands, opened } = behind();
		const [kind] = NEW_KINDS;
		if (!kind) throw new RangeError('there is a kind');
		hands.prepare(kind);
		expect(hands.add({ x: 402, y: 0 })).toBe('studs/studs-3');
		expect(hands.chosen?.name).toBe('Stud 3');
		expect(thingsBehind(opened.at(['enclosure', 'walls', 'back'])).length).toBe(4);
	});
});
