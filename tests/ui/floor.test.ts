import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { readCase } from '#core/case/read.ts';
import { planView } from '#ui/drawing/room-shapes.ts';
import { touchBox } from '#ui/drawing/thing-boxes.ts';
import RoomFloor from '#ui/panels/room-floor.svelte';
import ThingGrips from '#ui/panels/thing-grips.svelte';
import { DRAIN, FLOOR } from '#ui/state/floor-things.ts';
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
	// Nor is anything laid out there.
	vi.stubGlobal(
		'ResizeObserver',
		class {
			observe = () => undefined;
			unobserve = () => undefined;
			disconnect = () => undefined;
		}
	);
});

const on = { area: { from: 0, to: 1000, bottom: -800, top: 0 }, step: 5 };
const drain: Spread = { x: 402, y: -300, wide: 100, deep: 60 };

describe('[ui R24] what lies on a floor, moved and sized by hand', () => {
	test('a drag ends with its middle on marking steps, and with all of it on the floor', () => {
		expect(dragged(drain, WHOLE, { x: 21, y: -12 }, on)).toEqual({ ...drain, x: 425, y: -310 });
		expect(dragged(drain, WHOLE, { x: 5000, y: 5000 }, on)).toEqual({ ...drain, x: 950, y: -30 });
		expect(dragged(drain, WHOLE, { x: -5000, y: -5000 }, on)).toEqual({ ...drain, x: 50, y: -770 });
	});

	test('an edge goes with the finger and the middle stays; never to nothing, nor beyond the floor', () => {
		expect(dragged(drain, { across: 1, up: 0 }, { x: 20, y: 99 }, on)).toEqual({ ...drain, wide: 140 });
		expect(dragged(drain, { across: -1, up: 0 }, { x: -20, y: 0 }, on)).toEqual({ ...drain, wide: 140 });
		expect(dragged(drain, { across: 0, up: -1 }, { x: 0, y: -10 }, on)).toEqual({ ...drain, deep: 80 });
		expect(dragged(drain, { across: 1, up: 0 }, { x: -900, y: 0 }, on)).toEqual({ ...drain, wide: 30 });
		expect(dragged(drain, { across: 0, up: 1 }, { x: 0, y: 900 }, on)).toEqual({ ...drain, deep: 600 });
	});

	test('a step goes to the next marking step, along its own axis alone', () => {
		expect(steppedOn(drain, false, { x: 1, y: 0 }, on)).toEqual({ ...drain, x: 405 });
		expect(steppedOn(drain, false, { x: 0, y: -10 }, on)).toEqual({ ...drain, y: -350 });
		expect(steppedOn(drain, true, { x: 0, y: 1 }, on)).toEqual({ ...drain, deep: 65 });
	});

	test('a wall is longer away from the corner it begins at', () => {
		expect(steppedOn({ from: 'left', long: 302 }, false, { x: 1, y: 0 }, on)).toEqual({ from: 'left', long: 305 });
		expect(steppedOn({ from: 'right', long: 302 }, false, { x: 1, y: 0 }, on)).toEqual({ from: 'right', long: 300 });
		expect(dragged({ from: 'right', long: 300 }, WHOLE, { x: -52, y: 9 }, on)).toEqual({ from: 'right', long: 350 });
	});
});

const IN_ROOM = { width: 1500, depth: 900 };

/** A room 1500 by 900 with a wall 300 long beside the entry on the right. */
function aRoom() {
	const { opened, kept } = aCase();
	const measured = (value: number) => ({ value, how: 'measured' });
	const why = opened.act([
		{ path: ['enclosure', 'type'], to: 'alternate-roll-in' },
		{ path: ['enclosure', 'width'], to: measured(IN_ROOM.width) },
		{ path: ['enclosure', 'depth'], to: measured(IN_ROOM.depth) },
		{ path: ['enclosure', 'walls', 'front', 'stands'], to: true },
		{ path: ['enclosure', 'frontWall'], to: { side: 'right', length: { ...measured(300), typed: '300 mm' } } }
	]);
	if (why !== null) throw new RangeError(why);
	const plan = new PlanState(() => opened.case);
	return { opened, kept, plan };
}

function floor(width = 390) {
	const { opened, kept, plan } = aRoom();
	opened.act([{ path: ['enclosure', 'drain'], to: { x: 400, y: 300, wide: 100, deep: 60, how: 'measured' } }]);
	const hands = new ThingHands(opened, plan, FLOOR);
	const { scene } = plan.question;
	const { type } = scene.c.enclosure;
	const asked = { room: scene.room, type, survey: scene.c.enclosure, marks: [], unit: 'mm' as const };
	const view = planView({ ...asked, width, height: 300 });
	const onremove = () => hands.remove();
	render(ThingGrips, { view, hands, area: FLOOR.area(scene.room), label: 'Floor', unit: 'mm', onremove });
	return { opened, kept, hands, view, room: () => opened.case.enclosure };
}

const thing = (name: RegExp): HTMLElement => screen.getByRole('button', { name });

function pointer(kind: string, x: number, y: number): PointerEvent {
	return new PointerEvent(kind, { bubbles: true, pointerId: 7, button: 0, clientX: x, clientY: y });
}

function drag(element: Element, dx: number, dy: number): void {
	element.dispatchEvent(pointer('pointerdown', 0, 0));
	for (const share of [0.3, 0.6, 1]) element.dispatchEvent(pointer('pointermove', dx * share, dy * share));
	element.dispatchEvent(pointer('pointerup', 0, 0));
}

describe('[ui R24] what lies on the floor, on the plan of the room', () => {
	test('each is a button with its name, figures and size, and no smaller than a finger', () => {
		floor();
		const buttons = screen.getAllByRole('button');
		expect(buttons.map((button) => button.getAttribute('aria-label'))).toEqual([
			'Drain, middle from the left 400, out from the back 300, wide 100, deep 60',
			'Wall beside the entry, long 300'
		]);
		for (const { style } of buttons) {
			expect(parseFloat(style.width)).toBeGreaterThanOrEqual(44);
			expect(parseFloat(style.height)).toBeGreaterThanOrEqual(44);
		}
		expect(touchBox({ x0: 5, x1: 6, y0: 5, y1: 6 })).toMatchObject({ width: 44, height: 44 });
	});

	test('arrows move the drain as they point, with Shift ten steps, with Alt they size it; a run is one step', async () => {
		const { opened, hands, room } = floor();
		thing(/^Drain/).focus();
		await userEvent.keyboard('{ArrowRight}');
		expect(hands.holding).toBe(false);
		await userEvent.keyboard('{Enter}{ArrowRight}{Shift>}{ArrowDown}{/Shift}{Alt>}{ArrowUp}{/Alt}');
		expect(thing(/^Drain/).getAttribute('aria-label')).toContain('from the left 405, out from the back 350');
		expect(room().drain).toMatchObject({ x: 400, y: 300, deep: 60 });
		await userEvent.keyboard('{Enter}');
		expect(room().drain).toEqual({ x: 405, y: 350, wide: 100, deep: 65, how: 'measured' });
		opened.undo();
		expect(room().drain).toEqual({ x: 400, y: 300, wide: 100, deep: 60, how: 'measured' });
	});

	test('a drag is one entry; an edge sizes it; Delete takes it away and undo brings it back', async () => {
		const { opened, kept, view, room } = floor();
		const before = kept.length;
		drag(thing(/^Drain/), 100 * view.scale, 200 * view.scale);
		expect(room().drain).toMatchObject({ x: 500, y: 500 });
		expect(kept.length).toBe(before + 1);
		await tick();
		expect(document.querySelectorAll('.size')).toHaveLength(4);
		const edge = document.querySelector('[data-size="1 0"]');
		if (!edge) throw new RangeError('it has no edge to the right');
		drag(edge, 50 * view.scale, 0);
		expect(room().drain).toMatchObject({ x: 500, y: 500, wide: 200, deep: 60 });
		thing(/^Drain/).focus();
		await userEvent.keyboard('{Delete}');
		expect(room().drain).toBeUndefined();
		opened.undo();
		expect(room().drain).toMatchObject({ x: 500, y: 500, wide: 200 });
	});

	test('while it is in the hand its place or its size is written beside it, whichever the hand changes', async () => {
		const { hands } = floor();
		const live = (): readonly (string | null)[] =>
			[...document.querySelectorAll('.live > div')].map(({ textContent }) => textContent);
		hands.choose('drain');
		hands.step('right', 1);
		await tick();
		expect(live()).toEqual(['middle from the left 405 mm', 'out from the back 300 mm']);
		hands.back();
		hands.step('right', 2, true);
		await tick();
		expect(live()).toEqual(['wide 110, deep 60 mm']);
		hands.leave();
	});

	test('the end of the wall beside the entry is dragged, and what was typed of it is not kept for another length', async () => {
		const { hands, view, room } = floor();
		drag(thing(/^Wall beside the entry/), -100 * view.scale, 30);
		expect(room().frontWall).toEqual({ side: 'right', length: { value: 400, how: 'measured' } });
		await tick();
		thing(/^Wall beside the entry/).focus();
		await userEvent.keyboard('{Delete}{ArrowRight}{Enter}');
		expect(room().frontWall?.length.value).toBe(395);
		// The drawing goes with the hand before anything is kept.
		hands.step('left', 1);
		expect(hands.scene.room.opening.x1).toBe(IN_ROOM.width - 400);
		expect(room().frontWall?.length.value).toBe(395);
		hands.leave();
	});

	test('a wall that would leave no entry is refused with the reason, and the good length stays recorded', async () => {
		const { hands, kept, view, room } = floor();
		const before = kept.length;
		drag(thing(/^Wall beside the entry/), -1400 * view.scale, 0);
		expect(hands.why).toMatch(/^Expected a wall that leaves an entry/);
		expect(hands.chosen?.spread).toEqual({ from: 'right', long: 1500 });
		expect(room().frontWall?.length.value).toBe(300);
		hands.back();
		expect(hands.why).toBeNull();
		expect(hands.chosen?.spread).toEqual({ from: 'right', long: 300 });
		expect(kept.length).toBe(before);
		await tick();
	});

	test('a room made smaller than where its drain is, is refused, and both stay as they were', () => {
		const { opened, room } = floor();
		opened.act([{ path: ['enclosure', 'drain', 'x'], to: 1200 }]);
		const why = opened.act([{ path: ['enclosure', 'width', 'value'], to: 1100 }]);
		expect(why).toContain('Measure again from the back left corner');
		expect([room().width.value, room().drain?.x]).toEqual([1500, 1200]);
	});
});

describe('[ui R24] beside the plan of the room', () => {
	test('a drain that is not recorded is added in the middle, chosen, and assumed until somebody says', async () => {
		const { opened, plan } = aRoom();
		const { unmount } = render(RoomFloor, { opened, plan });
		await userEvent.click(screen.getByRole('button', { name: 'Add the drain' }));
		expect(opened.case.enclosure.drain).toEqual({ x: 750, y: 450, wide: 100, deep: 100, how: 'assumed' });
		expect(readCase(JSON.stringify(opened.case)).kind).toBe('case');
		expect(screen.queryByRole('button', { name: 'Add the drain' })).toBeNull();
		const chosen = screen.getByRole('region', { name: 'What is chosen' });
		expect(chosen.textContent).toContain('Drain, assumed');
		await userEvent.click(screen.getByRole('button', { name: 'Toward the entry by 5 mm' }));
		await userEvent.click(screen.getByRole('button', { name: 'Size' }));
		await userEvent.click(screen.getByRole('button', { name: 'Wider by 5 mm' }));
		await userEvent.click(screen.getByRole('button', { name: 'Let go' }));
		expect(opened.case.enclosure.drain).toEqual({ x: 750, y: 455, wide: 105, deep: 100, how: 'assumed' });
		unmount();
	});

	test('a drain that is put is the size it is sold in, for either tape, and on its steps', () => {
		const { opened, plan } = aRoom();
		const hands = new ThingHands(opened, plan, FLOOR);
		expect(hands.addInMiddle(DRAIN)).toBe('drain');
		expect(hands.says).toMatch(/^Drain, assumed, middle from the left 750, .*, added\.$/);
		const put = { unit: 'in' as const, at: { x: 457.2, y: -400 }, on: { ...on, step: 6.35 }, record: undefined };
		expect(FLOOR.made(DRAIN, put).to).toMatchObject({ x: 457.2, y: 400.05, wide: 101.6, deep: 101.6 });
	});

	test('the hinge of a door is changed by a button that says on which side it is', async () => {
		const { opened, plan } = aRoom();
		const hinge = () => opened.case.enclosure.closing?.hinge;
		const { rerender } = render(RoomFloor, { opened, plan });
		expect(screen.queryByRole('button', { name: /hinge/i })).toBeNull();
		opened.act([{ path: ['enclosure', 'closing'], to: { kind: 'door-out', how: 'observed' } }]);
		await rerender({});
		const group = screen.getByRole('group', { name: 'Hinge of the door, looking in' });
		expect(group.querySelectorAll('[aria-pressed="true"]')).toHaveLength(0);
		await userEvent.click(screen.getByRole('button', { name: 'right' }));
		expect(hinge()).toBe('right');
		await userEvent.click(screen.getByRole('button', { name: 'left' }));
		expect(hinge()).toBe('left');
		expect(screen.getByRole('button', { name: 'left' }).getAttribute('aria-pressed')).toBe('true');
		opened.undo();
		expect(hinge()).toBe('right');
	});
});
