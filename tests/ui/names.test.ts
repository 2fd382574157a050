import { render, screen } from '@testing-library/svelte';
import { describe, expect, test, vi } from 'vitest';
import { probe } from '#core/placement/probe.ts';
import { questionOf } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import Findings from '#ui/panels/findings.svelte';
import Standing from '#ui/panels/standing.svelte';
import { measuresOf } from '#ui/state/moved.ts';
import { markName, nameOf } from '#ui/state/names.ts';
import { findingsAbout, letteredMarks } from '#ui/state/places-view.ts';
import { PlanState } from '#ui/state/plan-state.svelte.ts';
import type { Listener } from '#ui/state/planner.ts';
import { refusalAt } from '#ui/state/refusal.ts';
import { unparted } from '#ui/state/said.ts';
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

describe('[ui R18] what things are called', () => {
	const question = questionOf(openedCase().case);
	const marks = someMarks(question);

	test('a bar by what it is for and by the wall it is really on, whatever its id', () => {
		const bar = marks.find(({ accessory }) => accessory.id === 'bar-back');
		if (!bar) throw new RangeError('no bar beside the seat');
		expect(markName(bar)).toBe('Bar to rise by, back wall');
		const elsewhere = { ...bar, place: { ...bar.place, wall: 'left' as const } };
		expect(markName(elsewhere)).toBe('Bar to rise by, left wall');
		expect([...measuresOf([], [elsewhere]).keys()][0]).toBe('Bar to rise by, left wall, from the datum');
		expect(nameOf({ ...bar.accessory, purpose: 'steady' })).toBe('Bar to steady on');
	});

	test('no two marks of a case are called the same', () => {
		const names = marks.map(markName);
		expect(new Set(names).size).toBe(names.length);
	});

	test('a bar of which only the record is at hand is called by the wall it is held on', () => {
		const opened = openedCase();
		const place = { wall: 'back', variant: 'bar-12in', x: 400, y: 0, turn: 0, stage: 'pinned' };
		const { enclosure } = opened.case;
		const walls = { ...enclosure.walls, back: { ...enclosure.walls.back, stands: false } };
		const state = { ...opened.case, enclosure: { ...enclosure, type: 'corner', walls }, places: { 'bar-back': place } };
		const says = refusalAt(state as unknown as Parameters<typeof refusalAt>[0], ['enclosure'], String);
		expect(says).toContain('The bar on the back wall is held');
	});

	test('what is said of a mark and another names the other', () => {
		const findings = judge(question.scene, question.rows, marks);
		const about = findingsAbout(findings, 'seat').filter(({ about: ids }) => ids.includes('control'));
		expect(about.length).toBeGreaterThan(0);
		const lettered = letteredMarks(question, marks, findings);
		const { container } = render(Findings, { findings: about, about: 'seat', lettered, tape: { unit: 'in' } });
		for (const item of container.querySelectorAll('li')) expect(item.textContent).toContain('With B control');
	});
});

test('[ui R18] what is wanted and has no wall is told once, as a question with what to think of', () => {
	const opened = openedCase();
	opened.act([{ path: ['enclosure', 'type'], to: 'corner' }]);
	for (const wall of ['back', 'right']) opened.act([{ path: ['enclosure', 'walls', wall, 'stands'], to: false }]);
	const plan = new PlanState(() => opened.case);
	plan.follow(opened.case);
	const { question } = plan;
	const marks = someMarks(question);
	const probes = probe(question, marks, judge(question.scene, question.rows, marks));
	(heard.listener as Listener).onplanned({ ...answeredWith(marks), probes });
	const [missing] = question.nowhere;
	if (!missing) throw new RangeError('everything has a wall');
	const lettered = letteredMarks(question, marks, []);
	const said = { plan, lettered, tape: opened.tape, ontouch: () => undefined, onput: () => undefined };
	const { container } = render(Standing, said);
	expect(container.textContent.split(missing.reason)).toHaveLength(2);
	expect(screen.getByRole('heading', { level: 2, name: /^Where could this go\?/ })).toBeTruthy();
	// It is named, but there is no mark to be touched.
	expect(screen.getByText(nameOf(missing).toLowerCase()).tagName).toBe('SPAN');
});

test.each([
	['here 2 15/16 in too high', 'here 2\u00a015/16\u00a0in too high'],
	['at least 0 mm inside', 'at least 0\u00a0mm inside'],
	['leaning 3 in (5 degrees)', 'leaning 3\u00a0in (5\u00a0degrees)'],
	['1 inside', '1 inside']
])('[ui R18] "%s" is not parted inside a figure', (words, set) => {
	expect(unparted(words)).toBe(set);
});
