import { describe, expect, test } from 'vitest';
import { variantOf, type Mark, type Variant } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { UK_ADM_1 } from '#core/rules/packs/uk-adm-1.ts';
import { UK_ADM_2 } from '#core/rules/packs/uk-adm-2.ts';
import type { Answer, Pack } from '#core/rules/row.ts';
import { answersOf, at, corner, drawn, HANDS, inHand, measured, type Drawn } from './england.ts';

/** A limit: how to draw what it speaks of at a figure, and what the clause says of figures just under, on and just over it. */
interface Edge {
	readonly row: string;
	/** Document, clause: the figure that is printed; `ours` where 10 mm to either side are added. */
	readonly source: string;
	readonly scene: (figure: number) => readonly [Case, readonly Mark[]];
	readonly says: readonly (readonly [number, Answer])[];
}

const under = (low: number) =>
	[
		[low - 0.1, 'outside'],
		[low, 'inside'],
		[low + 0.1, 'inside']
	] as const;
const over = (high: number) =>
	[
		[high - 0.1, 'inside'],
		[high, 'inside'],
		[high + 0.1, 'outside']
	] as const;

const part = (change: (figure: number) => Drawn) => (figure: number) => [corner(), drawn(change(figure))] as const;
const room = (change: (figure: number) => object) => (figure: number) => [corner(change(figure)), drawn()] as const;

const upright = (y: number, long: number): readonly Mark[] => {
	const model = variantOf('post-bar-600');
	const variant: Variant = { ...model, length: long as Variant['length'], grip: { ...model.grip, y1: long } };
	return [...drawn(), at('entry-bar', 'step-in', ['back', 1100, y], variant)];
};

const EDGES_2: readonly Edge[] = [
	{
		row: 'U2-17-UPPER-LOW',
		source: '4.30(e): 800 to 1000',
		scene: part((z) => ({ cord: { z } })),
		says: under(800)
	},
	{
		row: 'U2-17-UPPER-HIGH',
		source: '4.30(e): 800 to 1000',
		scene: part((z) => ({ cord: { z } })),
		says: over(1000)
	},
	{
		row: 'U2-12-LOW',
		source: '5.18(q): 750 to 1000',
		scene: part((z) => ({ control: { z } })),
		says: under(750)
	},
	{
		row: 'U2-12-HIGH',
		source: '5.18(q): 750 to 1000',
		scene: part((z) => ({ control: { z } })),
		says: over(1000)
	},
	{
		row: 'U2-11-LENGTH',
		source: 'Diagram 22: 500',
		scene: (long) => [corner(), upright(800, long)],
		says: under(500)
	},
	{
		row: 'U2-11-FOOT',
		source: 'Diagram 22: 800, ours',
		scene: (y) => [corner(), upright(y, 600)],
		says: [...under(790), ...over(810)]
	},
	{
		row: 'U2-10-Z-LOW',
		source: 'Diagram 22: 680, ours',
		scene: part((top) => ({ bar: { top } })),
		says: [...under(670), ...over(690)]
	},
	{
		row: 'U2-10-Z-HIGH',
		source: 'Diagram 22: 680, ours',
		scene: part((top) => ({ bar: { top } })),
		says: [...under(670), ...over(690)]
	},
	{
		row: 'U2-03',
		source: 'Diagrams 22, 23: 480, ours',
		scene: part((z) => ({ seat: { z } })),
		says: [...under(470), ...over(490)]
	},
	{
		row: 'U2-08',
		source: 'Diagrams 22, 23: 680, ours; the rail on the wall of the seat',
		scene: part((z) => ({ rail: { z } })),
		says: [...under(670), ...over(690)]
	},
	{
		row: 'U2-08',
		source: 'Diagrams 22, 23: 680, ours; the rail on the wall of the controls',
		scene: part((z) => ({ ahead: { z } })),
		says: [...under(670), ...over(690)]
	},
	{
		row: 'U2-02',
		source: 'Diagrams 22 to 24: 1500',
		scene: room((wide) => ({ turning: measured(wide) })),
		says: under(1500)
	},
	{
		row: 'U2-01-ALONG',
		source: 'Diagram 23: 2000',
		scene: room((long) => ({ roomAlong: measured(long) })),
		says: under(2000)
	},
	{
		row: 'U2-01-AHEAD',
		source: 'Diagram 23: 2200',
		scene: room((long) => ({ roomAhead: measured(long) })),
		says: under(2200)
	},
	{
		row: 'U2-04',
		source: 'Diagram 23: 500, ours',
		scene: part((v) => ({ seat: { v } })),
		says: [...under(490), ...over(510)]
	},
	{
		row: 'U2-05',
		source: 'Diagram 23: 650, ours',
		scene: part((front) => ({ seat: { front } })),
		says: [...under(640), ...over(660)]
	},
	{
		row: 'U2-07',
		source: 'Diagrams 24, 23: 300 to 320, ours',
		scene: part((off) => ({ rail: { off } })),
		says: [...under(290), [300, 'inside'], [320, 'inside'], ...over(330)]
	},
	{
		row: 'U2-07-SIDE',
		source: 'Diagram 23: the open side',
		scene: part((off) => ({ rail: { off } })),
		says: under(0)
	},
	{
		row: 'U2-09',
		source: 'Diagram 23: 250 and 600 and 50, ours',
		scene: part((u) => ({ ahead: { u } })),
		says: [...under(890), ...over(910)]
	},
	{
		row: 'U2-10-START',
		source: 'Diagram 23: 250, ours',
		scene: part((u) => ({ bar: { u } })),
		says: [...under(240), ...over(260)]
	},
	{
		row: 'U2-10-LENGTH',
		source: 'Diagram 23: 600, ours',
		scene: part((long) => ({ bar: { long } })),
		says: [...under(590), ...over(610)]
	},
	{
		row: 'U2-13-CONTROL',
		source: 'Diagram 23: 500, ours',
		scene: part((u) => ({ control: { u } })),
		says: [...under(490), ...over(510)]
	},
	{
		row: 'U2-13-HEAD',
		source: 'Diagram 23: 500, ours; its low place',
		scene: part((u) => ({ low: { u } })),
		says: [...under(490), ...over(510)]
	},
	{
		row: 'U2-13-HEAD',
		source: 'Diagram 23: 500, ours; its high place',
		scene: part((u) => ({ high: { u } })),
		says: [...under(490), ...over(510)]
	},
	{
		row: 'U2-14-LOW',
		source: 'Diagram 23: 1200 to 1400',
		scene: part((z) => ({ low: { z } })),
		says: over(1200)
	},
	{
		row: 'U2-14-HIGH',
		source: 'Diagram 23: 1200 to 1400',
		scene: part((z) => ({ high: { z } })),
		says: under(1400)
	}
];

const ACCESSIBLE = 'm4-3-accessible';

/** A new dwelling of a category, with a control at a place of the back wall, 2000 wide. */
const dwelling =
	(category: string, change: (figure: number) => { enclosure?: object; u?: number; z?: number }) =>
	(figure: number): readonly [Case, readonly Mark[]] => {
		const { enclosure, u = 1000, z = 900 } = change(figure);
		const c = corner({ category: measured(category), width: measured(2000), depth: measured(1400), ...enclosure });
		return [c, [at('control', 'run-water', ['back', u, z], variantOf('control-lever'))]];
	};

/** Width and depth each at the figure, the other one large. */
const sides = (row: string, source: string, { category, least }: { category: string; least: number }) =>
	(['width', 'depth'] as const).map((side): Edge => ({
		row,
		source: `${source}, its ${side}`,
		scene: dwelling(category, (n) => ({ enclosure: { [side]: measured(n) } })),
		says: under(least)
	}));

const EDGES_1: readonly Edge[] = [
	{
		row: 'U1-09-M42-LOW',
		source: '2.30(b): 450 to 1200',
		scene: dwelling('m4-2', (z) => ({ z })),
		says: under(450)
	},
	{
		row: 'U1-09-M42-HIGH',
		source: '2.30(b): 450 to 1200',
		scene: dwelling('m4-2', (z) => ({ z })),
		says: over(1200)
	},
	{
		row: 'U1-10-M42',
		source: '2.30(b): 300, from the corner of the seat',
		scene: dwelling('m4-2', (u) => ({ u })),
		says: under(300)
	},
	{
		row: 'U1-10-M42',
		source: '2.30(b): 300, from the other corner',
		scene: dwelling('m4-2', (off) => ({ u: 2000 - off })),
		says: under(300)
	},
	...sides('U1-01-M42', 'Diagram 2.5: 1000', { category: 'm4-2', least: 1000 }),
	...(['m4-3-adaptable', ACCESSIBLE] as const).flatMap((category): readonly Edge[] => [
		{
			row: 'U1-09-M43-LOW',
			source: `3.44(b): 700 to 1000, ${category}`,
			scene: dwelling(category, (z) => ({ z })),
			says: under(700)
		},
		{
			row: 'U1-09-M43-HIGH',
			source: `3.44(b): 700 to 1000, ${category}`,
			scene: dwelling(category, (z) => ({ z })),
			says: over(1000)
		},
		{
			row: 'U1-10-M43',
			source: `3.44(b): 700, ${category}`,
			scene: dwelling(category, (u) => ({ u })),
			says: under(700)
		}
	]),
	...sides('U1-01-AD', 'Diagram 3.10: 1200', { category: 'm4-3-adaptable', least: 1200 }),
	...sides('U1-01-ACC', 'Diagram 3.11: 1200', { category: ACCESSIBLE, least: 1200 }),
	...(['m4-2', 'm4-3-adaptable', ACCESSIBLE] as const).flatMap((category): readonly Edge[] => [
		{
			row: 'U1-02',
			source: `Diagrams 2.5, 3.10, 3.11: 500, ${category}`,
			scene: dwelling(category, (wide) => ({ enclosure: { clearWidth: measured(wide) } })),
			says: under(500)
		},
		{
			row: 'U1-03',
			source: `Diagrams 2.5, 3.10, 3.11: 1500, ${category}`,
			scene: dwelling(category, (wide) => ({ enclosure: { turning: measured(wide) } })),
			says: under(1500)
		},
		{
			row: 'U1-05',
			source: `Appendix A: no lip or upstand, ${category}`,
			scene: dwelling(category, (high) => ({ enclosure: { threshold: measured(high) } })),
			says: [
				[0, 'inside'],
				[0.1, 'outside']
			]
		}
	]),
	{
		row: 'U1-04',
		source: 'Diagram 3.11: 500',
		scene: dwelling(ACCESSIBLE, (over) => ({ enclosure: { turningOver: measured(over) } })),
		says: over(500)
	}
];

const ALL: readonly (readonly [Pack, readonly Edge[]])[] = [
	[UK_ADM_2, EDGES_2],
	[UK_ADM_1, EDGES_1]
];

describe.each(ALL)('limits of $name', (pack, edges) => {
	test('[rules R1] every row with a figure has its edges here', () => {
		const figures = pack.rows.filter(({ allowed }) => typeof allowed === 'object' && !('ask' in allowed));
		expect([...new Set(edges.map(({ row }) => row))].toSorted()).toEqual(figures.map(({ id }) => id).toSorted());
	});

	const cases = edges.flatMap(({ row, source, scene, says }) =>
		HANDS.flatMap((hand) => says.map(([figure, is]) => ({ row, source, hand, figure, is, scene })))
	);

	test.each(cases)('[rules R3] $row, $source, $hand: $figure is $is', ({ row, hand, figure, is, scene }) => {
		const [c, marks] = scene(figure);
		expect(answersOf(pack, ...inHand(hand, c, marks))[row]).toBe(is);
	});
});
