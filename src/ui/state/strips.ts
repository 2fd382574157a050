import type { Mark } from '#core/case/accessory.ts';
import { MEASURES, type MeasureId } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import type { Finding } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import type { Span, Strip } from '#ui/drawing/strip.ts';
import { limitInMm } from '#ui/panels/finding-words.ts';

/** A strip with what it measures, in one line. */
export interface NamedStrip {
	readonly id: MeasureId;
	readonly what: string;
	readonly strip: Strip;
}

/** What the strips of a mark are made from. */
export interface Stripped {
	readonly scene: Scene;
	readonly mark: Mark;
	readonly seat: Mark | undefined;
	readonly findings: readonly Finding[];
}

/** How far up and down reach is looked at from a mark, and how finely, mm. */
const LOOK = { far: 700, step: 10 } as const;
const MOST_STRIPS = 3;

/** What a document is called on a strip, by its first word: a strip has room for one. */
const NAMES: Readonly<Record<string, string>> = {
	Study: 'study',
	Ergonomics: 'study',
	Working: 'habit',
	Habits: 'habit',
	The: 'measured',
	Approved: 'Doc M',
	ICC: 'A117',
	British: 'BC'
};

/** The quantities of a mark that documents limit in mm, each with its spans; heights carry the bands of reach. */
export function stripsOf(stripped: Stripped): readonly NamedStrip[] {
	const byMeasure = new Map<MeasureId, Finding[]>();
	for (const finding of stripped.findings) {
		if (!isRange(finding)) continue;
		byMeasure.set(finding.row.measure, [...(byMeasure.get(finding.row.measure) ?? []), finding]);
	}
	return [...byMeasure].slice(0, MOST_STRIPS).flatMap(([id, findings]) => {
		const value = findings[0]?.measured;
		if (value === undefined) return [];
		const spans = findings.map(spanOf);
		return [{ id, what: MEASURES[id].what, strip: { value, spans, ...bandsFor(stripped, id, value) } }];
	});
}

function isRange({ row, measured, about, later }: Finding): boolean {
	const { allowed } = row;
	const limits =
		typeof allowed === 'object' && !('ask' in allowed) ? [limitInMm(allowed.min), limitInMm(allowed.max)] : [];
	const { slope } = MEASURES[row.measure];
	// A strip stands for now: what is expected later is told in words.
	const enough = limits.some((limit) => limit !== undefined) && (row.origin === 'document' || row.origin === 'wish');
	return (
		enough && !later && measured !== undefined && slope === 1 && about.length === 1 && !row.measure.includes('reach')
	);
}

function spanOf({ row }: Finding): Span {
	const { allowed } = row;
	const limits = typeof allowed === 'object' && !('ask' in allowed) ? allowed : {};
	const [first = ''] = row.document.split(' ');
	return { name: NAMES[first] ?? first, min: limitInMm(limits.min), max: limitInMm(limits.max) };
}

/** Reach up and down from where the mark is, in the terms of a measure that rises with it. */
function bandsFor({ scene, mark, seat }: Stripped, id: MeasureId, value: number): Partial<Strip> {
	if (!risesWithHeight(scene, mark, id) || !seat || mark.accessory.kind === 'seat') return {};
	return {
		easy: band(scene, mark, { seat, id: 'reach-easy', value }),
		stretched: band(scene, mark, { seat, id: 'reach-upright', value })
	};
}

function risesWithHeight(scene: Scene, mark: Mark, id: MeasureId): boolean {
	const measure: Measure = MEASURES[id];
	if (measure.about !== 'mark') return false;
	const [here, up] = [measure.of(scene, mark), measure.of(scene, lifted(mark, 1))].map(sure);
	return here !== undefined && up !== undefined && Math.abs(up - here - 1) < 0.01;
}

function band(
	scene: Scene,
	mark: Mark,
	{ seat, id, value }: { readonly seat: Mark; readonly id: 'reach-easy' | 'reach-upright'; readonly value: number }
): readonly [number, number] | undefined {
	const reached: number[] = [];
	for (let by = -LOOK.far; by <= LOOK.far; by += LOOK.step) {
		if ((sure(MEASURES[id].of(scene, lifted(mark, by), seat)) ?? -1) >= 0) reached.push(value + by);
	}
	return reached.length > 0 ? [Math.min(...reached), Math.max(...reached)] : undefined;
}

function lifted(mark: Mark, by: number): Mark {
	return { ...mark, place: { ...mark.place, y: mm(mark.place.y + by) } };
}

function sure(reading: Reading): number | undefined {
	if (typeof reading === 'number') return reading;
	return 'sure' in reading ? reading.sure : undefined;
}
