import type { Side } from '#core/body/hands.ts';
import type { Mark, Purpose } from '#core/case/accessory.ts';
import { INTO, oppositeWall, type WallId } from '#core/geometry/frame.ts';
import { add, leftOf, less, size, times, type Vec } from '#core/geometry/vec.ts';
import { clientOf } from '#core/measures/client.ts';
import { chairPoint, standerOf, type Station } from '#core/measures/stander.ts';
import { seatEdge, seatPoint } from '#core/measures/where.ts';
import type { Plan } from '#core/plan.ts';
import { leastLean, type Lean } from '#core/reach/least-lean.ts';
import { leanTravel } from '#core/reach/lean.ts';
import type { Posture } from '#core/reach/slack.ts';
import { drawnBody, type DrawnBody } from './drawn-body.ts';
import { armsOf, bestHold, holdsOn, mayHold, SIDES, type Hold } from './hands-on.ts';
import type { Limb } from './limb.ts';
import {
	risingStance,
	seatedStance,
	standingStance,
	type Feet,
	type Leaning,
	type Seat,
	type Stance
} from './stance.ts';

/** What somebody is drawn doing: on the seat, as she leaves it, washing on her feet, over the entry, or helping from outside. */
export type Pose = 'sitting' | 'rising' | 'standing' | 'stepping' | 'helper';

/** Somebody doing something with what the plan has put there. Units and frame: mm, plan frame. */
export interface Acting {
	readonly pose: Pose;
	readonly d: DrawnBody;
	readonly stance: Stance;
	readonly arms: Readonly<Record<Side, Limb>>;
	readonly holds: readonly Hold[];
	/** The lean the hand that works needs, where it needs one. */
	readonly lean: Lean | null;
	readonly seat?: Seat;
	/** She sits in her own wheeled chair. */
	readonly inChair: boolean;
}

const now = ({ marks }: Plan): readonly Mark[] => marks.filter(({ accessory }) => accessory.when !== 'later');
const forPurpose = (plan: Plan, id: string, ...purposes: readonly Purpose[]): readonly Mark[] =>
	now(plan).filter(({ accessory }) => accessory.for === id && purposes.includes(accessory.purpose));

/** Somebody in a pose; undefined where the plan has nothing to show of it. */
export function actingIn(plan: Plan, pose: Pose): Acting | undefined {
	const found = known.get(plan) ?? new Map<Pose, Acting | undefined>();
	known.set(plan, found);
	if (!found.has(pose)) found.set(pose, ACTING[pose](plan));
	return found.get(pose);
}

/** Worked out once a plan: words and pictures ask again and again. */
const known = new WeakMap<Plan, Map<Pose, Acting | undefined>>();

const ACTING: Readonly<Record<Pose, (plan: Plan) => Acting | undefined>> = {
	sitting,
	rising,
	standing,
	stepping,
	helper
};

/** What the client works herself: the water, or the hand shower where somebody else turns the water on. */
function workedBy(plan: Plan, id: string): readonly Mark[] {
	const person = plan.scene.c.people[id];
	const water = person?.runsWater?.value === 'helper' ? [] : forPurpose(plan, id, 'run-water');
	if (water.length > 0) return water;
	const rest = forPurpose(plan, id, 'rest-handset');
	return rest.length > 0 ? rest : forPurpose(plan, id, 'hang-handset');
}

/** Where she sits; in her own wheeled chair where she washes in it. */
function seatFor(plan: Plan, id: string): { readonly seat: Seat; readonly inChair: boolean } | undefined {
	const { scene } = plan;
	const { room } = scene;
	const facing = room.sitting.ahead;
	const mark = now(plan).find(({ accessory }) => accessory.purpose === 'sit' && accessory.for === id);
	const under = (back: Vec): number => {
		const [x, y] = add(back, times(facing, 500));
		return room.floorAt(x, y);
	};
	if (mark) {
		const back = seatPoint(scene, mark);
		return { seat: { back, facing, floor: Math.min(under(back), seatEdge(scene, mark)[2]) }, inChair: false };
	}
	const person = scene.c.people[id];
	const height = person?.chair.seatHeight?.value;
	if (person?.washes?.value !== 'in-chair' || height === undefined) return undefined;
	const at = chairPoint(scene, [0, 0]);
	return { seat: { back: add(at, [0, 0, height]), facing, floor: at[2] }, inChair: true };
}

function sitting(plan: Plan): Acting | undefined {
	const { id, person } = clientOf(plan.scene.c);
	const found = seatFor(plan, id);
	const d = found && drawnBody(plan, id);
	const upright = d && seatedStance(d, found.seat);
	if (!upright) return undefined;
	const work = bestHold(mayHold(plan, d, upright, workedBy(plan, id)));
	const lean = work && work.goal.slack < 0 ? leanFor(d, upright, work) : null;
	const leaning =
		lean && heldTo(lean, upright.postures[work?.side ?? 'left'], upright, mostTravel(d, person.lean?.value));
	const stance = leaning ? seatedStance(d, found.seat, leaning) : upright;
	if (!stance) return undefined;
	const works = work && mayHold(plan, d, stance, [work.mark]).find(({ side }) => side === work.side);
	const steady = forPurpose(plan, id, 'sit-steady', 'steady', 'hold-ahead', 'rise', 'push-up');
	const free = mayHold(plan, d, stance, steady).filter((h) => h.goal.slack >= 0 && h.side !== work?.side);
	const holds = [...(works ? [works] : []), ...holdsOn(free).slice(0, 1)];
	return { pose: 'sitting', d, stance, holds, lean, ...found, arms: armsOf(d, stance, holds, 'thigh') };
}

const leanFor = (d: DrawnBody, stance: Stance, { side, goal }: Hold): Lean | null =>
	leastLean(d.arms[side], stance.postures[side], stance.hip, goal.at, goal.kind, 0);

/** How far she leans: what was seen of her at her own size; of a neutral figure only whether she leans at all. */
function mostTravel(d: DrawnBody, lean: { kind: string; at?: number } | undefined): number {
	if (lean?.kind === 'none') return 0;
	return d.whose === 'own' ? (lean?.at ?? Infinity) : Infinity;
}

/** A lean no further than it may go. Units: mm of travel. */
function heldTo(lean: Lean, posture: Posture, { hip, facing }: Stance, most: number): Leaning | undefined {
	const toward = lean.toward === 'ahead' ? facing : times(leftOf(facing), lean.toward === 'left' ? 1 : -1);
	let degrees = lean.degrees;
	while (degrees > 0 && leanTravel(posture, hip, degrees, toward) > most) degrees -= 0.5;
	return degrees > 0 ? { degrees, toward } : undefined;
}

/** How far the trunk goes forward in rising. Units: degrees. Ours, after studies of rising: 35 to 45. */
const RISE = 38;
const NOT_RISING = ['sitting-pivot', 'slide-board', 'hoist'];

function rising(plan: Plan): Acting | undefined {
	const { id, person } = clientOf(plan.scene.c);
	if (person.rises?.value === 'cannot' || NOT_RISING.includes(person.transfer?.value ?? '')) return undefined;
	const found = seatFor(plan, id);
	const d = found && !found.inChair ? drawnBody(plan, id) : undefined;
	const stance = found && d && risingStance(d, found.seat, RISE);
	if (!stance) return undefined;
	const meant = mayHold(plan, d, stance, forPurpose(plan, id, 'rise', 'push-up'));
	const steady = mayHold(plan, d, stance, forPurpose(plan, id, 'steady', 'sit-steady', 'hold-ahead'));
	const holds = holdsOn(meant.length > 0 ? meant : steady.filter(({ goal }) => goal.slack >= 0));
	if (holds.length === 0) return undefined;
	return { pose: 'rising', d, stance, holds, lean: null, ...found, arms: armsOf(d, stance, holds, 'thigh') };
}

/** What somebody does on her feet: at a mark, from a station, with a way to face that shows her in profile. */
interface OnFeet {
	readonly mark: Mark;
	readonly station: Station;
	readonly profile: Vec;
}

/**
 * The shoulders at the spot of a station from which most is to spare at a mark: facing as she is seen best where the hand gets there
 * so, else the way the measures turn her.
 */
function bestSpot(plan: Plan, d: DrawnBody, at: OnFeet): Stance['postures'] | undefined {
	const stander = standerOf(d.scene, d.id, { station: at.station, wall: at.mark.place.wall });
	if ('missing' in stander) return undefined;
	const [left = [], right = []] = SIDES.map((side) => {
		const points = stander.find((posed) => posed.side === side)?.points ?? [];
		return points[Math.floor(points.length / 2)]?.postures ?? [];
	});
	const turned = left.flatMap((one, i) => {
		const other = right[i];
		return other ? [{ left: one, right: other }] : [];
	});
	const straight = turned.map((postures) => facing(postures, at.profile));
	const best = mostToSpare(plan, d, at.mark, straight);
	return best && best.slack >= 0 ? best.postures : mostToSpare(plan, d, at.mark, turned)?.postures;
}

function mostToSpare(plan: Plan, d: DrawnBody, mark: Mark, spots: readonly Stance['postures'][]): Spot | undefined {
	return spots.reduce<Spot | undefined>((best, postures) => {
		const slack = bestHold(mayHold(plan, d, { postures }, [mark]))?.goal.slack ?? -Infinity;
		return best && best.slack >= slack ? best : { slack, postures };
	}, undefined);
}

interface Spot {
	readonly slack: number;
	readonly postures: Stance['postures'];
}

/** Shoulders turned about the middle between them. */
function facing({ left, right }: Stance['postures'], forward: Vec): Stance['postures'] {
	const middle = times(add(left.shoulder, right.shoulder), 0.5);
	const half = size(less(left.shoulder, right.shoulder)) / 2;
	const at = (side: Side): Posture => ({
		side,
		forward,
		shoulder: add(middle, times(leftOf(forward), side === 'left' ? half : -half))
	});
	return { left: at('left'), right: at('right') };
}

function standing(plan: Plan): Acting | undefined {
	const { id, person } = clientOf(plan.scene.c);
	const washes = person.washes?.value;
	if (washes !== 'standing' && washes !== 'both') return undefined;
	const [mark] = workedBy(plan, id);
	const d = drawnBody(plan, id);
	const postures =
		mark && d && bestSpot(plan, d, { mark, station: 'washing', profile: INTO[oppositeWall(mark.place.wall)] });
	if (!postures) return undefined;
	const stance = standingStance(d, postures, levelFeet(plan, postures, [40, -40]));
	const work = bestHold(mayHold(plan, d, stance, [mark]));
	const bars = mayHold(plan, d, stance, forPurpose(plan, id, 'steady', 'hold-ahead', 'step-in', 'step-out', 'rise'));
	const free = holdsOn(bars.filter((h) => h.goal.slack >= 0 && h.side !== work?.side)).slice(0, 1);
	const holds = [...(work ? [work] : []), ...free];
	return {
		pose: 'standing',
		d,
		stance,
		holds,
		lean: null,
		inChair: false,
		arms: armsOf(d, stance, holds, 'hanging')
	};
}

/** Feet on the floor under each, a little apart on the way. */
function levelFeet(plan: Plan, { left, right }: Stance['postures'], [l, r]: readonly [number, number]): Feet {
	const { room } = plan.scene;
	const of = ({ shoulder, forward }: Posture, ahead: number) => {
		const [x, y] = add(shoulder, times(forward, ahead));
		return { ahead, level: y > room.entryLine ? room.bathroomFloor : room.floorAt(x, y) };
	};
	return { left: of(left, l), right: of(right, r) };
}

/** The way in. */
const INWARD = INTO.front;

/** Over the edge: the foot behind outside, the one ahead over what there is to step over. Units: mm. Ours. */
const STEP = { back: -70, ahead: 220, over: 45, high: 30 };

function stepping(plan: Plan): Acting | undefined {
	const { id } = clientOf(plan.scene.c);
	const bars = forPurpose(plan, id, 'step-in', 'step-out');
	const [mark] = bars;
	const d = drawnBody(plan, id);
	const postures = mark && d && bestSpot(plan, d, { mark, station: 'entry', profile: INWARD });
	if (!postures) return undefined;
	const { room } = plan.scene;
	const hold = bestHold(mayHold(plan, d, { postures }, bars));
	const inside = levelFeet(plan, postures, [STEP.ahead, STEP.ahead]);
	const over = room.step > STEP.high ? room.bathroomFloor + room.step + STEP.over : undefined;
	const behind = { ahead: STEP.back, level: room.bathroomFloor };
	const before = { ahead: STEP.ahead, level: over ?? inside.left.level };
	const leads: Side = hold?.side ?? 'right';
	const feet: Feet = leads === 'left' ? { left: before, right: behind } : { left: behind, right: before };
	const stance = standingStance(d, postures, feet);
	const holds = holdsOn(mayHold(plan, d, stance, bars)).slice(0, 1);
	return {
		pose: 'stepping',
		d,
		stance,
		holds,
		lean: null,
		inChair: false,
		arms: armsOf(d, stance, holds, 'hanging')
	};
}

/** What may be worked from outside the spray. */
const WATER: readonly Purpose[] = ['run-water', 'set-temperature', 'divert'];

function helper(plan: Plan): Acting | undefined {
	const { scene } = plan;
	const runs = clientOf(scene.c).person.runsWater?.value;
	const id = Object.keys(scene.c.people).find((one) => scene.c.people[one]?.role === 'helper');
	const d = id === undefined || (runs !== 'helper' && runs !== 'either') ? undefined : drawnBody(plan, id);
	if (id === undefined || !d) return undefined;
	// Whoever helps uses either hand.
	const water = now(plan)
		.filter(({ accessory }) => WATER.includes(accessory.purpose))
		.map((mark): Mark => ({ ...mark, accessory: { ...mark.accessory, for: id } }));
	const acts = water.flatMap((mark) => {
		const postures = bestSpot(plan, d, { mark, station: 'entry', profile: INWARD });
		if (!postures) return [];
		const stance = standingStance(d, postures, levelFeet(plan, postures, [-20, -90]));
		const hold = bestHold(mayHold(plan, d, stance, [mark]));
		return hold ? [{ stance, hold }] : [];
	});
	const best = bestHold(acts.map(({ hold }) => hold));
	const act = acts.find(({ hold }) => hold === best);
	if (!act) return undefined;
	const { stance, hold } = act;
	return {
		pose: 'helper',
		d,
		stance,
		holds: [hold],
		lean: null,
		inChair: false,
		arms: armsOf(d, stance, [hold], 'hanging')
	};
}

/** The wall looked at in a pose: beside the way she faces, the one with most of what her hands are on, then most of the marks. */
export function farWall(plan: Plan, { stance, holds, pose }: Acting): WallId {
	const { room } = plan.scene;
	const along = Math.abs(stance.facing[0]) > Math.abs(stance.facing[1]) && pose !== 'stepping' && pose !== 'helper';
	const walls: readonly WallId[] = along ? ['back', 'front'] : ['right', 'left'];
	const worth = (wall: WallId): number =>
		(room.walls[wall].stands ? 1000 : 0) +
		(holds[0]?.mark.place.wall === wall ? 200 : 0) +
		100 * holds.filter(({ mark }) => mark.place.wall === wall).length +
		now(plan).filter(({ place }) => place.wall === wall).length;
	return walls.reduce((best, wall) => (worth(wall) > worth(best) ? wall : best));
}
