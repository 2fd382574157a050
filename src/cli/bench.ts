import { placement, type Line } from './bench-placement.ts';
import { sheets } from './bench-sheets.ts';

const BENCHES: Readonly<Record<string, () => AsyncGenerator<Line, void, undefined>>> = { placement, sheets };

const COLUMN = 12;
const NAMES = 34;

/** A line of cells under its heads; times to the millisecond. */
function row(cells: readonly (readonly [key: string, text: string])[]): string {
	const wide = (key: string, text: string) =>
		key === 'bench' || key === 'case' ? text.padEnd(NAMES) : text.padStart(COLUMN);
	return cells.map(([key, text]) => wide(key, text)).join(' ');
}

function told(key: string, value: string | number | null): string {
	if (value === null) return '-';
	if (typeof value === 'string' || Number.isInteger(value)) return String(value);
	return key === 'ratio' ? value.toFixed(1) : `${value.toFixed(3)} s`;
}

/** Prints lines as they come: one object a line, or a table with heads wherever the bench changes. */
async function show(lines: AsyncGenerator<Line, void, undefined>, how: 'json' | 'table'): Promise<void> {
	let bench = '';
	for await (const line of lines) {
		// A time beside a peer means something only where both came to one answer.
		if (line['cost'] === 'not the same') process.exitCode = 1;
		if (how === 'json') {
			console.log(JSON.stringify(line));
			continue;
		}
		const keys = Object.keys(line);
		if (line.bench !== bench) console.log(row(keys.map((key) => [key, key])));
		bench = line.bench;
		console.log(row(keys.map((key) => [key, told(key, line[key] ?? null)])));
	}
}

const [name, ...options] = process.argv.slice(2);
const bench = name !== undefined && Object.hasOwn(BENCHES, name) ? BENCHES[name] : undefined;
const [odd] = options.filter((option) => option !== '--json');
if (!bench) {
	const saw = name === undefined ? 'none' : `"${name}"`;
	console.error(`expected the name of a bench, one of ${Object.keys(BENCHES).join(', ')} - saw ${saw}`);
	process.exitCode = 2;
} else if (odd !== undefined) {
	console.error(`expected nothing but --json after the name of the bench - saw "${odd}"`);
	process.exitCode = 2;
} else {
	await show(bench(), options.length > 0 ? 'json' : 'table');
}
