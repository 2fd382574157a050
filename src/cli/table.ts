import { misleadsIn } from '#core/body/misleads.ts';
import { disagreementsOf } from '#core/needs/disagreements.ts';
import { lookAgainWords, notAsked } from '#core/fact-words.ts';
import { lookAgainOf } from '#core/needs/look-again.ts';
import { reinforcementOf } from '#core/needs/reinforcement.ts';
import { seatLinesOf } from '#core/needs/seat-lines.ts';
import { factName } from '#core/fact-words.ts';
import type { Alternative, WayOut } from '#core/placement/answer.ts';
import type { Plan } from '#core/plan.ts';
import { handTestWords, reachTestsIn } from '#core/reach-words.ts';
import { reportOf, type Beside } from '#core/report.ts';
import { departureOf } from '#core/rules/departures.ts';
import { asksFor, sentence } from '#core/rules/sentence.ts';
import { STRENGTHS, type Answer, type Finding } from '#core/rules/row.ts';
import { formatLength, onTape, type Tape } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import { bandWords, basisWords, driftWords, statusWords } from '#core/words.ts';
import type { Worth } from '#core/worth.ts';
import { wrapped } from './wrapped.ts';

const HEADS = ['mark', 'what', 'wall', 'along wall', 'from datum', 'above floor'];

function columns(rows: readonly (readonly string[])[]): string[] {
	const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((r) => (r[i] ?? '').length)));
	return rows.map((r) =>
		r
			.map((cell, i) => cell.padEnd(widths[i] ?? 0))
			.join('  ')
			.trimEnd()
	);
}

function marksOf(plan: Plan, tape: Tape): string[] {
	const length = (n: number) => formatLength(mm(n), tape);
	const rows = reportOf(plan).accessories.map((a, i) => {
		const name = plan.marks[i]?.variant.name ?? a.kind;
		return [a.id, name, a.wall, length(a.x), length(a.y), length(a.aboveFloor)];
	});
	return rows.length > 0 ? columns([HEADS, ...rows]) : [];
}

const VERDICT = {
	carries: 'carries by calculation',
	marginal: 'marginal by calculation',
	'does not': 'does not carry by calculation',
	'not known': 'not known whether it carries'
} as const;

/** What of a part that no screw holds. */
const UNHELD = {
	legs: 'on its own legs, nothing into the wall',
	rims: 'lies on both rims, nothing into the wall',
	'floor-and-ceiling': 'pressed between floor and ceiling, nothing into the wall',
	ceiling: 'hangs from the ceiling or a box high up, nothing into the wall here',
	plate: 'plate only, nothing hangs on it'
} as const;

/** Every fixing: what it bites, what that comes to, and the loads beside what the worst screw takes; alike ones once. */
function fixingsOf(plan: Plan, tape: Tape): string[] {
	return reportOf(plan).accessories.flatMap(({ id, fixings }, i) => {
		if (fixings.length === 0) return [`${id}: ${UNHELD[plan.marks[i]?.variant.stands ?? 'plate']}`];
		const says = fixings.map(({ into, verdict, fastener, packing, hollow, holes = [], used = [] }) => {
			const bites = verdict === 'does not' && into === 'not known' ? 'nothing recorded here' : onTape(into, tape);
			const solid = hollow === undefined ? '' : `${formatLength(mm(hollow), tape)} hollow packed solid`;
			if (verdict === 'carries' && used.length === 0) {
				return [bites, 'light screws', solid].filter((part) => part !== '').join('; ');
			}
			const loads = used.map(({ what, share }) => `${what} ${String(Math.round(share * 100))} %`).join(', ');
			const behind = packing === undefined ? '' : `${formatLength(mm(packing), tape)} packing behind it`;
			const screws = fastener === undefined ? '' : `${fastener} in each hole`;
			const at = holes.map(([x, y]) => `${formatLength(mm(x), tape)} / ${formatLength(mm(y), tape)}`);
			const drilled = holes.length === 0 ? '' : `holes along / from datum ${at.join(', ')}`;
			return [bites, screws, verdict ? VERDICT[verdict] : '', loads, behind, solid, drilled]
				.filter((part) => part !== '')
				.join('; ');
		});
		const alike = says.every((one) => one === says[0]);
		return alike
			? [`${id}, ${String(says.length)} of ${String(says.length)}: ${says[0] ?? ''}`]
			: says.map((one, i) => `${id}, ${String(i + 1)} of ${String(says.length)}: ${one}`);
	});
}

const adviceOf = (plan: Plan): string[] =>
	reportOf(plan).accessories.flatMap(({ id, advice }) => (advice.length > 0 ? [`${id}: ${advice.join(' ')}`] : []));

const backingOf = (plan: Plan, tape: Tape): string[] =>
	plan.backing.map(({ wall, rect: { x0, x1, y0, y1 }, marks, thickness, how }) => {
		const [from, to, low, high] = [x0, x1, y0, y1].map((n) => formatLength(mm(n), tape));
		const wood = thickness === undefined ? '' : `, ${formatLength(mm(thickness), tape)} thick`;
		return `${wall} wall, ${from ?? ''} to ${to ?? ''} along, ${low ?? ''} to ${high ?? ''} from the datum line${wood}, for ${marks.join(', ')}. ${how}`;
	});

/** Where a new dwelling is to be solid, whatever is fitted today. */
const keptOf = ({ scene }: Plan, tape: Tape): string[] => {
	const says = reinforcementOf(scene).map(({ wall, rect: { x0, x1, y0, y1 }, of, document, edition, clauses }) => {
		const [from, to, low, high] = [x0, x1, y0, y1].map((n) => formatLength(mm(n), tape));
		return `${wall} wall, ${from ?? ''} to ${to ?? ''} along, ${low ?? ''} to ${high ?? ''} from the datum line, for ${of.join(', ')} (${document} ${edition}, ${clauses.join(', ')}).`;
	});
	return says.length === 0 ? [] : [...says, ALL_PLACES];
};

/** What an area that is to be solid takes in. */
const ALL_PLACES =
	'Every place its rows allow a thing by itself is taken in, in every part that is offered; rows between two things are not, so that an area is rather too large than too small.';

const roomOf = (plan: Plan, tape: Tape): string[] =>
	plan.probes.drifts.map((d) => `${d.accessory}: ${driftWords(d, tape)}`);

/** What the reach test of every hand came to. */
const testedOf = ({ scene }: Plan): string[] =>
	Object.entries(reachTestsIn(scene)).flatMap(([person, hands]) =>
		Object.entries(hands).flatMap(([side, test]) => [
			`${person}, ${side} hand, ${String(test.points)} ${test.points === 1 ? 'point' : 'points'} taped:`,
			...handTestWords(test).map((line) => `  ${line}`)
		])
	);

/** The heights that pull apart for the seat, what leads first, and what would tell of the others. */
function seatHeightOf(plan: Plan): string[] {
	const seat = seatLinesOf(plan);
	if (!seat) return [];
	return [
		seat.says,
		...seat.lines.map(({ name, says, leads, how }) => `${name}, ${how}${leads ? ', leads' : ''}: ${says}`),
		...seat.asks
	];
}

const worthOf = (worth: readonly Worth[], tape: Tape): string[] =>
	worth.map(({ person, path, low, high, says }) => {
		return `${person}, ${factName(path)}: estimated at ${bandWords(low, high, tape)}. It could move: ${onTape(says, tape)}`;
	});

const listed = (names: readonly string[]): string[] => (names.length > 0 ? [`${names.join('; ')}.`] : []);

const wishesOf = ({ scene: { c } }: Plan): string[] =>
	Object.values(c.people).flatMap(({ goals }) => (goals === undefined ? [] : [goals]));

function openOf(plan: Plan, tape: Tape): string[] {
	const about = (ids: readonly string[]) => ids.join(', ') || 'case';
	const { c } = plan.scene;
	const asked = plan.findings
		.filter((f) => f.answer === 'ask' && departureOf(c, f) === undefined)
		.map((f) => `${about(f.about)}: ${asksFor(f, tape)} [${f.row.id}]`);
	return [...plan.probes.questions.map((q) => `${about(q.about)}: ${q.asks}`), ...asked];
}

const whyOf = (plan: Plan, tape: Tape): string[] =>
	plan.marks.flatMap(({ accessory: { id, reason } }) => {
		const held = plan.probes.reasons.filter((r) => r.accessory === id);
		return [
			`${id}: ${onTape(reason, tape)}`,
			...held.flatMap((r) => [`  ${onTape(r.says, tape)}`, `    ${onTape(r.expert, tape)}`])
		];
	});

function findingLine(plan: Plan, f: Finding, tape: Tape): string {
	const reason = departureOf(plan.scene.c, f);
	const accepted = reason === undefined ? '' : ` (accepted: ${reason})`;
	const about = f.about.join(' + ') || 'case';
	const clause = `${f.row.document} ${f.row.edition} ${f.row.clause}`;
	return `${f.answer}, ${f.strength}, ${about}: ${sentence(f, tape)}${accepted} [${f.row.id}, ${clause}]`;
}

const FIRST: readonly Answer[] = ['outside', 'borderline', 'unknown', 'ask', 'inside'];

function findingsOf(plan: Plan, tape: Tape): string[] {
	const order = (f: Finding) => FIRST.indexOf(f.answer) * STRENGTHS.length + STRENGTHS.indexOf(f.strength);
	const shown = plan.findings.filter((f) => f.answer !== 'not-here').toSorted((a, b) => order(a) - order(b));
	return shown.map((f) => findingLine(plan, f, tape));
}

function wayOf({ gives }: WayOut, n: number): string[] {
	const short = (by: number | null) => (by === null ? 'it is not met' : `it is ${String(Math.ceil(by))} mm short`);
	return [
		`${String(n + 1)}. Give up ${gives.length > 1 ? 'these' : 'this'}:`,
		...gives.flatMap((g) => [`  ${g.says} Here ${short(g.short)}. [${g.row}]`, `    Next: ${g.next}`])
	];
}

function alternativeOf({ says, worse, better, proved }: Alternative, n: number): string[] {
	return [
		`${String(n + 1)}. ${says}${proved ? '' : ' Found before the search was stopped.'}`,
		...worse.map((line) => `  worse: ${line}`),
		...better.map((line) => `  better: ${line}`)
	];
}

const part = (head: string, lines: readonly string[]): string[] => (lines.length ? ['', head, ...lines] : []);

function clashParts(plan: Plan): string[] {
	return (plan.clashes ?? []).flatMap(({ rows }) =>
		part(
			rows.length > 1 ? 'Cannot be met together' : 'Cannot be met',
			rows.map((r) => `${r.about.join(' + ')}: ${r.says} [${r.row}]`)
		)
	);
}

/** A plan as a table to read on a terminal: no line above 100 columns, no control character of a record let through. */
export function tableOf(plan: Plan, { waysOut, alternatives, worth }: Beside, tape: Tape): string {
	const { demand } = plan.scene.holds;
	const { c } = plan.scene;
	const told = (lines: readonly string[]) => lines.map((line) => onTape(line, tape));
	const lines = [
		`Case ${c.id}, ${c.lead}: ${statusWords(plan.status)}; ${basisWords(plan.basis)}.`,
		`State ${plan.digest.slice(0, 12)}. Lengths in ${tape.unit}, walls seen from inside, heights from the datum line.`,
		...part('Wanted, in the own words of the client', wishesOf(plan)),
		...part('Marks', marksOf(plan, tape)),
		...part(`Fixings, each for ${String(Math.round(demand.force))} N: ${demand.because}`, fixingsOf(plan, tape)),
		...part('What the parts themselves take: advice', adviceOf(plan)),
		...part('Backing to add', backingOf(plan, tape)),
		...part('Keep solid backing here: new dwelling', keptOf(plan, tape)),
		...part('Room round each mark, all drifting at once', roomOf(plan, tape)),
		...told(clashParts(plan)),
		...part('Ways out', told(waysOut.flatMap(wayOf))),
		...part('Reach test', told(testedOf(plan))),
		...part('Seat height', told(seatHeightOf(plan))),
		...part('Where documents and function disagree', told(disagreementsOf(plan).map(({ says }) => says))),
		...part('Lean', told(plan.probes.leans.map((l) => l.says))),
		...part('Open', openOf(plan, tape)),
		...part('Not asked yet', listed(notAsked(c))),
		...part('Worth measuring', worthOf(worth, tape)),
		...part('Where an estimate misleads', told(Object.values(plan.scene.bodies).flatMap(misleadsIn))),
		...part('To be looked at again', lookAgainWords(lookAgainOf(c))),
		...part('Why here', whyOf(plan, tape)),
		...part('Other plans', told(alternatives.flatMap(alternativeOf))),
		...part('Findings', findingsOf(plan, tape))
	];
	return lines.flatMap(wrapped).join('\n');
}
