import type { Plan } from '#core/plan.ts';
import { departureOf, reportOf } from '#core/report.ts';
import { sentence } from '#core/rules/sentence.ts';
import { STRENGTHS, type Answer, type Finding } from '#core/rules/row.ts';
import { formatLength, onTape, type Tape } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import { basisWords, statusWords } from '#core/words.ts';

const HEADS = ['mark', 'what', 'wall', 'along wall', 'from datum', 'above floor', 'into'];

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
		const into = onTape([...new Set(a.fixings.map((f) => f.into))].join('; '), tape) || 'see the part';
		return [a.id, name, a.wall, length(a.x), length(a.y), length(a.aboveFloor), into];
	});
	return columns([HEADS, ...rows]);
}

function findingLine(plan: Plan, f: Finding, tape: Tape): string[] {
	const reason = departureOf(plan.scene, f.row.id, f.about);
	const accepted = reason === undefined ? '' : ` (accepted: ${reason})`;
	const clause = `${f.row.document} ${f.row.edition} ${f.row.clause}`;
	return [
		f.answer,
		f.strength,
		f.about.join(' + ') || 'case',
		`${sentence(f, tape)}${accepted}`,
		`${f.row.id}, ${clause}`
	];
}

const FIRST: readonly Answer[] = ['outside', 'borderline', 'unknown', 'ask', 'inside'];

function findingsOf(plan: Plan, tape: Tape): string[] {
	const order = (f: Finding) => FIRST.indexOf(f.answer) * STRENGTHS.length + STRENGTHS.indexOf(f.strength);
	const shown = plan.findings.filter((f) => f.answer !== 'not-here').toSorted((a, b) => order(a) - order(b));
	return columns(shown.map((f) => findingLine(plan, f, tape)));
}

const part = (head: string, lines: readonly string[]): string[] => (lines.length ? ['', head, ...lines] : []);

/** A plan as a table to read on a terminal. */
export function tableOf(plan: Plan, tape: Tape): string {
	const { c } = plan.scene;
	return [
		`Case ${c.id}, ${c.lead}: ${statusWords(plan.status)}; ${basisWords(plan.basis)}.`,
		`State ${plan.digest.slice(0, 12)}. Lengths in ${tape.unit}, walls seen from inside, heights from the datum line.`,
		...part('Marks', marksOf(plan, tape)),
		...part(
			'Cannot be met together',
			(plan.clash?.rows ?? []).map((r) => `${r.about.join(' + ')}: ${onTape(r.says, tape)} [${r.row}]`)
		),
		...part(
			'Lean',
			plan.probes.leans.map((l) => onTape(l.says, tape))
		),
		...part(
			'Open',
			plan.probes.questions.map((q) => `${q.about.join(', ') || 'case'}: ${q.asks}`)
		),
		...part(
			'Why here',
			reportOf(plan).accessories.flatMap((a) => a.why.map((why) => `${a.id}: ${onTape(why, tape)}`))
		),
		...part('Findings', findingsOf(plan, tape))
	].join('\n');
}
