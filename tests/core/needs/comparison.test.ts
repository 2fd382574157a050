import { describe, expect, test } from 'vitest';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { cornerOf } from '#core/drawing/setting-out.ts';
import { mirroredCase, mirroredMark } from '#core/enclosure/mirrored-case.ts';
import {
	conflictWords,
	needsLook,
	spanWords,
	standingWords,
	suitedWords,
	toldOnce
} from '#core/needs/comparison-words.ts';
import { comparisonOf, outsideIn, type Comparison, type Quantity } from '#core/needs/comparison.ts';
import { isDocument, type SourceId } from '#core/needs/source.ts';
import { spanNear, spanOn, type Span } from '#core/needs/span.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import { ADA_2010 } from '#core/rules/packs/ada-2010.ts';
import { mm } from '#core/units/length.ts';
import { caseWith, mark, sceneOf } from '../rules/baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });

/** A wide shower on level floors with the seat on the left wall, so that documents of every country speak of it. */
const ROOM = {
	type: 'corner',
	width: measured(2000),
	depth: measured(2200),
	entryWidth: measured(2000),
	fall: measured(0),
	datum: measured(0),
	threshold: measured(0),
	hose: measured(1500),
	category: measured('m4-3-adaptable'),
	newBuilt: measured(true)
};
const THERE = { enclosure: ROOM, case: { tape: { unit: 'mm', step: 5 } } };

const part = (
	id: string,
	purpose: Mark['accessory']['purpose'],
	at: readonly [Mark['place']['wall'], number, number],
	variant: string
) => mark(id, { purpose, wall: at[0], x: at[1], y: at[2], variant: variantOf(variant) });
const SEAT = part('seat', 'sit', ['left', 1700, 480], 'seat-450');
const CONTROL = part('control', 'run-water', ['back', 500, 950], 'control-lever');
const REST = part('handset-rest', 'rest-handset', ['back', 500, 1200], 'rest');
const BAR = part('bar-back', 'rise', ['back', 300, 780], 'bar-600');
const RAIL = part('rail-one', 'push-up', ['left', 1400, 680], 'rail-600');

function compared(c: Case, marks: readonly Mark[]): Comparison {
	const scene = sceneOf(c);
	const wanted = marks.map(({ accessory }) => accessory);
	return comparisonOf(
		{ scene, marks, findings: judge(scene, bind(packsFor(c.reference), wanted, c), marks) },
		cornerOf
	);
}

function quantity({ quantities }: Comparison, id: string): Quantity {
	const found = quantities.find((one) => one.id === id);
	if (!found) throw new RangeError(`nothing is said of ${id}: ${quantities.map((one) => one.id).join(', ')}`);
	return found;
}

const spanOf = ({ cells }: Quantity, source: SourceId): Span | undefined =>
	cells.find((cell) => cell.source === source)?.span;
const near = (from: number, to: number) => ({
	from: expect.closeTo(from, 2) as number,
	to: expect.closeTo(to, 2) as number
});
const against = ({ conflicts }: Quantity): readonly string[] =>
	conflicts.flatMap(({ source, with: others }) => others.map((one) => [source, one.source].toSorted().join(' ')));

// What documents disagree about was tabled from their texts before any of this was computed: C1 to C12 of the reference
// on standards outside the United States, section 5. Ten either side of a single value is ours, told with the pack.
describe('[needs R30] documents stand to each other as their texts do', () => {
	const all = compared(caseWith(THERE), [SEAT, CONTROL, REST, BAR, RAIL]);

	test('C1, the top of the seat: ON 3.8.3.13.(2)(f), BC (g), ADM 2 Diagram 23, FR 1994 art. 10; 480 suits them all', () => {
		const top = quantity(all, 'seat/height');
		expect(spanOf(top, 'on-obc-2012')).toEqual(near(460, 480));
		expect(spanOf(top, 'bc-bcbc-2024')).toEqual(near(460, 480));
		expect(spanOf(top, 'uk-adm-2')).toEqual(near(470, 490));
		expect(spanOf(top, 'fr-erp-2014')).toEqual(near(460, 500));
		expect(against(top).filter((pair) => !/body|wish/.test(pair))).toEqual([]);
		expect(top.suited?.not).toEqual([]);
		expect(top.suited?.spans).toEqual([near(470, 480)]);
		expect(top.cells.find(({ source }) => source === 'fr-erp-2014')?.advice).toBe(true);
	});

	test('C2, a level bar: England 680 to its top meets nobody; 750 to 800 suits Ontario, British Columbia and France', () => {
		const bar = quantity(all, 'bar-back/height');
		// The axis of a bar 32 thick whose top is at 680, ten either way.
		expect(spanOf(bar, 'uk-adm-2')).toEqual(near(670 - 16, 690 - 16));
		expect(spanOf(bar, 'on-obc-2012')).toEqual(near(750, 870));
		expect(spanOf(bar, 'fr-erp-2014')).toEqual(near(700, 800));
		expect(against(bar)).toEqual(
			expect.arrayContaining(['on-obc-2012 uk-adm-2', 'bc-bcbc-2024 uk-adm-2', 'fr-erp-2014 uk-adm-2'])
		);
		expect(against(bar)).not.toContain('fr-erp-2014 on-obc-2012');
		// ADA 609.4, 33 to 36 in to the top: 838.2 less 16.
		expect(spanOf(bar, 'ada-2010')).toEqual(near(838.2 - 16, 914.4 - 16));
		expect(against(bar)).toContain('ada-2010 fr-erp-2014');
	});

	test('C3, the control from the corner: England M 2 500 against M 1 at least 700; France more than 400', () => {
		const along = quantity(all, 'control/along');
		expect(spanOf(along, 'uk-adm-2')).toEqual(near(490, 510));
		expect(spanOf(along, 'uk-adm-1')?.from).toBeCloseTo(700, 2);
		expect(against(along)).toContain('uk-adm-1 uk-adm-2');
		expect(spanOf(along, 'fr-erp-2014')?.from).toBeCloseTo(400, 1);
		expect(against(along)).not.toContain('fr-erp-2014 uk-adm-2');
	});

	test('C4, the height of the control: 900 to 1000 suits Ontario, British Columbia, both volumes and France', () => {
		const height = quantity(all, 'control/height');
		expect(spanOf(height, 'uk-adm-2')).toEqual(near(750, 1000));
		expect(spanOf(height, 'uk-adm-1')).toEqual(near(700, 1000));
		expect(spanOf(height, 'fr-erp-2014')).toEqual(near(900, 1300));
		// The whole lever no higher than 1200: its middle 75 lower.
		expect(spanOf(height, 'on-obc-2012')?.to).toBeCloseTo(1125, 2);
		expect(height.suited?.by).toEqual(
			expect.arrayContaining(['on-obc-2012', 'bc-bcbc-2024', 'uk-adm-2', 'fr-erp-2014'])
		);
		expect(height.suited?.spans).toEqual([near(900, 1000)]);
	});

	test('C5 and C6, the section of a bar: gaps of BC 35 to 45 and ON 38 to 50 meet at 38 to 45; both 30 to 40 thick', () => {
		const gap = quantity(all, 'bar-back/bar-gap');
		expect(spanOf(gap, 'on-obc-2012')).toEqual({ from: 38, to: 50 });
		expect(spanOf(gap, 'bc-bcbc-2024')).toEqual({ from: 35, to: 45 });
		expect(against(gap)).toEqual([]);
		const thick = quantity(all, 'bar-back/bar-diameter');
		expect(spanOf(thick, 'on-obc-2012')).toEqual({ from: 30, to: 40 });
		expect(spanOf(thick, 'ada-2010')).toEqual({ from: 31.75, to: 50.8 });
	});

	test('C7, where the hand shower rests: Ontario and British Columbia 1200, England at most 1200', () => {
		const rest = quantity(all, 'handset-rest/height');
		expect(spanOf(rest, 'on-obc-2012')).toEqual(near(1190, 1210));
		expect(spanOf(rest, 'uk-adm-2')?.to).toBeCloseTo(1200, 2);
		expect(against(rest).filter((pair) => !/body|wish/.test(pair))).toEqual([]);
	});

	test('C8, the hose: 1800 in Canada, 59 in of ADA 608.6; a hose of 1500 is inside the one and outside the others', () => {
		const hose = quantity(all, 'room/hose-length');
		const answers = Object.fromEntries(hose.cells.map(({ source, answer }) => [source, answer]));
		expect(answers).toMatchObject({ 'ada-2010': 'inside', 'on-obc-2012': 'outside', 'bc-bcbc-2024': 'outside' });
		expect(hose.suited && suitedWords(hose, hose.suited)).toContain('At least 1800 mm suits all');
	});

	test('C9 to C12: depth of the seat, the stall, the water', () => {
		expect(spanOf(quantity(all, 'seat/seat-depth'), 'on-obc-2012')?.from).toBe(400);
		expect(spanOf(quantity(all, 'room/inside-width'), 'bc-bcbc-2024')?.from).toBe(1500);
		expect(spanOf(quantity(all, 'room/water-temperature'), 'on-obc-2012')?.to).toBe(49);
	});

	test('a rail to push up from: England 680 to its top', () => {
		expect(spanOf(quantity(all, 'rail-one/height'), 'uk-adm-2')).toEqual(near(670, 690));
	});
});

describe('[needs R31] a comparison is told in the terms of the plan', () => {
	const c = caseWith(THERE);

	test('the plan inside what a source allows, moved to an end of it, is at that end', () => {
		const marks = [SEAT, CONTROL, BAR];
		const moved = (id: string, by: number) =>
			compared(
				c,
				marks.map((one) =>
					one.accessory.id === id ? { ...one, place: { ...one.place, y: mm(one.place.y + by) } } : one
				)
			);
		const heights = compared(c, marks).quantities.filter(({ axis }) => axis === 'y');
		expect(heights).toHaveLength(3);
		for (const { id, about = '', at = 0, cells } of heights) {
			for (const { source, span } of cells) {
				if (!isDocument(source) || !span || !Number.isFinite(span.from)) continue;
				const [low, lower] = [0, -1].map((by) => {
					const there = quantity(moved(about, span.from - at + by), id);
					const cell = there.cells.find((one) => one.source === source);
					return cell && standingWords(there, cell);
				});
				// Where only the printed mm allow it a document in inches is at its edge.
				expect([source, id, low, lower]).toEqual([
					source,
					id,
					'0 mm to spare',
					expect.stringMatching(/1 mm too low|at its edge/)
				]);
			}
		}
	});

	test('a document that differs from another says what that says but for its own, and says so', () => {
		const bar = quantity(compared(c, [BAR]), 'bar-back/height');
		expect(bar.cells.filter(({ as }) => as === 'ada-2010').map(({ source }) => source)).toEqual([
			'a117-1-2003',
			'cbc-11b'
		]);
		const [first] = toldOnce(bar.cells);
		expect(first?.also).toEqual(['a117-1-2003', 'cbc-11b']);
		// A117.1-2003 has no lavatory in it, but an upright bar of its own: 604.5.1 as read for showers, 608.3.1.2.
		const upright = part('entry-bar', 'step-in', ['right', 100, 900], 'post-bar-450');
		const transfer = caseWith({ enclosure: { type: 'transfer' } });
		const own = compared(transfer, [SEAT, upright]).quantities.filter(({ about }) => about === 'entry-bar');
		expect(own.flatMap(({ cells }) => cells).some(({ source, as }) => source === 'a117-1-2003' && !as)).toBe(true);
	});

	test('documents that say nothing of a quantity are left out of it, and quantities no document speaks of', () => {
		const { quantities } = compared(c, [SEAT, CONTROL]);
		for (const { cells } of quantities)
			expect(cells.some(({ source }) => source !== 'body' && source !== 'wish')).toBe(true);
		expect(quantity({ quantities, documents: [] }, 'seat/height').cells.map(({ source }) => source)).not.toContain(
			'uk-adm-1'
		);
	});

	test('what the person can and what is easy for her stand beside the documents', () => {
		const height = quantity(compared(c, [SEAT, CONTROL]), 'control/height');
		const [can, easy] = (['body', 'wish'] as const).map((source) => spanOf(height, source));
		expect(can?.from).toBeLessThan(easy?.from ?? 0);
		expect(Number.isFinite(can?.to)).toBe(true);
	});

	test('hips and hands are limits of hers on the seat and on the bar', () => {
		const { quantities } = compared(c, [SEAT]);
		// Hips of 399: a seat at least so wide.
		expect(spanOf(quantity({ quantities, documents: [] }, 'seat/seat-width'), 'body')?.from).toBeGreaterThanOrEqual(
			399
		);
	});

	test('what each document asks for that is not there, with its clause, and what it binds', () => {
		const { documents } = compared(c, [SEAT, CONTROL]);
		const of = (id: string) => documents.find((one) => one.id === id);
		expect(of('on-obc-2012')?.lacks.some((one) => /L-shaped/.test(one) && /3\.8\.3\.13/.test(one))).toBe(true);
		expect(of('uk-adm-2')?.lacks.length).toBeGreaterThan(2);
		for (const { binds, homes, name } of documents) {
			expect(name).not.toBe('');
			expect(binds).toMatch(/\.$/);
			expect(homes).toMatch(/\.$/);
		}
		expect(documents.filter(({ chosen }) => chosen).map(({ id }) => id)).toEqual(['ada-2010']);
	});

	test('an accepted departure stays outside and has its reason', () => {
		const low = part('bar-back', 'rise', ['back', 300, 680], 'bar-600');
		const accepted = caseWith({
			...THERE,
			case: {
				...THERE.case,
				departures: { 'ADA-GB-Z-LOW/bar-back': { reason: 'she pulls from below', by: 'therapist' } }
			}
		});
		const cell = quantity(compared(accepted, [low]), 'bar-back/height').cells[0];
		expect(cell?.answer).toBe('outside');
		const reasons = cell && outsideIn(sceneOf(accepted), cell).map(({ finding, reason }) => [finding.row.id, reason]);
		expect(reasons).toContainEqual(['ADA-GB-Z-LOW', 'she pulls from below']);
		expect(reasons).toContainEqual(['ADA-GB-Z-HIGH', undefined]);
	});

	test('the mirrored room says the same', () => {
		const marks = [SEAT, CONTROL, REST, BAR, RAIL];
		const scene = sceneOf(c);
		const there = compared(
			mirroredCase(c),
			marks.map((one) => mirroredMark(one, one.accessory, scene.room.footprint))
		);
		const told = ({ quantities }: Comparison) =>
			quantities.map(({ id, conflicts, suited, ...one }) => [
				id,
				Math.round(one.at ?? 0),
				conflicts.length,
				suited?.by
			]);
		expect(told(there)).toEqual(told(compared(c, marks)));
	});
});

describe('[needs R31] what is allowed along an axis', () => {
	const scene = sceneOf(caseWith(THERE));
	const row = { ...ADA_2010.rows[0], of: 'seat', measure: 'seat-off-centre', allowed: { max: { n: 75, unit: 'mm' } } };
	const asked = { row: row as (typeof ADA_2010.rows)[number], mark: SEAT };

	test('of a distance without sign both ends are found; one that is kept mm for mm is read straight', () => {
		expect(spanOn(scene, 'x', asked)).toBeUndefined();
		// The middle of a wall 2200 long is at 1100.
		expect(spanNear(scene, 'x', asked)).toEqual(near(1025, 1175));
		expect(spanNear(scene, 'y', asked)).toBeUndefined();
	});

	test.each([
		[{ from: 460, to: 480 }, '460 to 480 mm'],
		[{ from: 900, to: Infinity }, 'at least 900 mm'],
		[{ from: -Infinity, to: 1200 }, 'at most 1200 mm'],
		[{ from: 500, to: 500 }, '500 mm'],
		[{ from: 2, to: 1 }, 'nothing meets all']
	])('%o in words: %s', (span, words) => {
		expect(spanWords(span, 'mm')).toBe(words);
	});

	test('conflicts are one plain sentence each, under the source that stands against most', () => {
		const bar = quantity(compared(caseWith(THERE), [SEAT, BAR]), 'bar-back/height');
		const [first] = bar.conflicts;
		const says = first ? conflictWords(bar, first) : '';
		expect(says).toMatch(/^No height meets both England M 2 and .*Ontario \(76 mm between\).*\.$/);
		expect(needsLook(bar)).toBe(true);
	});
});
