import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { gripBoxes } from '#ui/drawing/grip-boxes.ts';
import { screenView } from '#ui/drawing/screen-view.ts';
import Grips from '#ui/panels/grips.svelte';
import Hand from '#ui/panels/hand.svelte';
import StageGlyph from '#ui/panels/stage-glyph.svelte';
import { Hands } from '#ui/state/hands.svelte.ts';
import { letteredMarks } from '#ui/state/places-view.ts';
import { PlanState } from '#ui/state/plan-state.svelte.ts';
import type { Listener } from '#ui/state/planner.ts';
import { STAGE_WORDS } from '#ui/state/stage-words.ts';
import { answeredWith, openedCase, someMarks } from './a-plan.ts';

const heard = vi.hoisted((): { listener: unknown } => ({ listener: undefined }));

vi.mock('#ui/state/planner.ts', () => ({
	planner: {
		plan: (_: unknown, listener: unknown) => {
			heard.listener = listener;
		},
		stands: () => undefined,
		drop: () => undefined
	}
}));

beforeAll(() => {
	// The page of the tests has no pointers to capture.
	Element.prototype.setPointerCapture = () => undefined;
});

function placed() {
	const opened = openedCase();
	const plan = new PlanState(() => opened.case);
	plan.follow(opened.case);
	(heard.listener as Listener).onplanned(answeredWith(someMarks(plan.question)));
	return { opened, plan, hands: new Hands(opened, plan) };
}

function grips() {
	const { opened, plan, hands } = placed();
	const { room } = plan.question.scene;
	const marks = plan.atRest.filter(({ place }) => place.wall === 'back');
	const view = screenView({ room, wall: 'back', marks, width: 390, height: 480 });
	const boxes = gripBoxes(marks, view);
	const ontouch = vi.fn();
	render(Grips, { boxes, view, hands, touched: undefined, nameFor: (id: string) => id, ontouch });
	const grip = (id: string): HTMLElement => screen.getByRole('button', { name: id });
	const placeOf = (id: string) => plan.marks.find(({ accessory }) => accessory.id === id)?.place;
	return { opened, plan, hands, view, boxes, ontouch, grip, placeOf };
}

function pointer(kind: string, x: number, y: number): PointerEvent {
	return new PointerEvent(kind, { bubbles: true, pointerId: 7, button: 0, clientX: x, clientY: y });
}

describe('[ui R5] marks on the drawing', () => {
	test('no target is smaller than 44 px, and the smaller lie on top', () => {
		const { boxes } = grips();
		expect(boxes.length).toBeGreaterThan(1);
		for (const { width, height } of boxes) {
			expect(width).toBeGreaterThanOrEqual(44);
			expect(height).toBeGreaterThanOrEqual(44);
		}
		const sizes = boxes.map(({ width, height }) => width * height);
		expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
	});

	test('a pointer drags a mark by what it moved, in mm of the wall; it is kept when it lets go', () => {
		const { opened, view, grip, placeOf } = grips();
		const from = placeOf('handset-rest');
		grip('handset-rest').dispatchEvent(pointer('pointerdown', 100, 100));
		grip('handset-rest').dispatchEvent(pointer('pointermove', 100 + 63.5 * view.scale, 100 - 127 * view.scale));
		expect(opened.case.places).toEqual({});
		expect((placeOf('handset-rest')?.x ?? 0) - (from?.x ?? 0)).toBeCloseTo(63.5, 0);
		expect((placeOf('handset-rest')?.y ?? 0) - (from?.y ?? 0)).toBeCloseTo(127, 0);
		grip('handset-rest').dispatchEvent(pointer('pointerup', 0, 0));
		expect(opened.case.places['handset-rest']).toMatchObject({ ...placeOf('handset-rest'), stage: 'pinned' });
	});

	test('a tap or a hand that shakes only chooses it', () => {
		const { opened, plan, grip, ontouch } = grips();
		grip('handset-rest').dispatchEvent(pointer('pointerdown', 100, 100));
		grip('handset-rest').dispatchEvent(pointer('pointermove', 103, 102));
		grip('handset-rest').dispatchEvent(pointer('pointerup', 103, 102));
		expect(ontouch).toHaveBeenCalledWith('handset-rest');
		expect(plan.underHand).toBeUndefined();
		expect(opened.canUndo).toBe(false);
	});

	test('a drag the system takes away, and Escape in the middle of one, leave it where it was', async () => {
		const { opened, grip, placeOf } = grips();
		const from = placeOf('handset-rest');
		const drag = (): void => {
			grip('handset-rest').dispatchEvent(pointer('pointerdown', 100, 100));
			grip('handset-rest').dispatchEvent(pointer('pointermove', 150, 150));
			expect(placeOf('handset-rest')).not.toEqual(from);
		};
		drag();
		grip('handset-rest').dispatchEvent(pointer('pointercancel', 0, 0));
		expect(placeOf('handset-rest')).toEqual(from);
		drag();
		grip('handset-rest').focus();
		await userEvent.keyboard('{Escape}');
		grip('handset-rest').dispatchEvent(pointer('pointermove', 200, 200));
		grip('handset-rest').dispatchEvent(pointer('pointerup', 200, 200));
		expect(placeOf('handset-rest')).toEqual(from);
		expect(opened.canUndo).toBe(false);
	});

	test('the arrow keys move it a step, with Shift five; Enter keeps it, and it is told what changed', async () => {
		const { opened, hands, grip, placeOf } = grips();
		const from = placeOf('handset-rest');
		grip('handset-rest').focus();
		await userEvent.keyboard('{ArrowRight}{Shift>}{ArrowUp}{/Shift}');
		expect((placeOf('handset-rest')?.x ?? 0) - (from?.x ?? 0)).toBeCloseTo(6.35, 2);
		expect((placeOf('handset-rest')?.y ?? 0) - (from?.y ?? 0)).toBeCloseTo(5 * 6.35, 2);
		expect(hands.says).toMatch(/^Handset rest: .* in from the datum line, .* in from the left corner\. (Now|No)/);
		await userEvent.keyboard('{Enter}');
		expect(opened.case.places['handset-rest']).toBeDefined();
	});
});

test('[ui R5] the buttons beside the figures do what dragging does, and hold and free it', async () => {
	const { opened, plan, hands } = placed();
	const one = letteredMarks(plan.question, plan.marks, plan.findings).find(
		({ mark }) => mark.accessory.id === 'control'
	);
	if (!one) throw new RangeError('there is a control');
	const { x, y } = one.mark.place;
	render(Hand, { lettered: one, findings: [], plan, hands, tape: { unit: 'in' } });
	for (const name of ['Higher by 1/4 in', 'Right by 1/4 in', 'Right by 1/4 in', 'Lower by 1/4 in', 'Left by 1/4 in']) {
		await userEvent.click(screen.getByRole('button', { name }));
	}
	hands.keep();
	expect(opened.case.places['control']?.x).toBeCloseTo(x + 6.35, 2);
	expect(opened.case.places['control']?.y).toBeCloseTo(y, 2);
});

test('[ui R8] how far a place has come has a shape for free and for held, and a word for each stage', () => {
	const stages = Object.keys(STAGE_WORDS) as (keyof typeof STAGE_WORDS)[];
	expect(new Set(Object.values(STAGE_WORDS)).size).toBe(stages.length);
	const shape = (stage: keyof typeof STAGE_WORDS) =>
		render(StageGlyph, { stage }).container.querySelector('svg')?.innerHTML;
	expect(shape('proposed')).not.toBe(shape('pinned'));
	expect(shape('pinned')).not.toBe(shape('tried'));
});
