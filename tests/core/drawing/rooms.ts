import type { Enclosure } from '#core/case/record.ts';
import type { Plan } from '#core/plan.ts';
import { CHILD, fixtureCase, fixturePlan, type Put } from './fixture.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const size = (width: number, depth: number, height: number) => ({
	width: measured(width),
	depth: measured(depth),
	height: measured(height)
});
const studs = (...xs: readonly number[]) => ({
	studs: Object.fromEntries(xs.map((x, i) => [`s${String(i)}`, { x, width: 38, how: 'measured' }])),
	surveyed: true
});
const sheet = (x1: number) => ({
	backing: { sheet: { kind: 'sheet', x0: 0, x1, y0: -500, y1: 700, thickness: 18, how: 'observed' } }
});

/** A room of one type with a thing of many kinds in it: what is recorded of it, where things go, and which only later. */
export interface TestRoom {
	readonly enclosure: object;
	readonly puts: readonly Put[];
	readonly later: readonly string[];
}

/** One room of every type beside the transfer compartment of the fixture, the seat on the left wherever there is one. */
export const TEST_ROOMS: Readonly<Record<Exclude<Enclosure['type'], 'transfer'>, TestRoom>> = {
	'roll-in': {
		enclosure: {
			type: 'roll-in',
			...size(1524, 914, 2100),
			controls: 'apart',
			walls: {
				back: { ...studs(300, 706, 1112), ...sheet(1524) },
				left: { ...studs(40, 446), ...sheet(914) },
				right: { stands: true, ...studs(40, 446), ...sheet(914) }
			}
		},
		puts: [
			['seat', 'seat-legs-500', 'left', 560, -540],
			['control', 'control-lever', 'back', 700, 60],
			['temperature', 'control-lever', 'back', 900, 60],
			['outlet', 'hose-outlet', 'back', 1050, 60],
			['handset-rest', 'rest', 'back', 550, 120],
			['handset-holder', 'rest', 'back', 1150, 860],
			['bar-back', 'bar-900', 'back', 420, -150],
			['bar-control', 'l-bar-600-left', 'right', 150, -150]
		],
		later: ['handset-holder']
	},
	'alternate-roll-in': {
		enclosure: {
			type: 'alternate-roll-in',
			...size(1524, 914, 2134),
			seatWall: 'left',
			frontWall: { side: 'left', length: measured(500) },
			walls: {
				back: { ...studs(300, 706, 1112), ...sheet(1524) },
				left: { ...studs(40, 446), ...sheet(914) },
				right: { ...studs(40, 446), ...sheet(914) },
				front: { stands: true, ...studs(1100, 1450), ...sheet(1524) }
			}
		},
		puts: [
			['seat', 'seat-600', 'left', 430, -540],
			['control', 'control-lever', 'back', 640, 40],
			['handset-rest', 'rest', 'back', 480, 120],
			['bar-back', 'l-bar-600-right', 'back', 500, -150],
			['entry-bar', 'post-bar-600', 'front', 1150, -40],
			['exit-bar', 'post', 'front', 900, -1000]
		],
		later: ['exit-bar']
	},
	corner: {
		enclosure: {
			type: 'corner',
			...size(1200, 1060, 2286),
			walls: { back: { ...studs(406, 812), ...sheet(1200) }, left: studs(254, 660), right: { stands: false } }
		},
		puts: [
			['seat', 'seat-450', 'left', 520, -540],
			['control', 'control-lever', 'back', 600, 40],
			['outlet', 'hose-outlet', 'back', 750, 40],
			['handset-rest', 'rest', 'back', 480, 150],
			['bar-back', 'bar-600', 'back', 400, -150],
			['entry-bar', 'post', 'right', 700, -1000],
			['rail-one', 'rail-700', 'left', 160, -320],
			['rail-other', 'rail-700', 'left', 880, -320]
		],
		later: ['rail-one', 'entry-bar']
	},
	'step-in-tray': {
		enclosure: {
			type: 'step-in-tray',
			...size(1000, 900, 2300),
			threshold: measured(150),
			floorRise: measured(110),
			walls: {
				back: { ...studs(40, 446, 852), ...sheet(1000) },
				left: { ...studs(40, 446, 852), ...sheet(900) },
				right: { ...studs(40, 446, 852), ...sheet(900) }
			}
		},
		puts: [
			['seat', 'seat-400', 'left', 500, -440],
			['control', 'control-lever', 'right', 450, 60],
			['handset-rest', 'rest', 'right', 300, 160],
			['handset-holder', 'rest', 'right', 620, 880],
			['bar-control', 'l-bar-600-right', 'right', 120, -150],
			['entry-bar', 'post-bar-600', 'left', 60, -20],
			['bar-back', 'bar-600', 'back', 200, -150],
			['call-cord', 'call-cord', 'back', 900, -100]
		],
		later: ['entry-bar']
	},
	'over-bath': {
		enclosure: {
			type: 'over-bath',
			...size(1600, 700, 2400),
			threshold: measured(540),
			floorRise: measured(130),
			walls: {
				back: { ...studs(300, 900, 1500), ...sheet(1600) },
				left: { ...studs(350), ...sheet(700) },
				right: { ...studs(350), ...sheet(700) }
			}
		},
		puts: [
			['seat', 'bath-board', 'back', 500, -460],
			['control', 'control-lever', 'right', 350, -200],
			['outlet', 'hose-outlet', 'right', 350, -50],
			['handset-rest', 'rest', 'right', 200, 150],
			['bar-back', 'bar-600', 'back', 600, -200],
			['entry-bar', 'post-bar-450', 'right', 640, -60],
			['exit-bar', 'post', 'left', 100, -870]
		],
		later: ['exit-bar']
	}
};

/** The plan of a room. */
export const planOf = ({ enclosure, puts, later }: TestRoom, client: object = CHILD): Plan =>
	fixturePlan(fixtureCase({ client, enclosure }), puts, later);
