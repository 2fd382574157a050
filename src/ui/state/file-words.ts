import type { Reader } from '#core/drawing/sheet.ts';
import { wallName } from '#core/drawing/setting-out.ts';
import type { FileName } from '#core/files/names.ts';
import { WALL_IDS } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';

/** Whose sheets they are, as said on the screen. */
export const READER_WORDS: Readonly<Record<Reader, string>> = {
	hers: 'Client',
	therapist: 'Therapist',
	installer: 'Installer'
};

/** What each set of sheets is for, and what it leaves out. */
export const READER_SAYS: Readonly<Record<Reader, string>> = {
	hers: 'Large print: where things go, how they are used, yes or not this or not now, and a line to sign.',
	therapist: 'Everything, health data too: findings, reach, departures, documents compared, what is known.',
	installer: 'What goes where, into what, with what force, and what to ask. Nothing about the person.'
};

const KINDS = { svg: 'SVG', dxf: 'DXF, true size' } as const;

/** What a file is called on the screen. */
export function fileWords(plan: Plan, name: FileName): string {
	const wall = WALL_IDS.find((id) => name.startsWith(`${id}-wall.`));
	if (wall) return `${wallName(plan, wall)}, ${name.endsWith('.dxf') ? KINDS.dxf : KINDS.svg}`;
	switch (name) {
		case 'hers.pdf':
			return 'Sheets for the client, PDF';
		case 'therapist.pdf':
			return 'Sheets for the therapist, PDF';
		case 'installer.pdf':
			return 'Sheets for the installer, PDF';
		case 'marks.csv':
			return 'Marks, CSV table';
		case 'holes.csv':
			return 'Holes of parts that were read off, CSV table';
		case 'summary.txt':
			return 'Text for your own record';
		default:
			return 'The plan as data, JSON';
	}
}

const TYPES: Readonly<Record<string, string>> = {
	pdf: 'application/pdf',
	svg: 'image/svg+xml',
	dxf: 'image/vnd.dxf',
	csv: 'text/csv',
	txt: 'text/plain',
	json: 'application/json'
};

/** The media type of a file. Source: IANA registry; DXF after its own registration, image/vnd.dxf. */
export const typeOf = (name: FileName): string => TYPES[name.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
