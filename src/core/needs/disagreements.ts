import type { Accessory, Mark } from '#core/case/accessory.ts';
import type { Scene } from '#core/measures/scene.ts';
import { conditionsOf } from '#core/rules/applies.ts';
import { limitsOf } from '#core/rules/limit.ts';
import { EVIDENCE } from '#core/rules/packs/evidence.ts';
import type { BoundRow, Origin, Row } from '#core/rules/row.ts';
import { formatLength } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import { apart, inBoth, spanOn, type Span } from './span.ts';

/** Two rows that want heights of one mark which no height meets, whatever the plan does. */
export interface Disagreement {
	/** Ids of accessories: the mark, then the seat where one of the rows goes by it. */
	readonly about: readonly string[];
	/** Ids of the rows; where a document is one of them it is the first. */
	readonly rows: readonly [string, string];
	/** What each of them allows, of the place of the mark. Units and frame: mm from the datum line. */
	readonly heights: readonly [Span, Span];
	/** In plain words, with both sources; lengths in mm, for `onTape`. */
	readonly says: string;
}

/** What is looked at: the rows bound to the accessories of a plan, and its marks. */
interface Planned {
	readonly scene: Scene;
	readonly rows: readonly BoundRow[];
	readonly marks: readonly Mark[];
	readonly wanted: readonly Accessory[];
	readonly nowhere: readonly Accessory[];
}

/** A row with the heights it allows. */
interface Said {
	readonly row: Row;
	readonly heights: Span;
	readonly about: readonly string[];
}

/** Rows of walls and rooms clash, rows of craft only break a tie; these say what somebody wants. */
const WANTING: readonly Origin[] = ['document', 'body', 'wish'];

/** Less apart is no disagreement a tape would find. Units: mm. */
const LEAST = 1;

/** Where hands push when rising: what the rails of the study were set to. It is asked of a bar as well. */
const PUSH = EVIDENCE.rows.find(({ of, measure }) => of === 'fold-down-rail' && measure === 'above-seat');
const RAIL = EVIDENCE.requires.find(({ purpose }) => purpose === 'push-up');

const inMm = (length: number): string => formatLength(mm(length), { unit: 'mm' });
/** Where a row is written; a habit of this house has no edition anybody could look up. */
const source = ({ document, edition, clause, source: { how } }: Row): string =>
	how === 'judgement' ? `${document}, ${clause}` : `${document} ${edition}, ${clause}`;

/** What rows about a mark alone, or about it and the seat, say of its height. */
function saidOf({ scene, rows }: Planned, mark: Mark, seat: Mark | undefined): readonly Said[] {
	const { id } = mark.accessory;
	return rows.flatMap(({ row, about, later, strength }): readonly Said[] => {
		if (later || about[0] !== id || !WANTING.includes(row.origin)) return [];
		// What the other documents say among themselves is told where they are compared.
		if (row.origin === 'document' && strength === 'reported') return [];
		const [, other] = about;
		if (other !== undefined && other !== seat?.accessory.id) return [];
		const heights = spanOn(scene, 'y', { row, mark, ...(other !== undefined && { other: seat }) });
		return heights ? [{ row, heights, about }] : [];
	});
}

/** How a place stands to what a row allows. */
function keptBy({ from, to }: Span, y: number): string {
	const off = Math.max(from - y, y - to);
	return off < LEAST ? 'keeps' : `is ${inMm(off)} off`;
}

const byDocument = (a: Said, b: Said): number =>
	Number(b.row.origin === 'document') - Number(a.row.origin === 'document');

/** Two sources about one mark, in their own words. */
function disagreement(mark: Mark, pair: readonly [Said, Said]): Disagreement {
	const [a, b] = pair.toSorted(byDocument) as [Said, Said];
	const { y } = mark.place;
	const name = mark.accessory.kind.replaceAll('-', ' ');
	const about = [...new Set([...a.about, ...b.about])];
	const seat = about.length > 1 ? ', with the seat where it is' : '';
	const says = [
		`${source(a.row)}: ${a.row.says}`,
		`${source(b.row)}: ${b.row.says}`,
		`No height of the ${name} is both${seat}: ${inMm(apart(a.heights, b.heights))} lie between them.`,
		`Here it ${keptBy(a.heights, y)} the first and ${keptBy(b.heights, y)} the second.`
	].join(' ');
	return { about, rows: [a.row.id, b.row.id], heights: [a.heights, b.heights], says };
}

/** Two that say what two others of the same sources have said add nothing. */
const isFirst = (pair: readonly [Said, Said], i: number, all: readonly (readonly [Said, Said])[]): boolean =>
	all.findIndex((one) => one.every(({ row }, n) => source(row) === source((pair[n] as Said).row))) === i;

function disagreeing(planned: Planned, mark: Mark, seat: Mark | undefined): readonly Disagreement[] {
	const said = saidOf(planned, mark, seat);
	const pairs = said.flatMap((a, i) => said.slice(i + 1).map((b) => [a, b] as const));
	return pairs
		.filter(([a, b]) => a.row.document !== b.row.document && apart(a.heights, b.heights) > LEAST)
		.filter(isFirst)
		.map((pair) => disagreement(mark, pair));
}

/** What a plan has for the hands to push on, or why it has nothing. */
function railWords({ scene, marks, wanted, nowhere }: Planned): string {
	const pushes = ({ purpose }: Accessory): boolean => purpose === 'push-up';
	if (nowhere.some(pushes)) return 'A rail to push up from is wanted and has no wall.';
	const rails = marks.filter(({ accessory }) => pushes(accessory)).length;
	if (rails > 0 || wanted.some(pushes)) {
		return rails > 1 ? 'This plan has rails on both sides to push up from.' : 'This plan has a rail to push up from.';
	}
	const facts = conditionsOf(scene.c);
	const unmet = (id: 'rises' | 'roomBeside'): boolean => RAIL?.when?.[id]?.includes(facts[id]) === false;
	const none = 'This plan has no rail to push up from';
	if (unmet('rises')) return `${none}: that the client rises with her arms is not recorded.`;
	return unmet('roomBeside') ? `${none}: the wall of the seat leaves no room for one.` : `${none}.`;
}

/** A bar to rise by at the height a document prints: for pulling, not for pushing. Shape: one a bar and document. */
function pushing(planned: Planned, bar: Mark, seat: Mark): readonly Disagreement[] {
	const push = PUSH && spanOn(planned.scene, 'y', { row: PUSH, mark: bar, other: seat });
	if (!push) return [];
	const printed = saidOf(planned, bar, seat).filter(({ row }) => row.origin === 'document');
	const first = printed.filter(({ row }, i) => printed.findIndex((one) => source(one.row) === source(row)) === i);
	return first.flatMap(({ row }): readonly Disagreement[] => {
		const alike = printed.filter((one) => source(one.row) === source(row));
		const heights = alike.map((one) => one.heights).reduce(inBoth);
		if (apart(heights, push) <= LEAST) return [];
		const { min = 0, max = 0 } = limitsOf(PUSH);
		const says = [
			`At the height of ${source(row)} a horizontal bar is ${aboveSeat(heights, seat)} above a seat at this height: a bar to pull and steady on, not one to push up from.`,
			`Pushing up wants a surface ${String(min)} to ${String(max)} mm above the seat (${PUSH.document}, ${PUSH.edition}).`,
			`Here the bar is ${inMm(bar.place.y - seat.place.y)} above the seat.`,
			railWords(planned)
		].join(' ');
		const about = [bar.accessory.id, seat.accessory.id];
		return [{ about, rows: [row.id, PUSH.id], heights: [heights, push], says }];
	});
}

function aboveSeat({ from, to }: Span, { place: { y } }: Mark): string {
	const [low, high] = [from, to].map((level) => String(Math.round(level - y)));
	if (!Number.isFinite(to)) return `at least ${low ?? ''} mm`;
	return Number.isFinite(from) ? `${low ?? ''} to ${high ?? ''} mm` : `at most ${high ?? ''} mm`;
}

/**
 * Where rows that apply disagree among themselves about the height of a mark, whatever the plan does: told by asking
 * their measures, with the seat and everything else where the plan has it.
 * Shape: in the order of the marks; each two sources once a mark; nothing of what is only expected later.
 */
export function disagreementsOf(planned: Planned): readonly Disagreement[] {
	const { marks } = planned;
	const seat = marks.find(({ accessory }) => accessory.kind === 'seat');
	return marks.flatMap((mark) => [
		...(seat && mark.accessory.purpose === 'rise' && mark.accessory.kind === 'horizontal-bar'
			? pushing(planned, mark, seat)
			: []),
		...disagreeing(planned, mark, mark === seat ? undefined : seat)
	]);
}
