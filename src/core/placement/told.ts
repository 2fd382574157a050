import type { Mark } from '#core/case/accessory.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Finding, Quantity, Row } from '#core/rules/row.ts';
import { formatLength } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';

/** What a kind of accessory is called in a sentence. */
export const called = ({ accessory }: Mark): string => accessory.kind.replaceAll('-', ' ');

/** A length in a sentence that `onTape` may tell on another tape: always mm. */
export const inMm = (length: number): string => formatLength(mm(length), { unit: 'mm' });

/** How far something is out, where a sliver would round to nothing on a tape. */
export const outBy = (length: number): string => (length < 2 ? 'less than 2 mm' : inMm(length));

/** A figure of a row in a sentence. */
export function figureOf({ measure }: Row, value: number): string {
	const { unit } = MEASURES[measure];
	if (unit === 'yes') return value > 0 ? 'so' : 'not so';
	return unit === 'mm' ? inMm(value) : `${String(Number(value.toFixed(2)))} ${unit}`;
}

/** What a row allows, in the unit its document prints. */
export function limitOf({ allowed }: Row): string {
	if (allowed === 'yes' || allowed === 'no') return `must be ${allowed}`;
	if ('ask' in allowed) return 'to be asked';
	const { min, max } = allowed;
	if (min && max) return min.n === max.n ? `exactly ${words(min)}` : `${words(min)} to ${words(max)}`;
	return min ? `at least ${words(min)}` : max ? `at most ${words(max)}` : 'no limit';
}

const words = ({ n, unit }: Quantity): string => `${String(n)} ${unit}`;

/** Where a row is written. */
export const citation = ({ id, document, edition, clause }: Row): string => `${id}, ${document} ${edition}, ${clause}`;

/** What a row says as the end of a sentence of ours that names one of its marks, `it`, or none; the other mark is named too. */
export function clauseOf(finding: Pick<Finding, 'row' | 'about'>, marks: readonly Mark[], it?: Mark): string {
	const clause = ownWords(finding, marks, it);
	const other = marks.find((m) => m !== it && finding.about.includes(m.accessory.id));
	return other && !clause.includes(called(other)) ? `${clause} (here the ${called(other)})` : clause;
}

function ownWords({ row, about }: Pick<Finding, 'row' | 'about'>, marks: readonly Mark[], it?: Mark): string {
	const subject = marks.find((m) => m.accessory.id === about[0]);
	const name = !subject || subject === it ? 'it' : `the ${called(subject)}`;
	const says = row.says.replace(/\.$/, '');
	const [hand, ...more] = subject?.accessory.hands ?? [];
	const reached = /^It is reached (.*)$/s.exec(says);
	if (reached && hand && more.length === 0) return `the ${hand} hand reaches ${name} ${reached[1] ?? ''}`;
	if (says.startsWith('It ')) return name + says.slice(2);
	// A name or an abbreviation keeps its capital.
	return /^[A-Z][a-z ]/.test(says) ? says.charAt(0).toLowerCase() + says.slice(1) : says;
}
