import type { Body } from '#core/body/body.ts';
import { misleadsIn } from '#core/body/misleads.ts';
import type { Enclosure } from '#core/case/record.ts';
import { factName, factsTold, lookAgainWords, notAsked, WORDED, type FactTold } from '#core/fact-words.ts';
import { WALL_IDS } from '#core/geometry/frame.ts';
import { disagreementsOf } from '#core/needs/disagreements.ts';
import { lookAgainOf } from '#core/needs/look-again.ts';
import { seatLinesOf } from '#core/needs/seat-lines.ts';
import type { Plan } from '#core/plan.ts';
import { handTestWords, reachTestsIn } from '#core/reach-words.ts';
import { departureOf } from '#core/rules/departures.ts';
import { STRENGTHS } from '#core/rules/row.ts';
import { askOf, asksFor, sentence } from '#core/rules/sentence.ts';
import { formatLength, onTape, type Tape } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import { bandWords, basisWords, statusWords } from '#core/words.ts';
import type { Worth } from '#core/worth.ts';
import { closingSays } from './entry-closing.ts';
import { partName } from './figure.ts';
import { aboveFloor, cornerOf, hasLevel, lettersFor, settingOut, type SetOut } from './setting-out.ts';

/** What a line of plain text holds where most records are kept. Units: letters. */
const WIDTH = 78;
/** What would break a line, move a cursor or turn text round. */
const UNPRINTED = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu;
/** Standard deviations from the middle to the 5th and to the 95th percentile. Source: normal distribution. */
const TAIL = 1.645;

const CAUTIONS = [
	'Local codes and licensed practice come first; none of the documents binds a private home by itself.',
	'Before any hole: scan for cables and pipes, and verify the backing where each screw goes.',
	'Limit the hot water and measure it at the handset.',
	'Nobody tests a load with the client.',
	'Trying it on the wall with the person outranks every figure here.'
];

const TYPES: Readonly<Record<Enclosure['type'], string>> = {
	transfer: 'Transfer compartment',
	'roll-in': 'Roll-in compartment',
	'alternate-roll-in': 'Alternate roll-in compartment',
	corner: 'Corner wet room',
	'step-in-tray': 'Step-in tray',
	'over-bath': 'Shower over a bath'
};

/** What is told under one head. */
interface Part {
	readonly head: string;
	readonly lines: readonly string[];
	/** The sheets of marks tell it too. */
	readonly onMarks?: true;
}

/**
 * A plan as plain text for the record its therapist keeps: who, what is known of them and how, the enclosure, what is
 * proposed and why, what is open. Estimates stand apart from facts.
 * Units: lengths on the tape, or as they were typed. Shape: lines of at most 78 letters, without control characters.
 */
export function summaryOf(plan: Plan, worth: readonly Worth[], tape: Tape): string {
	const rests = plan.status === 'impossible' && plan.basis === 'settled' ? '' : `; ${basisWords(plan.basis)}`;
	const lines = [
		`Shower plan, case ${plan.scene.c.id}, state ${plan.digest.slice(0, 12)}.`,
		`Status: ${statusWords(plan.status)}${rests}. A proposal on these figures, nothing agreed.`,
		...toldParts(plan, worth, tape).flatMap(({ head, lines }) => [
			'',
			head.toUpperCase(),
			...lines.map((line) => `- ${line}`)
		])
	];
	return `${lines.flatMap(filled).join('\n')}\n`;
}

/** All that is told of a plan in words, head by head. Units: as `summaryOf`. Shape: no part is empty. */
export function toldParts(plan: Plan, worth: readonly Worth[], tape: Tape): readonly Part[] {
	const { c } = plan.scene;
	const told = (lines: readonly string[]) => lines.map((line) => onTape(line, tape));
	const onMarks = (head: string, lines: readonly string[]): readonly Part[] =>
		part(head, lines).map((one) => ({ ...one, onMarks: true }));
	return [
		...Object.keys(c.people).flatMap((id) => personParts(plan, id, tape)),
		...part('Enclosure', enclosureLines(plan, tape)),
		...onMarks('Proposed', proposed(plan, tape)),
		...onMarks('Wanted, and without a place', told(unplaced(plan))),
		...onMarks(
			'Cannot be met',
			told([...new Set((plan.clashes ?? []).flatMap(({ rows }) => rows.map((r) => r.says)))])
		),
		...onMarks('Not met', told(notMet(plan, tape))),
		...part('Seat height', told(seatHeight(plan))),
		...part('Where sources disagree', told(disagreementsOf(plan).map(({ says }) => says))),
		...onMarks('Open', told(openLines(plan, tape))),
		...part('Asked and answered', told(answered(plan))),
		...part('Not asked yet', unasked(plan)),
		...onMarks(
			'Lean needed, to be watched done',
			told(plan.probes.leans.map((l) => `${about(plan, [l.accessory])}${l.says}`))
		),
		...part(
			'Worth measuring',
			worth.map((one) => worthLine(plan, one, tape))
		),
		...part('Where an estimate misleads', told(Object.values(plan.scene.bodies).flatMap(misleadsIn))),
		...part('To be looked at again', lookAgainWords(lookAgainOf(c))),
		...onMarks('Cautions', CAUTIONS)
	];
}

const part = (head: string, lines: readonly string[]): readonly Part[] => (lines.length > 0 ? [{ head, lines }] : []);

/** A line in as many as it takes; a word longer than a line is cut. */
function filled(line: string): readonly string[] {
	const indent = line.startsWith('- ') ? '  ' : '';
	const words = line
		.replace(UNPRINTED, ' ')
		.trim()
		.split(/ +/)
		.flatMap((word) => word.match(new RegExp(`.{1,${String(WIDTH - 2)}}`, 'gsu')) ?? ['']);
	return words.reduce<readonly string[]>((lines, word) => {
		const last = lines.at(-1);
		if (last === undefined) return [word];
		const longer = `${last} ${word}`;
		return longer.length <= WIDTH ? [...lines.slice(0, -1), longer] : [...lines, indent + word];
	}, []);
}

/** Letters of marks before what is said of them. */
function about(plan: Plan, ids: readonly string[]): string {
	const letters = lettersFor(plan, ids);
	return letters === '' ? '' : `${letters}: `;
}

const whoIs = (plan: Plan, id: string): string => {
	const { role, initials } = plan.scene.c.people[id] ?? {};
	return `${role ?? id}${initials === undefined ? '' : ` ${initials}`}`;
};

function personParts(plan: Plan, id: string, tape: Tape): readonly Part[] {
	const person = plan.scene.c.people[id];
	const body = plan.scene.bodies[id];
	if (!person) return [];
	const facts = factsTold(person, tape);
	const who = whoIs(plan, id).replace(UNPRINTED, ' ');
	const head = `${who[0]?.toUpperCase() ?? ''}${who.slice(1)}`;
	const says = ({ name, value, known }: FactTold): string => `${name}: ${value}${known === '' ? '' : ` (${known})`}`;
	const now = facts.filter(({ later }) => !later).map(says);
	return [
		...part(`${head}: what is known, and how`, now.length > 0 ? now : ['nothing is recorded yet']),
		...part(`${head}: expected before long`, facts.filter(({ later }) => later).map(says)),
		...part(`${head}: reach test`, tested(plan, id, tape)),
		...part(`${head}: estimated, not measured (nine people in ten like this one)`, body ? estimates(body, tape) : [])
	];
}

const tested = ({ scene }: Plan, id: string, tape: Tape): readonly string[] =>
	Object.entries(reachTestsIn(scene)[id] ?? {}).flatMap(([side, test]) =>
		handTestWords(test).map((line) => `${side} hand: ${onTape(line, tape)}`)
	);

/** What stands in for lengths nobody took, as the span it lies in. */
function estimates(body: Body, tape: Tape): readonly string[] {
	const named = Object.entries(body.dims).map(([name, one]) => [['body', name], one] as const);
	const arms = (['left', 'right'] as const).map((side) => [['arms', side, 'toGrip'], body.arms[side].toGrip] as const);
	return [...named, ...arms].flatMap(([path, one]) => {
		if (one?.how !== 'estimated' || (path[0] === 'body' && !WORDED.includes(path.join('.')))) return [];
		return [`${factName(path)}: estimated ${bandWords(one.value - TAIL * one.sd, one.value + TAIL * one.sd, tape)}`];
	});
}

function enclosureLines({ scene: { c, room } }: Plan, tape: Tape): readonly string[] {
	const e = c.enclosure;
	const fact = ({ value, how }: { readonly value: number; readonly how: string }): string =>
		`${formatLength(mm(value), tape)} (${how})`;
	const closing = closingSays(e, room, tape.unit);
	const walls = WALL_IDS.filter((id) => room.walls[id].stands).map((id) => {
		const { studs, backing, keepOuts } = e.walls[id];
		const counts = [
			[Object.keys(studs).length, 'studs'],
			[Object.keys(backing).length, 'areas of backing'],
			[Object.keys(keepOuts).length, 'places not to be drilled']
		] as const;
		const seen = counts.flatMap(([n, what]) => (n > 0 ? [`${what}: ${String(n)}`] : []));
		return `${id} (${[...seen, room.walls[id].surveyed ? 'looked at' : 'not wholly looked at'].join(', ')})`;
	});
	return [
		`${TYPES[e.type]}; who sits has the ${e.seatWall} wall behind.`,
		`Wide ${fact(e.width)}, deep ${fact(e.depth)}, walls high ${fact(e.height)}.`,
		[
			e.threshold ? `Stepped over ${fact(e.threshold)}.` : 'What is stepped over is not recorded.',
			e.datum ? `Datum line ${fact(e.datum)} above the floor.` : 'The datum line is the bathroom floor at the entry.'
		].join(' '),
		...(closing === '' ? [] : [closing]),
		`Behind the walls: ${walls.join('; ')}.`
	];
}

/** Every mark with its place and the row that asks for it. */
const proposed = (plan: Plan, tape: Tape): readonly string[] =>
	settingOut(plan).map((set) => {
		const { accessory, place, stage } = set.mark;
		const held = stage === 'proposed' ? '' : `, ${stage}`;
		const later = set.later ? ', wanted later' : '';
		const name = `${set.letter} ${partName(set.mark, tape.unit)}${later}${held}, ${place.wall} wall`;
		return `${name}: ${placed(plan, set, tape)}. Why: ${onTape(accessory.reason, tape)}`;
	});

function placed({ scene: { room } }: Plan, set: SetOut, tape: Tape): string {
	const { side, at, from } = cornerOf(room, set.mark.place.wall);
	const length = (n: number): string => formatLength(mm(n), tape);
	const each = (of: (point: SetOut['points'][number]) => string): string =>
		[...new Set(set.points.map(of))].join(' and ');
	const along = `${each(([x]) => length(from(x)))} from the ${side} ${at}`;
	if (!hasLevel(set)) return along;
	const level = each(([, y]) => `${length(Math.abs(y))} ${y < 0 ? 'below' : 'above'} the datum line`);
	return `${along}, ${level}, ${each((point) => length(aboveFloor(room, set, point)))} above the floor`;
}

const unplaced = (plan: Plan): readonly string[] => [
	...plan.wanted
		.filter(({ id }) => !plan.marks.some((m) => m.accessory.id === id))
		.map(({ id, reason }) => `${about(plan, [id])}${reason}`),
	...plan.nowhere.map(({ reason }) => `No wall here takes it: ${reason}`)
];

/** What a plan is outside of, wishes and the chosen document alike, the strongest first. */
const notMet = (plan: Plan, tape: Tape): readonly string[] =>
	STRENGTHS.filter((strength) => strength !== 'tie-break')
		.flatMap((strength) => plan.findings.filter((f) => f.strength === strength && f.answer === 'outside'))
		.map((f) => {
			const accepted = departureOf(plan.scene.c, f);
			return `${about(plan, f.about)}${sentence(f, tape)}${accepted === undefined ? '' : ` Accepted: ${accepted}`}`;
		});

function seatHeight(plan: Plan): readonly string[] {
	const seat = seatLinesOf(plan);
	return seat ? [seat.says, ...seat.lines.map(({ name, says }) => `${name}: ${says}`)] : [];
}

/** What somebody was asked and answered. */
const answered = (plan: Plan): readonly string[] =>
	plan.findings.flatMap((f) => {
		const reason = departureOf(plan.scene.c, f);
		return f.answer === 'ask' && reason !== undefined
			? [`${about(plan, f.about)}${askOf(f.row)} Answer: ${reason}`]
			: [];
	});

function unasked(plan: Plan): readonly string[] {
	const names = notAsked(plan.scene.c);
	return names.length > 0 ? [`${names.join('; ')}.`] : [];
}

/** What is open: questions, what waits for somebody's answer, and what is to be judged on the spot. */
function openLines(plan: Plan, tape: Tape): readonly string[] {
	const { questions, waits } = plan.probes;
	const asked = plan.findings.filter(
		(f) =>
			f.answer === 'ask' && !waits.some(({ row }) => row === f.row.id) && departureOf(plan.scene.c, f) === undefined
	);
	const lines = [
		...questions.map((q) => `${about(plan, q.about)}${q.asks}`),
		...waits.map((w) => `${about(plan, w.about)}Ask ${w.whom}: ${w.asks}`),
		...asked.map((f) => `${about(plan, f.about)}To judge on the spot: ${asksFor(f, tape)}`)
	];
	return [...new Set(lines)];
}

function worthLine(plan: Plan, { person, path, low, high, says }: Worth, tape: Tape): string {
	const band = bandWords(low, high, tape);
	return `${whoIs(plan, person)}, ${factName(path)} (estimated ${band}). It could move: ${onTape(says, tape)}`;
}
