import { parseArgs } from 'node:util';
import { REFERENCES, type Reference } from '#core/case/references.ts';
import { SHEET_NAMES, type SheetName } from '#core/drawing/sheet.ts';

/** What the command line asks for. */
export interface Asked {
	readonly file: string;
	readonly out: string | null;
	readonly json: boolean;
	readonly unit: 'mm' | 'in' | null;
	/** The document that leads instead of what the record says. */
	readonly reference: Reference | null;
	/** The sheets drawings are made for; null leaves it to the tape. */
	readonly sheet: SheetName | null;
	/** Figures to set out by stand in the other unit too. */
	readonly both: boolean;
}

/** How to call it. */
export const USAGE =
	'npm run plan -- CASE.json [--out DIR] [--sheet A4|A3|Letter|Tabloid] [--units mm|in] [--both] [--json] [--reference ID]';

/** The words of the command line, or one sentence saying what is wrong with them. */
export function asked(words: readonly string[]): Asked | string {
	try {
		const { values, positionals, tokens } = parseArgs({
			args: [...words],
			allowPositionals: true,
			tokens: true,
			options: {
				out: { type: 'string' },
				json: { type: 'boolean' },
				units: { type: 'string' },
				reference: { type: 'string' },
				sheet: { type: 'string' },
				both: { type: 'boolean' }
			}
		});
		const [file, ...more] = positionals;
		if (file === undefined) return `expected the file of a case - saw none; call it like this: ${USAGE}`;
		if (more.length > 0) return `expected one file - saw ${String(positionals.length)}; call it like this: ${USAGE}`;
		const named = tokens.flatMap((token) => (token.kind === 'option' ? [token.name] : []));
		const twice = named.find((name, i) => named.indexOf(name) < i);
		if (twice !== undefined)
			return `--${twice}: expected once - saw it ${String(named.filter((n) => n === twice).length)} times`;
		const { units } = values;
		if (units !== undefined && units !== 'mm' && units !== 'in') return `--units: expected mm or in - saw "${units}"`;
		const reference = REFERENCES.find((id) => id === values.reference) ?? null;
		if (values.reference !== undefined && reference === null)
			return notOneOf('reference', REFERENCES, values.reference);
		const sheet = SHEET_NAMES.find((name) => name === values.sheet) ?? null;
		if (values.sheet !== undefined && sheet === null) return notOneOf('sheet', SHEET_NAMES, values.sheet);
		const { out = null, json = false, both = false } = values;
		return { file, out, json, unit: units ?? null, reference, sheet, both };
	} catch (error) {
		return `${(error as Error).message}; call it like this: ${USAGE}`;
	}
}

const notOneOf = (option: string, known: readonly string[], saw: string): string =>
	`--${option}: expected one of ${known.join(', ')} - saw "${saw}"`;
