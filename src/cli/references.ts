import { ROW_KINDS, kindOf } from '#core/rules/kind.ts';
import { toleranceOf } from '#core/rules/limit.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';
import type { Pack, Quantity, Row } from '#core/rules/row.ts';
import { formatFigure } from '#core/units/format.ts';
import { inches } from '#core/units/length.ts';
import { wrapped } from './wrapped.ts';

const DONE = 0;
const BAD_INPUT = 2;

const UNITS: Readonly<Partial<Record<Quantity['unit'], string>>> = { degC: 'C', degF: 'F', ratio: '' };

/** Inches in halves to sixteenths as a document prints them, or in tenths; a fall as one in so many. */
function figure({ n, unit }: Quantity): string {
	if (unit === 'ratio') return `1:${String(Math.round(1 / n))}`;
	return unit === 'in' && Number.isInteger(n * 16) ? formatFigure(inches(n), { unit }) : String(n);
}

/** Figures with the unit they share. */
const counted = (limits: readonly Quantity[]): string => {
	const unit = limits[0]?.unit ?? 'mm';
	return `${limits.map(figure).join(' to ')} ${UNITS[unit] ?? unit}`.trimEnd();
};

/** The millimetres, or degrees Celsius, a document prints beside its own figures. */
function beside(limits: readonly Quantity[]): string {
	const printed = limits.flatMap((q) => (q.printed === undefined ? [] : [String(q.printed)]));
	return printed.length === 0 ? '' : ` (${printed.join(' to ')} ${limits[0]?.unit === 'degF' ? 'C' : 'mm'})`;
}

/** What a row allows, in the unit its document prints. */
function limits({ allowed }: Row): string {
	if (allowed === 'yes') return 'so';
	if (allowed === 'no') return 'not so';
	if ('ask' in allowed) return 'asked';
	const { min, max, strict } = allowed;
	// What a row says is so or falls short of it: a distance of none says nothing.
	if (min?.n === 0 && !max) return 'so';
	const all = [min, min && max && min.n === max.n ? undefined : max].filter((q) => q !== undefined);
	const words = `${counted(all)}${beside(all)}`;
	if (min && max) return words;
	return `${min ? (strict ? 'more than' : 'at least') : strict ? 'less than' : 'at most'} ${words}`;
}

const part = (head: string, lines: readonly string[]): string[] => (lines.length > 0 ? ['', head, ...lines] : []);

const unique = (words: readonly string[]): string => [...new Set(words)].join('; ');

/** How many there are of each, none left out that is there: "3 range, 2 advice". */
function numbers<T extends string>(all: readonly T[], order: readonly T[]): string {
	const some = order.map((one) => [all.filter((other) => other === one).length, one] as const);
	return some.flatMap(([n, one]) => (n > 0 ? [`${String(n)} ${one}`] : [])).join(', ');
}

function rowLines(row: Row): string[] {
	const { id, clause, source, advice, ourTolerance, says, note } = row;
	const marks = [...(advice ? ['advice'] : []), ...(source.how === 'seen' ? [] : [source.how])];
	const about = ourTolerance === undefined ? '' : `, ${String(ourTolerance)} mm of ours either way`;
	return [
		`${id}: ${[clause, `${limits(row)}${about}`, ...marks].join('; ')}`,
		`  ${says}${note === undefined ? '' : ` ${note}`}`
	];
}

function differs({ differsFrom }: Pack): string[] {
	if (!differsFrom) return [];
	const other = DOCUMENTS.find(({ id }) => id === differsFrom.pack);
	const { instead } = differsFrom;
	return [
		`Holds what differs from ${other?.name ?? differsFrom.pack}, whose rows count with it${instead.length > 0 ? ' but for those it has instead' : ''}.`,
		...(instead.length > 0 ? [`Instead of: ${instead.join(', ')}.`] : [])
	];
}

function packLines(pack: Pack): string[] {
	const { id, name, scope, rows, requires, judgement } = pack;
	const tolerance = toleranceOf(pack);
	const hows = rows.map(({ source }) => source.how);
	return [
		`${name} [${id}]`,
		`Editions read: ${unique(rows.map(({ document, edition }) => `${document} ${edition}`.trim()))}.`,
		`Binds: ${scope?.binds ?? ''}`,
		`Homes: ${scope?.homes ?? ''}`,
		...differs(pack),
		tolerance === undefined
			? 'Tolerance of ours: none.'
			: `Tolerance of ours: ${String(tolerance)} mm either way on what is printed as one value.`,
		`${String(rows.length)} rows: ${numbers(rows.map(kindOf), ROW_KINDS)}. Known: ${numbers(hows, [...new Set(hows)])}.`,
		...part(
			'Asks for',
			requires.map(({ id, clause, says }) => `${id}: ${clause}; ${says}`)
		),
		...part('Rows', rows.flatMap(rowLines)),
		...part(
			'Left to judgement',
			judgement.map((one) => `- ${one}`)
		)
	];
}

function run(words: readonly string[]): number {
	const [id] = words;
	const asked = DOCUMENTS.filter((pack) => id === undefined || pack.id === id);
	if (words.length > 1 || asked.length === 0) {
		const ids = DOCUMENTS.map((pack) => pack.id).join(', ');
		const says = `expected no word or one of ${ids} - saw "${words.join(' ')}"`;
		for (const line of wrapped(says)) console.error(line);
		return BAD_INPUT;
	}
	console.log(asked.map((pack) => packLines(pack).flatMap(wrapped).join('\n')).join('\n\n\n'));
	return DONE;
}

process.exitCode = run(process.argv.slice(2));
