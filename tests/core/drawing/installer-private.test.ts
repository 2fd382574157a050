import type { Case } from '#core/case/record.ts';
import { markTable } from '#core/drawing/mark-table.ts';
import { packOf } from '#core/drawing/pack.ts';
import type { OnPaper } from '#core/drawing/sheet.ts';
import { factsTold } from '#core/fact-words.ts';
import type { Plan } from '#core/plan.ts';
import { csvOf } from '#core/render/csv.ts';
import { svgOf } from '#core/render/svg.ts';
import { describe, expect, test } from 'vitest';
import { CLIENT_PLACES } from './client-places.ts';
import { clientPlan } from './client-plans.ts';
import { CHILD, CLIENT, fixtureCase, fixturePlan } from './fixture.ts';
import { PAPERS, saidIn, saidOn, USUAL } from './installer-paper.ts';
import { planOf, TEST_ROOMS } from './rooms.ts';

/** Words that speak of somebody's body, health or doing. */
const HEALTH = [
	/\breach(es|ed|ing)?\b/i,
	/\beas(y|ily)\b/i,
	/\bstretch/i,
	/\bweigh(s|t|ed)?\b/i,
	/\bheav(iest|ier)\b|\bhow heavy\b/i,
	/\d ?(kg|lb|lbs|st)\b/,
	/\bstroke\b/i,
	/\bpain|\bhurts?\b|\bsore\b/i,
	/\btransfer/i,
	/\blean(s|ing|ed)?\b/i,
	/\bdiagnos|\bcondition\b|\bprognos|\bdisab|\bdementia\b|\bseizure|\bpalsy\b|\barthrit|\bsclerosis\b|\bamput/i,
	/\bwheel(ed)? ?chair|\bthe chair\b|\bwalk(s|er|ing)\b/i,
	/\btires?\b|\btired\b|\bdizzy\b|\bbreath/i,
	/\bweak(er|ness)?\b|\bstronger\b|\bable\b|\babilit|\bcannot\b/i,
	/\b(she|her|hers|herself|he|him|his|himself)\b/i,
	/\b(daughter|son|wife|husband|mother|father|carer|nurse)\b/i,
	/\byears? old\b|\baged?\b/i,
	/\bshoulder|\belbow|\bknee|\bhips?\b|\bskin\b|\bwrist/i,
	/\bbody\b|\bfigure of\b|\bhealth\b|\bsurvey figures\b/i
];

/** What is said of a person and is no word of setting out: the names and the worded values of the facts, the free texts, the reasons. */
function ofPersons(plan: Plan): readonly string[] {
	const { c } = plan.scene;
	const persons = Object.values(c.people).flatMap((person) => [
		...(person.initials === undefined ? [] : [person.initials]),
		...(['mm', 'in'] as const).flatMap((unit) =>
			factsTold(person, { unit }).flatMap(({ name, value }) => [name, value, `${name} ${value}`])
		)
	]);
	const reasons = [...plan.wanted, ...plan.nowhere].map(({ reason }) => reason);
	const departures = Object.values(c.departures).flatMap(({ reason, by }) => [reason, by]);
	const { probes } = plan;
	const told = [
		...probes.leans.map(({ says }) => says),
		...probes.reasons.flatMap(({ says, expert }) => [says, expert]),
		...probes.waits.flatMap(({ asks }) => [asks])
	];
	// One word alone, and a length alone, is also a word or a length of the room.
	return [...persons, ...reasons, ...departures, ...told].filter(
		(says) => says.includes('.') || says.split(' ').length > 2
	);
}

/** Names of taped points, and sides, are told in words of setting out. */
const OF_THE_WALL = [
	'to the left',
	'to the right',
	'from the datum line',
	'off the wall',
	'above the floor of the',
	'back off the wall'
];

/** Everything that goes with the pack: sheets, words for who cannot see them, pictures, the table of marks. */
function filesOf(plan: Plan, how: OnPaper): readonly string[] {
	const pack = packOf(plan, how);
	return [...saidOn(pack), ...pack.flatMap((d) => svgOf(d).split(/<[^>]*>|\n/)), csvOf(markTable(plan))];
}

function leaks(plan: Plan, papers: readonly OnPaper[]): readonly string[] {
	const never = ofPersons(plan).filter((says) => !OF_THE_WALL.some((words) => says.startsWith(words)));
	const found = papers.flatMap((how) => {
		const lines = filesOf(plan, how);
		const all = lines.join(' ').replace(/\s+/g, ' ');
		return [
			...never.filter((says) => all.includes(says)),
			...HEALTH.flatMap((word) => lines.filter((line) => word.test(line)).map((line) => `${String(word)}: ${line}`))
		];
	});
	return [...new Set(found)];
}

/** A client of whom everything that could be told is told, in words that would be known again. */
const TOLD = {
	...CLIENT,
	initials: 'Z.Q.',
	goals: 'To wash without the night nurse.',
	mass: { value: 171, how: 'measured', by: 'Nurse Zuniga' },
	tires: { value: true, how: 'told', by: 'Aunt Zelda' },
	skinAtRisk: { value: true, how: 'observed' },
	chair: { seatHeight: { value: 503, how: 'measured', typed: 'Zuniga 503 mm' } },
	helpedBy: { value: 'one', how: 'told' }
};

describe('nothing of a person', () => {
	test.each(Object.keys(CLIENT_PLACES).map((name, i) => [name, i % 2 === 0 ? 'mm' : 'in'] as const))(
		'[drawing R17] whoever fits the parts reads nothing of the person, on no paper: %s in %s',
		(name, unit) => {
			const plan = clientPlan(name);
			expect(plan.marks.length).toBeGreaterThan(0);
			expect(
				leaks(
					plan,
					PAPERS.filter(({ tape }) => tape.unit === unit)
				)
			).toEqual([]);
		},
		60_000
	);

	test('[drawing R17] nor in rooms of every type, for an adult and a child', () => {
		for (const room of Object.values(TEST_ROOMS)) {
			for (const client of [CHILD, CLIENT]) expect(leaks(planOf(room, client), USUAL)).toEqual([]);
		}
	}, 60_000);

	test('[drawing R17] no name, weight or free text of whoever filled the record in, though the force is what the weight asks', () => {
		const plan = fixturePlan(fixtureCase({ client: TOLD }));
		expect(plan.scene.holds.demand.because).toContain('weight');
		const all = filesOf(plan, { reader: 'installer', sheet: 'A4', tape: { unit: 'mm' } }).join('\n');
		for (const says of ['Z.Q.', 'Zuniga', 'Zelda', '171', 'nurse', 'heaviest', '503']) expect(all).not.toContain(says);
		expect(leaks(plan, PAPERS)).toEqual([]);
		// The therapist is told it.
		const theirs = packOf(plan, { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } });
		expect(theirs.flatMap((d) => d.entities.map((e) => (e.kind === 'text' ? e.text : ''))).join(' ')).toContain(
			'heaviest user'
		);
	});

	test('[drawing R17] while nobody is weighed the mark is open and whoever fits it is told to ring, not to ask', () => {
		const unweighed = { ...CLIENT, mass: undefined };
		const plan = fixturePlan(fixtureCase({ client: unweighed }));
		expect(plan.findings.some((f) => f.missing?.includes('How heavy'))).toBe(true);
		const all = saidIn(plan, { reader: 'installer', sheet: 'A4', tape: { unit: 'mm' } }).join(' ');
		expect(all).toContain('ring before it is fitted');
		expect(all).toContain('open: do not drill');
		expect(leaks(plan, USUAL)).toEqual([]);
	});

	test('[drawing R17] what waits for an answer about a person, and questions about one, are not told', () => {
		const plan = fixturePlan(fixtureCase({ client: CHILD }));
		const asks = 'Can Zelda feel the heat of the water with her left hand?';
		const row = { ...plan.findings[0]?.row } as Plan['findings'][number]['row'];
		const probes: Plan['probes'] = {
			...plan.probes,
			questions: [{ id: 'q1', about: ['control'], asks }],
			waits: [{ row: 'row', about: ['seat'], whom: 'Zelda', asks }]
		};
		const unknown = {
			row: { ...row, origin: 'body', measure: 'transfer-side-agrees' },
			answer: 'unknown',
			missing: asks
		};
		const findings = [...plan.findings, { ...unknown, about: ['control'], strength: 'must' }] as Plan['findings'];
		for (const how of USUAL) {
			const all = filesOf({ ...plan, probes, findings }, how).join('\n');
			expect(all).not.toContain('Zelda');
			expect(all).not.toContain('heat of the water');
			expect(all).toContain('ring before it is fitted');
		}
	});

	test('[drawing R17] who signed for the load is named to the therapist alone', () => {
		const signed = (c: Case): Case => ({
			...c,
			enclosure: {
				...c.enclosure,
				loadStatement: { document: 'Letter of 3 March', by: 'Zelda Quill', load: 2000 }
			}
		});
		const plan = fixturePlan(signed(fixtureCase({ client: TOLD })));
		const [how] = USUAL;
		if (!how) throw new RangeError('a paper is usual');
		const all = saidIn(plan, how).join(' ');
		expect(all).toContain('Letter of 3 March');
		expect(all).not.toContain('Zelda');
	});

	test('[drawing R17] the words that are looked for are found where they are', () => {
		const plan = clientPlan('turns-left');
		const theirs = packOf(plan, { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } });
		const lines = theirs.flatMap((d) => d.entities.flatMap((e) => (e.kind === 'text' ? [e.text] : [])));
		const all = lines.join(' ');
		expect(HEALTH.some((word) => word.test(all))).toBe(true);
		expect(ofPersons(plan).some((says) => all.includes(says))).toBe(true);
	});
});
