import type { Layer, Tone } from './layers.ts';
import type { Run, Weight } from './type.ts';

/** A point of the sheet. Units and frame: mm, x right, y down from the upper left corner. */
export type Spot = readonly [x: number, y: number];

/** An arc of a circle from where the pen is, the short way round; clockwise as seen on the sheet. */
export interface Arc {
	readonly by: 'arc';
	readonly to: Spot;
	readonly radius: number;
	readonly clockwise: boolean;
}

/** One step of a path. */
export type Segment = { readonly to: Spot; readonly by: 'move' | 'line' } | Arc;

interface Common {
	/** Stable over drawings of the same thing, so that a screen touches only what changed. */
	readonly id: string;
	/** The accessory or row it speaks of. */
	readonly about?: string;
	/** The picture it is a part of, a key of the drawing's `pictures`. */
	readonly picture?: string;
}

/** Lines and arcs of one layer. Shape: no arc is longer than half a circle. */
export interface Path extends Common {
	readonly kind: 'path';
	readonly layer: Layer;
	readonly d: readonly Segment[];
	readonly closed: boolean;
}

/** One line of text. Units: mm, `size` pt; `width` from the advances of the embedded font. */
export interface Text extends Common {
	readonly kind: 'text';
	readonly at: Spot;
	readonly anchor: 'start' | 'middle' | 'end';
	readonly size: number;
	readonly weight: Weight;
	readonly tone: Tone;
	/** As read aloud: fractions as 1/2. */
	readonly text: string;
	/** As set: a fraction is three runs. */
	readonly runs: readonly Run[];
	readonly width: number;
	/** A heading and its rank, as for who listens to the file. */
	readonly heading?: 1 | 2;
	/** As it was typed, where the fonts lack a sign of it: a file of such a text is refused. */
	readonly typed?: string;
}

/**
 * Where a wall lies in a drawing of it, so that a file can be at the wall's own size.
 * Units and frame: mm of the sheet; one of them is `scale` mm of the wall.
 */
export interface Frame {
	readonly scale: number;
	/** The corner the wall is measured from, at the datum line. */
	readonly origin: Spot;
	/** The picture that is at this scale, a key of the drawing's `pictures`. */
	readonly picture: string;
}

/** One thing on a sheet. */
export type Entity = Path | Text;

/** Everything on one sheet, in drawing order. Units and frame: mm, x right, y down from the upper left corner. */
export interface Drawing {
	readonly title: string;
	readonly size: { readonly width: number; readonly height: number };
	readonly entities: readonly Entity[];
	/** What each picture shows, in words for who cannot see it. Shape: the entities of a picture stand together. */
	readonly pictures?: Readonly<Record<string, string>>;
	/** The language of its words as BCP 47 has it; English where it says nothing. */
	readonly language?: string;
	/** Of the drawing of a wall. */
	readonly frame?: Frame;
}

/** A rectangle of the sheet. Units and frame: mm, y down. Shape: x0 <= x1, y0 <= y1. */
export interface Box {
	readonly x0: number;
	readonly y0: number;
	readonly x1: number;
	readonly y1: number;
}

/** Whether two rectangles share an area. */
export const overlap = (a: Box, b: Box): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;

/** A rectangle grown on every side. */
export const widened = (b: Box, by: number): Box => ({ x0: b.x0 - by, y0: b.y0 - by, x1: b.x1 + by, y1: b.y1 + by });

/** Entities as the parts of one picture. */
export const pictured = (picture: string, entities: readonly Entity[]): readonly Entity[] =>
	entities.map((e) => ({ ...e, picture }));
