import type { Mark, PartBracket } from '#core/case/accessory.ts';
import type { WallPoint } from '#core/geometry/vec.ts';
import type { Further } from './further.ts';
import type { Plan } from './plan.ts';
import type { Scene } from '#core/measures/scene.ts';
import { MEASURES } from '#core/measures/registry.ts';
import { packing } from '#core/enclosure/setting.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { disagreementsOf, type Disagreement } from '#core/needs/disagreements.ts';
import { lookAgainOf, type LookAgain } from '#core/needs/look-again.ts';
import { reinforcementOf, type Reinforcement } from '#core/needs/reinforcement.ts';
import { seatLinesOf, type SeatLines } from '#core/needs/seat-lines.ts';
import { aboveFloor } from '#core/placement/above-floor.ts';
import type { Alternative, Clash, GivenUp } from '#core/placement/answer.ts';
import type { Drift } from '#core/placement/drift.ts';
import { reachTestsIn } from './reach-words.ts';
import type { ReachTest } from '#core/reach/tested.ts';
import { departureOf, mustBeSigned } from '#core/rules/departures.ts';
import type { Allowed } from '#core/rules/row.ts';
import { adviceOn } from '#core/structure/advice.ts';
import type { Arithmetic } from '#core/structure/arithmetic.ts';
import { holesTurned, turnDown } from '#core/structure/turn.ts';
import { mm } from '#core/units/length.ts';
import type { Worth } from './worth.ts';

/** Where one bracket is fixed. Units and frame: mm, wall frame, y from the datum line. */
export interface Fixing {
	readonly x: number;
	readonly y: number;
	readonly into: string;
	/** What goes behind it so that the brackets of its part lie in one upright plane; left out below 1 mm. */
	readonly packing?: number;
	/** Where the holes of a real part are, turned as told; generic ones have none. Units and frame: as the bracket. */
	readonly holes?: readonly WallPoint[];
	/** The hollow behind the face there, to be packed solid; left out where there is none. */
	readonly hollow?: number;
}

/** A fixing with what it comes to by calculation: the loads on its worst screw beside what that takes, and every line of it. */
type ReportedFixing = Fixing & Partial<Arithmetic>;

/** One accessory of a report. Units and frame: mm, wall frame; `aboveFloor` from the floor that counts for its kind. */
interface ReportedAccessory {
	readonly id: string;
	readonly kind: string;
	readonly wall: WallId;
	readonly x: number;
	readonly y: number;
	readonly aboveFloor: number;
	readonly turn: number;
	readonly length: number;
	readonly fixings: readonly ReportedFixing[];
	/** What the part itself, and what it stands on, take of the force: to be asked for, never a verdict. */
	readonly advice: readonly string[];
	/** The row that asks for it; then along the wall and in height a plain sentence each, followed by its expert line. */
	readonly why: readonly string[];
	/** The room round it inside which no answer worsens, all marks drifting at once; null for what is built. */
	readonly drift: Omit<Drift, 'accessory'> | null;
}

/** Where something would be in another plan. Units and frame: mm, wall frame. */
interface ReportedPlace {
	readonly id: string;
	readonly wall: WallId;
	readonly part: string;
	readonly x: number;
	readonly y: number;
}

/** A way out of clashes: what it gives up, and the plan it leads to. */
interface ReportedWayOut {
	readonly gives: readonly GivenUp[];
	readonly proved: boolean;
	readonly places: readonly ReportedPlace[];
}

/** A length of somebody that was estimated, with the rows measuring it could move. Units: mm. */
type ReportedWorth = Omit<Worth, 'rows' | 'says'> & { readonly rows: readonly string[] };

/** Another plan. */
type ReportedAlternative = Omit<Alternative, 'marks'> & { readonly places: readonly ReportedPlace[] };

/** What is worked out beside a plan. */
export interface Beside extends Further {
	/** What measuring could move. */
	readonly worth: readonly Worth[];
}

/** A plan as plain data: what plan.json holds. */
export interface Report {
	readonly schema: 'graspline-plan/1';
	readonly caseDigest: string;
	readonly status: Plan['status'];
	readonly basis: Plan['basis'];
	readonly questions: readonly { readonly id: string; readonly about: readonly string[]; readonly asks: string }[];
	readonly clashes: readonly Clash[];
	/** Where they were looked for. */
	readonly waysOut?: readonly ReportedWayOut[];
	readonly alternatives?: readonly ReportedAlternative[];
	readonly leans: Plan['probes']['leans'];
	/** What taped points came to, by person and hand; where any were taped. */
	readonly reachTests?: Readonly<Record<string, ReachTest>>;
	/** The heights that pull apart for the seat, where there is one. */
	readonly seatLines?: SeatLines;
	/** Rows that want what no height of a mark gives both; an open end of heights is null. */
	readonly disagreements: readonly Disagreement[];
	/** Whom else to ask, and what waits for it. */
	readonly waits: Plan['probes']['waits'];
	readonly lookAgain: LookAgain;
	readonly accessories: readonly ReportedAccessory[];
	/** Estimated lengths that measuring could move something by, strongest first; where they were looked for. */
	readonly worthMeasuring?: readonly ReportedWorth[];
	/** Backing to be added before anything is fixed there. Units and frame: mm, wall frame. */
	readonly backing: Plan['backing'];
	/** Where the walls of a new dwelling are to be solid for what the chosen document asks for; things by themselves, never two together. Units and frame: mm, wall frame. */
	readonly reinforcement?: readonly Reinforcement[];
	readonly findings: readonly ReportedFinding[];
}

/** One finding of a report. `measured` in `unit`; `allowed` in the document's own unit. */
interface ReportedFinding {
	readonly row: string;
	readonly document: string;
	readonly clause: string;
	readonly about: readonly string[];
	readonly answer: string;
	readonly strength: string;
	readonly measured: number | null;
	readonly unit: string;
	readonly allowed: Allowed;
	readonly departure?: string;
}

export { aboveFloor };

/** Where the brackets of a mark are and what each meets, as far as it is known. */
export function fixingsOf(scene: Scene, { place, variant }: Mark): readonly Fixing[] {
	const heights = variant.brackets.map((bracket) => place.y + bracket.y);
	const wall = scene.c.enclosure.walls[place.wall];
	const hollow = wall.facing?.gap ?? 0;
	return variant.brackets.map((bracket) => {
		const [x, y] = [mm(place.x + bracket.x), mm(place.y + bracket.y)];
		const { into } = scene.holds.at(place.wall, bracket, x, y);
		const packed = Math.round(packing(wall, y, heights));
		return {
			x,
			y,
			into: into ?? 'not known',
			...(packed > 0 && { packing: packed }),
			...(hollow > 0 && { hollow }),
			...drilled(scene, place.wall, { ...bracket, x, y })
		};
	});
}

/** The holes of a real part, turned as told, to a tenth: no drill meets less. Units and frame: mm, wall frame. */
function drilled({ holds }: Scene, wall: WallId, { flange, x, y }: PartBracket): Pick<Fixing, 'holes'> {
	if (!flange) return {};
	const { turn = turnDown(flange) } = holds.arithmetic(wall, { kind: 'flange', flange }, x, y);
	return { holes: holesTurned(flange, turn).map(([dx, dy]): WallPoint => [tenth(x + dx), tenth(y + dy)]) };
}

const tenth = (n: number): number => Math.round(n * 10) / 10;

/** The same with the calculation at each bracket that is fixed. */
function calculated(scene: Scene, mark: Mark): readonly ReportedFixing[] {
	return fixingsOf(scene, mark).map((fixing, i) => {
		const { kind = 'none', flange } = mark.variant.brackets[i] ?? {};
		if (kind === 'none') return fixing;
		const bracket = { kind, ...(flange && { flange }) };
		return { ...fixing, ...scene.holds.arithmetic(mark.place.wall, bracket, fixing.x, fixing.y) };
	});
}

function advised(scene: Scene, mark: Mark, fixings: readonly ReportedFixing[]): readonly string[] {
	const { ceiling } = scene.c.enclosure;
	const above = aboveFloor(scene, mark);
	return adviceOn({
		variant: mark.variant,
		force: scene.holds.demand.force,
		above,
		// It is measured above the bathroom floor.
		...(ceiling && { ceiling: ceiling.value + scene.room.bathroomFloor - (mark.place.y - above) }),
		held: fixings.every(({ verdict }) => verdict === 'carries')
	});
}

const placesOf = (marks: readonly Mark[]): readonly ReportedPlace[] =>
	marks.map(({ accessory: { id }, place: { wall, variant, x, y } }) => ({ id, wall, part: variant, x, y }));

function driftOf({ probes }: Plan, id: string): ReportedAccessory['drift'] {
	const found = probes.drifts.find((d) => d.accessory === id);
	if (!found) return null;
	const { left, right, lower, higher } = found;
	return { left, right, lower, higher };
}

function besidePart({ waysOut, alternatives, worth }: Partial<Beside>): Partial<Report> {
	return {
		...(waysOut && {
			waysOut: waysOut.map(({ marks, ...way }) => ({ ...way, places: placesOf(marks) }))
		}),
		...(alternatives && {
			alternatives: alternatives.map(({ marks, ...other }) => ({ ...other, places: placesOf(marks) }))
		}),
		...(worth && {
			worthMeasuring: worth.map(({ person, path, low, high, rows }) => ({
				person,
				path,
				low: mm(low),
				high: mm(high),
				rows: rows.map(({ id }) => id)
			}))
		})
	};
}

/** The plan as plain data. Shape: accessories in the order wanted, findings in the order judged. */
export function reportOf(plan: Plan, beside: Partial<Beside> = {}): Report {
	const { scene } = plan;
	const tests = reachTestsIn(scene);
	const seatLines = seatLinesOf(plan);
	const reinforcement = reinforcementOf(scene);
	return {
		schema: 'graspline-plan/1',
		caseDigest: plan.digest,
		status: plan.status,
		basis: plan.basis,
		questions: plan.probes.questions,
		clashes: plan.clashes ?? [],
		...besidePart(beside),
		leans: plan.probes.leans,
		...(Object.keys(tests).length > 0 && { reachTests: tests }),
		...(seatLines && { seatLines }),
		disagreements: disagreementsOf(plan),
		waits: plan.probes.waits,
		lookAgain: lookAgainOf(scene.c),
		accessories: plan.marks.map((mark) => {
			const fixings = calculated(scene, mark);
			return {
				id: mark.accessory.id,
				kind: mark.accessory.kind,
				wall: mark.place.wall,
				x: mark.place.x,
				y: mark.place.y,
				aboveFloor: aboveFloor(scene, mark),
				turn: mark.place.turn,
				length: mark.variant.length,
				fixings,
				advice: advised(scene, mark, fixings),
				why: [
					mark.accessory.reason,
					...plan.probes.reasons.filter((r) => r.accessory === mark.accessory.id).flatMap((r) => [r.says, r.expert])
				],
				drift: driftOf(plan, mark.accessory.id)
			};
		}),
		backing: plan.backing,
		...(reinforcement.length > 0 && { reinforcement }),
		findings: [...plan.findings, ...plan.told].map((f) => {
			const departure = departureOf(scene.c, f);
			return {
				row: f.row.id,
				document: `${f.row.document} ${f.row.edition}`.trim(),
				clause: f.row.clause,
				about: f.about,
				answer: f.answer,
				strength: f.strength,
				measured: f.measured ?? null,
				unit: MEASURES[f.row.measure].unit,
				allowed: f.row.allowed,
				...(departure !== undefined && { departure })
			};
		})
	};
}

/**
 * True when nothing stands in the way on these figures: every must inside, or outside with its reason recorded, a wall
 * for all that is wanted, and the search at its proof.
 */
export function settled(plan: Plan): boolean {
	if ((plan.status !== 'optimal' && plan.status !== 'given') || plan.nowhere.length > 0) return false;
	return plan.findings.every((f) => {
		if (f.strength !== 'must' || f.answer === 'inside' || f.answer === 'not-here') return true;
		if (f.answer === 'ask') return !mustBeSigned(plan.scene.c, f);
		// A reason sets aside a clause of a document, never the room, the wall or the body.
		const accepted = f.row.origin === 'document' && departureOf(plan.scene.c, f) !== undefined;
		return accepted && f.answer !== 'unknown';
	});
}
