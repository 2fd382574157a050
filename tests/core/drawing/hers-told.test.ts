import { weightOf } from '#core/drawing/hers/told.ts';
import type { Plan } from '#core/plan.ts';
import { newtons, pounds } from '#core/units/force.ts';
import { describe, expect, test } from 'vitest';
import { CLIENT, fixtureCase, fixturePlan, type Put } from './fixture.ts';
import { allPlans, hersIn, paragraphsOf, textsOf, pathsOf, planNamed } from './hers-plans.ts';

const plans = allPlans();
const NAMES = [...plans.keys()];

describe('what her sheets tell', () => {
	test('[drawing R23] the weight is the force of the plan, each unit rounded down', () => {
		// 250 lbf is 1112.06 N (NIST SP 811), so 1112 N is a hair less.
		expect(weightOf(newtons(1112))).toEqual({ kg: 113, lb: 249, stone: 17, over: 11 });
		expect(weightOf(pounds(250))).toEqual({ kg: 113, lb: 250, stone: 17, over: 12 });
		expect(weightOf(newtons(1500))).toEqual({ kg: 152, lb: 337, stone: 24, over: 1 });
		// A full weight comes back as it was.
		for (let kg = 20; kg <= 400; kg++) expect(weightOf(newtons(kg * 9.80665)).kg).toBe(kg);
		const en = paragraphsOf(hersIn(planNamed(plans, 'transfer'), 'en'));
		expect(en.get('load/says')).toContain('up to 113 kg (17 st 11 lb).');
		expect(paragraphsOf(hersIn(planNamed(plans, 'turns-left'), 'en')).get('load/says')).toContain(
			'up to 249 lb (113 kg).'
		);
		expect(paragraphsOf(hersIn(planNamed(plans, 'transfer'), 'es')).get('load/says')).not.toMatch(/lb|st\b/);
	});

	test('[drawing R23] every part that holds a person has a blank for what it takes', () => {
		const ids = pathsOf(hersIn(planNamed(plans, 'transfer'), 'en')).map(({ id }) => id);
		const blanks = ids.filter((id) => /^rating\/.*\/line$/.test(id)).map((id) => id.split('/')[1]);
		expect(blanks).toEqual(['seat', 'bar-control', 'bar-back', 'entry-bar']);
	});

	test.each([
		['water-by-her-son', 'Only your helper turns the water.'],
		['wheeled-in', 'Put the brakes of the chair on before the water runs.'],
		['stands-then-tires', 'Sit down before you are tired. Sit right back before you wash.'],
		['stands-for-now', 'One hand holds before the other hand lets go.'],
		['first-flat', 'Sit right back before you wash.']
	])('[drawing R23] the one thing for %s: %s', (name, says) => {
		expect(paragraphsOf(hersIn(planNamed(plans, name), 'en')).get('mind/says')).toBe(says);
	});

	test('[drawing R23] a lean to the tap is told with the bar to hold', () => {
		const plan = planNamed(plans, 'turns-left');
		const lean = { accessory: 'control', degrees: 5, travel: 39, says: '' };
		const says = (leans: Plan['probes']['leans']) =>
			paragraphsOf(hersIn({ ...plan, probes: { ...plan.probes, leans } }, 'en')).get('mind/says');
		const bar = plan.wanted.findIndex(({ id }) => id === 'bar-control') + 1;
		expect(says([lean])).toContain(`Hold bar ${String(bar)} when you lean to the tap.`);
		expect(says([])).not.toContain('lean');
	});

	test('[drawing R23] who does not feel heat is never told to test the water with the hand', () => {
		const test = (change: object) => {
			const plan = fixturePlan(fixtureCase({ client: { ...CLIENT, ...change } }));
			return paragraphsOf(hersIn(plan, 'en')).get('choice/control/how');
		};
		expect(test({})).toContain('with your hand');
		expect(test({ feelsHeat: { value: false, how: 'observed' } })).toContain('with a thermometer');
		const arms = { ...CLIENT.arms, left: { ...CLIENT.arms.left, feels: { value: false, how: 'observed' } } };
		expect(test({ arms })).toContain('with your right hand');
		expect(test({ runsWater: { value: 'helper', how: 'told' } })).toBe(
			'Only your helper turns it. Helper: test the water first.'
		);
	});

	test('[drawing R23] a bar is named as she finds it: seat on the left or on the right, or as she comes in', () => {
		const name = (seatWall: string, wall: 'back' | 'right' | 'left') => {
			const seatOn = seatWall === 'left' ? 'left' : 'right';
			const puts: Put[] = [
				['seat', 'seat-450', seatOn, 470, -560],
				['bar-back', 'bar-450', wall, 300, -150]
			];
			const plan = fixturePlan(fixtureCase({ enclosure: { seatWall } }), puts);
			return paragraphsOf(hersIn(plan, 'en')).get('choice/bar-back/name');
		};
		expect(name('left', 'back')).toBe('Bar on your left');
		expect(name('right', 'back')).toBe('Bar on your right');
		expect(name('left', 'right')).toBe('Bar in front of you');
		expect(name('right', 'right')).toBe('Bar behind you');
		const standing = fixturePlan(fixtureCase(), [['bar-back', 'bar-450', 'back', 300, -150]]);
		expect(paragraphsOf(hersIn(standing, 'en')).get('choice/bar-back/name')).toBe('Bar on the wall you face');
	});

	test('[drawing R23] two bars of one name are told apart by where they are, how high or how long', () => {
		const names = (wall: 'back' | 'right', one: readonly [number, number], two: readonly [number, number, string]) => {
			const plan = fixturePlan(fixtureCase(), [
				['seat', 'seat-450', 'left', 470, -560],
				['bar-control', 'bar-300', wall, ...one],
				['bar-back', two[2], wall, two[0], two[1]]
			]);
			const told = paragraphsOf(hersIn(plan, 'en'));
			return ['bar-control', 'bar-back'].map((id) => told.get(`choice/${id}/name`));
		};
		expect(names('right', [200, -150], [650, -150, 'bar-300'])).toEqual([
			'Bar in front of you, farther from the way in',
			'Bar in front of you, nearer the way in'
		]);
		expect(names('right', [300, -350], [300, -150, 'bar-300'])).toEqual([
			'Bar in front of you, the lower one',
			'Bar in front of you, the higher one'
		]);
		expect(names('right', [300, -200], [350, -150, 'bar-450'])).toEqual([
			'Bar in front of you, the shorter one',
			'Bar in front of you, the longer one'
		]);
		expect(names('back', [200, -150], [650, -150, 'bar-300'])).toEqual([
			'Bar on your left, nearer the seat',
			'Bar on your left, farther from the seat'
		]);
		expect([...paragraphsOf(hersIn(planNamed(plans, 'stands-for-now'), 'en')).values()]).toEqual(
			expect.arrayContaining(['Bar on the wall you face, the left one', 'Bar on the wall you face, the right one'])
		);
	});

	test('[drawing R23] what is only for later is not among what may wobble now', () => {
		const wrong = (name: string) =>
			[...paragraphsOf(hersIn(planNamed(plans, name), 'en'))]
				.filter(([id]) => /^wrong\/\d/.test(id))
				.map(([, says]) => says);
		expect(wrong('stands-for-now')).not.toContain('the seat wobbles');
		expect(wrong('turns-left')).toContain('the seat wobbles');
	});

	test('[drawing R23] what she must not do alone says who is to be there, and only that', () => {
		const helped = (change: object) => {
			const plan = fixturePlan(fixtureCase({ client: { ...CLIENT, ...change } }));
			return [...paragraphsOf(hersIn(plan, 'en'))].filter(([id]) => id.endsWith('/helped'));
		};
		expect(helped({ helpedBy: { value: 'nobody', how: 'told' } })).toEqual([]);
		const one = 'Use it only with your helper beside you.';
		expect(helped({ helpedBy: { value: 'one', how: 'told' } })).toEqual([['choice/seat/helped', one]]);
		expect(helped({ rises: { value: 'with-help', how: 'told' } })).toEqual([['choice/seat/helped', one]]);
		const son = [...paragraphsOf(hersIn(planNamed(plans, 'water-by-her-son'), 'en'))].filter(([id]) =>
			id.endsWith('/helped')
		);
		expect(son).toEqual([
			['choice/seat/helped', one],
			['choice/bar-back/helped', one],
			['choice/entry-bar/helped', one]
		]);
		const two = helped({ helpedBy: { value: 'two', how: 'told' } }).map(([, says]) => says);
		expect(new Set(two)).toEqual(new Set(['Use it only with both helpers beside you.']));
	});

	test('[drawing R23] who has one hand for everything is told which, and never to hold with one while the other works', () => {
		const weak = { weakerSide: { value: 'left', how: 'observed' }, weakerHolds: { value: false, how: 'observed' } };
		const needs = { needsHold: { value: true, how: 'observed' } };
		const plan = fixturePlan(fixtureCase({ client: { ...CLIENT, ...weak, ...needs } }));
		const told = paragraphsOf(hersIn(plan, 'en'));
		expect(told.get('choice/bar-control/how')).toBe('Hold it when you move or lean. Be still before you let go.');
		for (const says of told.values()) expect(says).not.toMatch(/other hand|left hand/);
		expect(paragraphsOf(hersIn(planNamed(plans, 'one-good-hand'), 'en')).get('choice/control/how')).toBe(
			'Use your right hand. Turn it slowly. Test the water with the same hand before you wash.'
		);
	});

	test.each(NAMES)(
		'[drawing R23] of %s always say when to begin, when to stop, whom to ring, and when it is looked at',
		(name) => {
			const sheets = hersIn(planNamed(plans, name), 'en');
			const told = paragraphsOf(sheets);
			for (const id of ['mind/says', 'when/says', 'wrong/0/says', 'wrong/ring/label', 'load/says', 'again/says'])
				expect(told.get(id), id).toBeTruthy();
			const first = sheets
				.slice(0, 1)
				.flatMap(textsOf)
				.map(({ id }) => id);
			expect(first.some((id) => id.startsWith('when/says'))).toBe(true);
		}
	);

	test('[drawing R23] the owner of the walls signs where one is to agree', () => {
		const sheets = (enclosure: object) => paragraphsOf(hersIn(fixturePlan(fixtureCase({ enclosure })), 'en'));
		expect(sheets({}).has('signing/owner')).toBe(false);
		expect(sheets({ tenure: { value: 'rented', how: 'told' } }).get('signing/owner')).toContain('in writing');
		const refused = { tenure: { value: 'rented', how: 'told' }, permission: { value: false, how: 'told' } };
		expect(sheets(refused).get('signing/owner')).toContain('has not agreed');
	});

	test('[drawing R23] it is looked at again every 6 months where a condition worsens, else every 12, without saying why', () => {
		const again = (prognosis: string) => {
			const client = { ...CLIENT, prognosis: { value: prognosis, how: 'told' } };
			return paragraphsOf(hersIn(fixturePlan(fixtureCase({ client })), 'en')).get('again/says');
		};
		expect(again('worsening')).toContain('every 6 months');
		expect(again('stable')).toContain('every 12 months');
		expect(again('worsening')?.replace('6 months', '12 months')).toBe(again('stable'));
	});
});
