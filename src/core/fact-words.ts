import type { Case, Person } from '#core/case/record.ts';
import { formatLength, type Tape } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import type { LookAgain } from '#core/needs/look-again.ts';

/** What a fact of a person is called, what its number counts (a length when not told), and words of its own for what it may be. */
interface FactWords {
	readonly name: string;
	readonly unit?: 'kg' | 'years' | 'degrees' | 'minutes';
	readonly says?: Readonly<Record<string, string>>;
}

const SIDES = { left: 'to the left', right: 'to the right' };
const WAYS = {
	walks: 'walks',
	'stand-pivot': 'stands and turns',
	'sitting-pivot': 'slides over sitting',
	'slide-board': 'with a board',
	hoist: 'with a hoist'
};
const HAND = { grip: 'rod in the fist', push: 'pushing', fingertip: 'fingertip' };

/**
 * Words of every fact of a person, by where the record has it: an arm's without its side, a taped point's without its name,
 * what is expected later as what is so now.
 */
const WORDS: Readonly<Record<string, FactWords>> = {
	sex: { name: 'sex' },
	age: { name: 'age', unit: 'years' },
	goals: { name: 'what is wanted, in own words' },
	consents: { name: 'agrees to be assessed and to the marks being passed on' },
	ownFigure: { name: 'agrees to be drawn at own size' },
	prognosis: { name: 'what is expected of the condition' },
	mass: { name: 'mass', unit: 'kg' },
	weakerSide: { name: 'weaker side' },
	weakerHolds: { name: 'weaker hand holds a bar' },
	washes: { name: 'washes', says: { both: 'standing or seated', 'in-chair': 'in a shower chair' } },
	runsWater: {
		name: 'who runs the water',
		says: { client: 'the client', helper: 'the helper, because the client must not' }
	},
	sittingForward: { name: 'sits forward of the back rest by' },
	lean: { name: 'leans forward', says: { none: 'not at all', holding: 'holding on' } },
	movesIn: { name: 'moves in', says: SIDES },
	movesOut: { name: 'moves out', says: SIDES },
	transfer: { name: 'transfer', says: WAYS },
	leaves: { name: 'gets out', says: WAYS },
	rises: { name: 'rises', says: { 'with-arms': 'with the arms' } },
	needsHold: { name: 'standing, one hand must hold on' },
	sits: {
		name: 'sits',
		says: { free: 'both hands free', 'one-hand': 'holding on with one hand', 'back-rest': 'against a back rest only' }
	},
	standsFor: { name: 'stands with a hand on a bar for', unit: 'minutes' },
	tires: { name: 'is worn out, dizzy or short of breath before the end' },
	helpedBy: { name: 'helped in and out by' },
	overlooks: { name: 'side that is overlooked or not seen' },
	followsSteps: { name: 'does what is asked, in order' },
	skinAtRisk: { name: 'skin sore or at risk where it bears' },
	washedBelow: { name: 'washed from below while sitting' },
	seizures: { name: 'may lose consciousness or control of the limbs' },
	callsHelp: {
		name: 'calls for help',
		says: { cord: 'by a cord', worn: 'by something worn', 'none-wanted': 'wants none' }
	},
	hipLimit: { name: 'hip must not bend past level' },
	feelsHeat: { name: 'feels heat in time' },
	seesBars: { name: 'sees a bar on its wall' },
	'body.stature': { name: 'height, standing' },
	'body.armSpan': { name: 'arm span' },
	'body.kneeHeight': { name: 'height of the knee, sitting' },
	'body.sittingHeight': { name: 'height from the seat, sitting' },
	'body.forearmToGrip': { name: 'elbow to the grip' },
	'body.handLength': { name: 'length of the hand' },
	'body.shoulderStanding': { name: 'height of the shoulder, standing' },
	'body.wristStanding': { name: 'height of the wrist, standing' },
	'body.shoulderAboveSeat': { name: 'shoulder above the seat' },
	'body.elbowAboveSeat': { name: 'elbow above the seat' },
	'body.popliteal': { name: 'height under the knee' },
	'body.buttockPopliteal': { name: 'back to the fold of the knee' },
	'body.shoulderBreadth': { name: 'breadth of the shoulders' },
	'body.hipBreadth': { name: 'breadth of the hips' },
	'arms.toGrip': { name: 'arm to the grip' },
	'arms.upperArm': { name: 'upper arm' },
	'arms.flexion': { name: 'arm lifts in front to', unit: 'degrees' },
	'arms.abduction': { name: 'arm lifts sideways to', unit: 'degrees' },
	'arms.adduction': { name: 'arm crosses by', unit: 'degrees' },
	'arms.elbowDeficit': { name: 'elbow stays bent by', unit: 'degrees' },
	'arms.elbowFlexion': { name: 'elbow bends to', unit: 'degrees' },
	'arms.hurtsFrom': { name: 'arm hurts when lifted from', unit: 'degrees' },
	'arms.closesRound': { name: 'hand closes round a bar of up to' },
	'arms.feels': { name: 'hand feels what it touches' },
	'arms.points': { name: 'hand stopped at point' },
	'arms.points.wall': { name: 'wall' },
	'arms.points.x': { name: 'along' },
	'arms.points.y': { name: 'from the datum line' },
	'arms.points.off': { name: 'off the wall' },
	'arms.points.reach': { name: 'reach', says: { just: 'as far as it goes' } },
	'arms.points.hand': { name: 'with', says: HAND },
	reachTest: { name: 'sat for the taped points' },
	'reachTest.behind': { name: 'wall behind' },
	'reachTest.x': { name: 'along' },
	'reachTest.off': { name: 'back off the wall' },
	'reachTest.seatHeight': { name: 'seat' },
	'reachTest.floor': { name: 'above the floor of the', says: { shower: 'shower', bathroom: 'bathroom' } },
	'chair.seatHeight': { name: 'seat of the wheeled chair, high' },
	'chair.width': { name: 'wheeled chair, wide' },
	'chair.length': { name: 'wheeled chair, long' },
	'chair.obstacle': { name: 'stands above the seat of the chair on the way across' },
	'chair.approach': { name: 'parks the chair' },
	'chair.gap': { name: 'gap between the two seats' },
	'walkingAid.kind': { name: 'walks with' },
	'walkingAid.width': { name: 'walking aid, wide' }
};

/** One fact of a person in words. */
export interface FactTold {
	/** What it is called, with its side. */
	readonly name: string;
	readonly value: string;
	/** How it is known, by whom and when; empty for what is plainly said. */
	readonly known: string;
	/** Expected before long instead of what is so now. */
	readonly later: boolean;
}

/** Who it is, which is told beside the facts. */
const WHO: readonly string[] = ['role', 'initials'];
/** What is said of a fact beside what it is. */
const SOURCES: readonly string[] = ['how', 'by', 'when', 'typed', 'sd'];

/** Where the words of a fact are kept, by its path from the person on. */
function keyOf(path: readonly string[]): string {
	const [root, ...rest] = path[0] === 'later' ? path.slice(1) : path;
	if (root !== 'arms') return [root, ...rest].join('.');
	const [, part, , ...below] = rest;
	return ['arms', part, ...below].filter((one) => one !== undefined).join('.');
}

/** What a fact is called, by its path from the person on; an arm's with its side. What has no words is called by its key. */
export function factName(path: readonly string[]): string {
	const name = WORDS[keyOf(path)]?.name ?? spaced(path.at(-1) ?? '');
	const [root, side = '', , point] = path;
	if (root !== 'arms') return name;
	return `${side} ${name}${point === undefined ? '' : ` "${point}"`}`;
}

/** Keys of the words there are, to be held against the record. */
export const WORDED: readonly string[] = Object.keys(WORDS);

/**
 * Every fact the record has of a person, found by walking the record, so that what is new in it is told too.
 * Shape: in the order of the record; an estimate is no fact and never among them.
 */
export function factsTold(person: Person, tape: Tape): readonly FactTold[] {
	return Object.entries(person)
		.filter(([key]) => !WHO.includes(key))
		.flatMap(([key, one]) => walked(one, [key], tape));
}

function walked(node: unknown, path: readonly string[], tape: Tape): readonly FactTold[] {
	if (node === undefined || node === null) return [];
	const told = (value: string, known = ''): FactTold => ({
		name: factName(path),
		value,
		known,
		later: path[0] === 'later'
	});
	if (typeof node !== 'object') return [told(worded(node, path, tape))];
	const known = node as Readonly<Record<string, unknown>>;
	if (!('how' in known)) return Object.entries(known).flatMap(([key, one]) => walked(one, [...path, key], tape));
	const { how, by, when, typed } = known;
	const said = Object.fromEntries(Object.entries(known).filter(([key]) => !SOURCES.includes(key)));
	const sources = [how, by, when].filter((one) => typeof one === 'string');
	return [
		told('value' in said ? valued(said['value'], typed, path, tape) : parts(said, path, tape), sources.join(', '))
	];
}

/** A number in the words it was typed in where these name their unit, else on the tape. */
function valued(value: unknown, typed: unknown, path: readonly string[], tape: Tape): string {
	if (typeof value === 'object' && value !== null) {
		return Object.values(value)
			.map((one) => worded(one, path, tape))
			.join(', ');
	}
	const named = typeof value === 'number' && typeof typed === 'string' && /\d.*[a-z°'"]/i.test(typed);
	return named ? typed.trim() : worded(value, path, tape);
}

const parts = (said: Readonly<Record<string, unknown>>, path: readonly string[], tape: Tape): string =>
	Object.entries(said)
		.map(([key, one]) => {
			const at = [...path, key];
			return `${WORDS[keyOf(at)]?.name ?? spaced(key)} ${worded(one, at, tape)}`;
		})
		.join(', ');

function worded(value: unknown, path: readonly string[], tape: Tape): string {
	const { unit, says } = WORDS[keyOf(path)] ?? {};
	if (typeof value === 'boolean') return value ? 'yes' : 'no';
	if (typeof value === 'number') return unit ? `${String(value)} ${unit}` : formatLength(mm(value), tape);
	const word = String(value);
	return says?.[word] ?? (/^[a-z]+(-[a-z]+)*$/.test(word) ? spaced(word) : word);
}

/** A key as words: "hurtsFrom" is "hurts from". */
const spaced = (key: string): string =>
	key
		.replace(/([a-z])([A-Z])/g, '$1 $2')
		.replaceAll('-', ' ')
		.toLowerCase();

/** When to look again, and what to measure again before anything is planned by it; a sentence each. */
export const lookAgainWords = ({ says, stale }: LookAgain): readonly string[] => [
	says,
	...stale.map(
		({ person, path, when }) =>
			`Measure or ask again: ${person}, ${factName(path)}, of ${when}; it is more than a year older than the newest figure.`
	)
];

/** What is asked of every client because the answer could change what is proposed, by where the record keeps it. */
const SCREENED = [
	'consents',
	'sits',
	'rises',
	'overlooks',
	'followsSteps',
	'feelsHeat',
	'seesBars',
	'skinAtRisk',
	'washedBelow',
	'hipLimit',
	'seizures',
	'tires',
	'callsHelp',
	'prognosis'
] as const satisfies readonly (keyof Person)[];

/** What nobody asked yet of the client of a case; what was not asked is not known, never no. */
export const notAsked = ({ people }: Case): readonly string[] =>
	Object.values(people)
		.filter(({ role }) => role === 'client')
		.flatMap((client) => SCREENED.filter((key) => client[key] === undefined).map((key) => factName([key])));
