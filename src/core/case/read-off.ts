import { z } from 'zod';
import { mm, type Mm } from '#core/units/length.ts';
import { PLACEABLE, type Flange, type Kind, type Variant } from './accessory.ts';
import { length, text } from './fact.ts';
import type { Case } from './record.ts';

/** A real bar as read off with rule and eye. Units: mm; `across`, `circle` and `hole` are diameters, `load` in N. */
export const readOff = z.strictObject({
	/** What is written on it. */
	name: text(80),
	/** Centre to centre of its flanges. */
	centres: length(200, 1500),
	diameter: length(20, 60),
	/** From the face of the wall to the axis of the bar. */
	standOff: length(40, 150),
	flange: z.strictObject({
		across: length(40, 160),
		/** The circle its holes stand on. */
		circle: length(20, 140),
		holes: z.literal([2, 3, 4]),
		hole: length(3, 13)
	}),
	/** The load that is marked on it. */
	load: z.number().min(1).max(20000).optional()
});

/** A real bar that was read off. */
export type ReadOff = z.output<typeof readOff>;

const LETTERS = { 'horizontal-bar': 'h', 'vertical-bar': 'v' } as const;

type Readable = keyof typeof LETTERS;

/** Whether the real part of a kind of accessory can be read off. */
export const isReadable = (kind: Kind): kind is Readable => kind in LETTERS;

/** The id of the variant a real bar is: it says all that the plan needs of it. */
export function readOffId(kind: Readable, { centres, diameter, standOff, flange }: ReadOff): string {
	const { across, circle, holes, hole } = flange;
	return ['read', LETTERS[kind], centres, diameter, standOff, across, circle, holes, hole].join('_');
}

const FIGURES = /^read_([hv])_([\d.]+)_([\d.]+)_([\d.]+)_([\d.]+)_([\d.]+)_([234])_([\d.]+)$/;

/** The real bar an id of `readOffId` tells. Shape: undefined for any other id. */
export function readOffVariant(id: string): Variant | undefined {
	const [, way, ...texts] = FIGURES.exec(id) ?? [];
	const [centres, diameter, standOff, across, circle, holes, hole] = texts.map(Number);
	if (!centres || !diameter || !standOff || !across || !circle || !holes || !hole) return undefined;
	const flange: Flange = { radius: across / 2, circle: circle / 2, holes, standOff, hole };
	return barOf(id, way === 'v', { length: mm(centres), diameter: mm(diameter), flange });
}

/** A case whose given places have the real parts that were read off. Shape: done twice it changes nothing more. */
export function asRead(c: Case): Case {
	const places = Object.entries(c.places).map(([id, place]) => {
		const part = c.parts[id];
		const kind = PLACEABLE[id]?.kind;
		return [id, part && kind && isReadable(kind) ? { ...place, variant: readOffId(kind, part) } : place] as const;
	});
	return { ...c, places: Object.fromEntries(places) };
}

interface Bar {
	readonly length: Mm;
	readonly diameter: Mm;
	readonly flange: Flange;
}

function barOf(id: string, upright: boolean, { length, diameter, flange }: Bar): Variant {
	const { radius, standOff } = flange;
	const far = upright ? { x: mm(0), y: length } : { x: length, y: mm(0) };
	return {
		id,
		kind: upright ? 'vertical-bar' : 'horizontal-bar',
		name: `${upright ? 'vertical' : 'horizontal'} bar as read off, ${String(length)} mm c/c`,
		outline: { x0: -radius, y0: -radius, x1: far.x + radius, y1: far.y + radius },
		brackets: [{ x: mm(0), y: mm(0) }, far].map((at) => ({ ...at, kind: 'flange', radius: mm(radius), flange })),
		grip: { x0: 0, y0: 0, x1: far.x, y1: far.y },
		gripOff: mm(standOff),
		length,
		diameter,
		gap: mm(standOff - diameter / 2),
		depth: mm(standOff + diameter / 2)
	};
}
