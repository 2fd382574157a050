import type { Kind, Mark } from '#core/case/accessory.ts';
import type { Reference } from '#core/case/references.ts';
import { MEASURES, type MeasureId } from '#core/measures/registry.ts';
import type { Measure, Scene } from '#core/measures/scene.ts';
import { departureOf } from '#core/rules/departures.ts';
import { sceneFor } from '#core/rules/judge.ts';
import { limitsOf } from '#core/rules/limit.ts';
import type { Answer, Finding } from '#core/rules/row.ts';
import { conflictsIn, suitedBy, type Conflict, type Suited } from './conflicts.ts';
import { documentOf, documentsOf, SPEAKING, type DocumentSays } from './documents.ts';
import { isDocument, type SourceId } from './source.ts';
import { inBoth, spanNear, type Axis, type Span } from './span.ts';

/** What one source says of a quantity. */
export interface Cell {
	readonly source: SourceId;
	/** What it allows, all its rows together; none where it says only yes or no, or nothing is known. Units and frame: as the quantity. */
	readonly span?: Span;
	/** The worst of what its rows say. */
	readonly answer: Answer;
	/** In the order of its clauses. */
	readonly findings: readonly Finding[];
	/** The document it takes all of this over from. */
	readonly as?: Reference;
	/** None of it steers: superseded, or read off a drawing that does not say it. */
	readonly advice?: true;
}

/** One quantity of a plan with what every source says of it. */
export interface Quantity {
	readonly id: string;
	/** Id of the accessory; none of the room. */
	readonly about?: string;
	/** Of a place: in height, or along its wall. */
	readonly axis?: Axis;
	/** What is measured, in plain words. */
	readonly what: string;
	readonly unit: Measure['unit'];
	/** What the plan has; none where that is not known. Units and frame: a height in mm above its floor, a place along a wall in mm from its corner, else as the measure. */
	readonly at?: number;
	/** In the order of the documents, then of the person. Shape: at least one of a document. */
	readonly cells: readonly Cell[];
	readonly conflicts: readonly Conflict[];
	/** What most documents allow; none where fewer than two give a span. */
	readonly suited?: Suited;
}

/** Documents side by side: what each says of what is in a plan, and of itself. */
export interface Comparison {
	/** In the order of the marks, the room last. */
	readonly quantities: readonly Quantity[];
	readonly documents: readonly DocumentSays[];
}

/** What is compared: a plan that was judged. */
export interface Judged {
	readonly scene: Scene;
	readonly marks: readonly Mark[];
	readonly findings: readonly Finding[];
}

/** From where a wall is measured by whoever sets out: how far from there an x of its frame lies. Units: mm. */
export type CornerOf = (room: Scene['room'], wall: Mark['place']['wall']) => { readonly from: (x: number) => number };

/** A finding with the span of its row in the terms of a quantity. */
interface Said {
	readonly finding: Finding;
	readonly span?: Span;
}

/** A quantity with all that is said of it. */
interface Gathered extends Omit<Quantity, 'cells' | 'conflicts' | 'suited'> {
	readonly said: readonly Said[];
}

/** The point of a mark that its height is told by, and the one its place along a wall is told by. */
const POINTS: Readonly<Record<Kind, Readonly<Record<Axis, string>>>> = (() => {
	const worked = { y: 'Middle above the floor', x: 'Middle from the corner' };
	return {
		seat: { ...worked, y: 'Top above the bathroom floor' },
		control: worked,
		outlet: worked,
		'handset-rest': worked,
		'horizontal-bar': { y: 'Axis above the floor', x: 'Nearer end from the corner' },
		'vertical-bar': { y: 'Lower end above the floor', x: 'Axis from the corner' },
		'fold-down-rail': { ...worked, y: 'Top above the floor' },
		'call-cord': { ...worked, y: 'Upper bangle above the floor' }
	};
})();

/** What is left of one measure over the person's own is a limit of hers on that measure; `way` -1 where more of it leaves less. */
const LEFT_OF: Partial<Readonly<Record<MeasureId, { readonly of: MeasureId; readonly way: 1 | -1 }>>> = {
	'seat-beyond-hips': { of: 'seat-width', way: 1 },
	'hand-beyond-bar': { of: 'bar-diameter', way: -1 },
	'entry-beyond-chair': { of: 'entry-width', way: 1 },
	'entry-beyond-aid': { of: 'entry-width', way: 1 }
};

const WORST_FIRST: readonly Answer[] = ['outside', 'unknown', 'borderline', 'inside'];

/**
 * What documents and the person say of every quantity of a plan, in the terms of the plan's own places: told by asking the
 * measures of the rows, with everything else where it is.
 * Shape: only quantities a document speaks of; nothing is placed by it.
 */
export function comparisonOf(plan: Judged, cornerOf: CornerOf): Comparison {
	const { scene, marks } = plan;
	const heard = plan.findings.filter(isHeard);
	const ofRoom = heard.filter(({ row, later }) => row.of === 'case' && !later);
	const gathered = [
		...marks.flatMap((mark) => ofMark({ ...plan, cornerOf }, mark, heard)),
		...byMeasure('room', ofRoom)
	];
	const quantities = gathered.flatMap(({ said, ...named }): readonly Quantity[] => {
		const cells = cellsOf(said);
		if (!cells.some(({ source }) => isDocument(source))) return [];
		const suited = suitedBy(cells);
		return [{ ...named, cells, conflicts: conflictsIn(cells), ...(suited && { suited }) }];
	});
	return { quantities, documents: documentsOf(scene.c, marks) };
}

/** Findings of a cell that are outside, each with the reason it was accepted for, where somebody gave one. */
export const outsideIn = ({ c }: Scene, { findings }: Cell): readonly { finding: Finding; reason?: string }[] =>
	findings
		.filter(({ answer }) => answer === 'outside')
		.map((finding) => {
			const reason = departureOf(c, finding);
			return { finding, ...(reason !== undefined && { reason }) };
		});

/** Rooms, walls and habits are not what is compared; what is only asked is judged on the spot. */
const isHeard = ({ row, answer }: Finding): boolean =>
	['document', 'body', 'wish'].includes(row.origin) && answer !== 'not-here' && answer !== 'ask';

/** The quantities of one mark: how high, where along its wall, then whatever else is measured of it. */
function ofMark(
	plan: Judged & { readonly cornerOf: CornerOf },
	mark: Mark,
	heard: readonly Finding[]
): readonly Gathered[] {
	const { id, kind, when } = mark.accessory;
	const mine = heard.filter(({ about, later = false }) => about[0] === id && later === (when === 'later'));
	const places = (['y', 'x'] as const).map((axis): Gathered => {
		const tell = axis === 'y' ? aboveFloor(plan.scene, mark) : fromCorner(plan, mark);
		const said = mine.flatMap((finding): readonly Said[] => {
			const span = spanFor(plan, axis, { finding, mark });
			if (!span) return [];
			return [{ finding, span: toldAs(axis === 'x' ? onWall(plan.scene, mark, span) : span, tell) }];
		});
		const what = POINTS[kind][axis];
		const at = tell(mark.place[axis]);
		return { id: `${id}/${axis === 'y' ? 'height' : 'along'}`, about: id, axis, what, unit: 'mm', at, said };
	});
	const told = new Set(places.flatMap(({ said }) => said.map(({ finding }) => finding)));
	return [
		...places,
		...byMeasure(
			id,
			mine.filter((one) => !told.has(one))
		)
	];
}

/** A span as it is told; from a corner on the right places count the other way. */
function toldAs({ from, to }: Span, tell: (n: number) => number): Span {
	const ends = [tell(from), tell(to)] as const;
	return tell(1) < tell(0) ? { from: ends[1], to: ends[0] } : { from: ends[0], to: ends[1] };
}

/** A span along a wall, open where it ends beyond the wall. */
function onWall({ room }: Scene, { place }: Mark, { from, to }: Span): Span {
	const { length } = room.walls[place.wall];
	return { from: from < 0 ? -Infinity : from, to: to > length ? Infinity : to };
}

/** The height of a mark above the floor that counts for it, by its y. Units: mm. */
function aboveFloor({ room }: Scene, { accessory, place }: Mark): (y: number) => number {
	const floor = accessory.kind === 'seat' ? room.bathroomFloor : room.floorUnder(place.wall, place.x, place.x).low;
	return (y) => y - floor;
}

/** How far a mark, of a bar its nearer end, is from the corner its wall is measured from, by its x. Units: mm. */
function fromCorner({ scene, cornerOf }: Judged & { readonly cornerOf: CornerOf }, { place, variant }: Mark) {
	const { from } = cornerOf(scene.room, place.wall);
	const turned = from(1) < from(0);
	const far = turned && variant.kind === 'horizontal-bar' ? variant.length : 0;
	return (x: number): number => from(x) - far;
}

/** What a row allows of the place of its mark along an axis. Shape: undefined where it speaks of something else. */
function spanFor(
	{ scene, marks }: Judged,
	axis: Axis,
	{ finding, mark }: { readonly finding: Finding; readonly mark: Mark }
): Span | undefined {
	const { row, about } = finding;
	const other = marks.find(({ accessory }) => accessory.id === about[1]);
	const { line, kind } = mark.accessory;
	// What hangs on one line goes up and down together; a post has no height.
	if (axis === 'y' && (mark.variant.stands === 'floor-and-ceiling' || (line && other?.accessory.line === line))) {
		return undefined;
	}
	const { along }: Measure = MEASURES[row.measure];
	// How far her arms go bounds heights and places alike: of the mark alone or beside the seat.
	const reaches = row.origin !== 'document' && kind !== 'seat' && (!other || other.accessory.kind === 'seat');
	if (along !== axis && (along !== undefined || !reaches)) return undefined;
	const span = spanNear(sceneFor(scene, finding), axis, { row, mark, other });
	// What she reaches nowhere along a line is no matter of where on it.
	return row.origin !== 'document' && span && span.from > span.to ? undefined : span;
}

/** Everything else, a quantity a measure; what is left over a person's own length goes with what that is taken from. */
function byMeasure(about: string, findings: readonly Finding[]): readonly Gathered[] {
	const valueOf = (id: MeasureId): number | undefined =>
		findings.find(({ row, measured }) => row.measure === id && measured !== undefined)?.measured;
	const baseOf = ({ row }: Finding): MeasureId => LEFT_OF[row.measure]?.of ?? row.measure;
	return [...new Set(findings.map(baseOf))].map((measure): Gathered => {
		const { what: whole, unit }: Measure = MEASURES[measure];
		const what = whole.replace(/\.$/, '');
		const at = valueOf(measure);
		const said = findings.filter((one) => baseOf(one) === measure).map((finding) => saidOf(finding, at));
		return {
			id: `${about}/${measure}`,
			...(about !== 'room' && { about }),
			what,
			unit,
			...(at !== undefined && { at }),
			said
		};
	});
}

/** A finding with the limits of its row, or with hers on what its measure is taken from. */
function saidOf(finding: Finding, at: number | undefined): Said {
	const { row, measured } = finding;
	if (MEASURES[row.measure].unit === 'yes') return { finding };
	const { min = -Infinity, max = Infinity } = limitsOf(row);
	const left = LEFT_OF[row.measure];
	if (!left) return { finding, span: { from: min, to: max } };
	if (at === undefined || measured === undefined) return { finding };
	const ends = [min, max].map((limit) => at + left.way * (limit - measured));
	return { finding, span: { from: Math.min(...ends), to: Math.max(...ends) } };
}

/** What each source says, its rows together; a document that differs from another says what that says but for its own. */
function cellsOf(said: readonly Said[]): readonly Cell[] {
	const documents = SPEAKING.flatMap(({ id, base }) => {
		const own = said.filter(({ finding }) => documentOf(finding.row) === id);
		const taken = base
			? said.filter(({ finding: { row } }) => documentOf(row) === base.id && !base.instead.includes(row.id))
			: [];
		return cellOf(id, [...own, ...taken], own.length === 0 && base ? { as: base.id } : {});
	});
	const hers = (['body', 'wish'] as const).flatMap((origin) =>
		cellOf(
			origin,
			said.filter(({ finding }) => finding.row.origin === origin),
			{}
		)
	);
	return [...documents, ...hers];
}

function cellOf(source: SourceId, said: readonly Said[], as: Pick<Cell, 'as'>): readonly Cell[] {
	if (said.length === 0) return [];
	const findings = said.map(({ finding }) => finding);
	const spans = said.flatMap(({ span }) => span ?? []);
	const answer = WORST_FIRST.find((one) => findings.some((finding) => finding.answer === one)) ?? 'inside';
	return [
		{
			source,
			...(spans.length > 0 && { span: spans.reduce(inBoth) }),
			answer,
			findings,
			...as,
			...(findings.every(({ row }) => row.advice) && { advice: true })
		}
	];
}
