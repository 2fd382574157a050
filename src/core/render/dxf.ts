import type { Drawing, Entity, Frame, Path, Spot, Text } from '#core/drawing/entity.ts';
import { LAYERS, type Layer, type Style } from '#core/drawing/layers.ts';
import { PT } from '#core/drawing/type.ts';
import { polylinesOf, type Polyline } from './dxf-polyline.ts';
import { DxfRecords, type Pair } from './dxf-records.ts';
import { dxfFile, type DxfLayer } from './dxf-tables.ts';
import { refuseMissing } from './missing.ts';

/** Height of a capital of the paper's font in parts of its size. Source: sCapHeight 660 of 1000, table OS/2. */
const CAPITALS = 0.66;
/** Texts that stand beside the wall: its title, schedule and cautions. */
const NOTES = 'NOTES';
const TEXT = 'TEXT';
const ALIGNED = { start: 0, middle: 1, end: 2 } as const;

/**
 * The drawing of a wall as a DXF file of the version of AutoCAD 2000, in mm at the true size of the wall.
 * Frame: x right, y up from the corner the wall is measured from, at the datum line.
 * Shape: lines of the wall's picture on the drawing's own layers, its texts on TEXT, texts beside it on NOTES; pictures at
 * another scale are left out, and every fill but that of the datum's sign; the same drawing gives the same bytes.
 * Fails: RangeError when the drawing is not one of a wall, GlyphMissing when the fonts lack a sign.
 */
export function dxfOf(drawing: Drawing): string {
	const { frame } = drawing;
	if (!frame) throw new RangeError('a DXF is made of the drawing of a wall');
	refuseMissing([drawing]);
	const records = new DxfRecords();
	const entities = drawing.entities.flatMap((e) => entityPairs(e, frame, records));
	const used = new Set(drawing.entities.flatMap((e) => (isDrawn(e, frame) ? [e.layer] : [])));
	const layers = [...used].map((layer) => layerOf(layer, frame));
	const words = [TEXT, NOTES].map((name): DxfLayer => ({ name, tone: 'ink', width: 0.18, dash: [] }));
	return dxfFile({ layers: [...layers, ...words], entities }, records);
}

/** A path that has a line, or is the sign of the datum. */
const isDrawn = (e: Entity, frame: Frame): e is Path =>
	e.kind === 'path' && e.picture === frame.picture && (hasLine(e.layer) || e.layer === 'datum-sign');

/** Discs of letters are filled on paper; here their edge is drawn. */
const hasLine = (layer: Layer): boolean => styleOf(layer).stroke !== undefined || layer === 'tag' || layer === 'solid';

const styleOf = (layer: Layer): Style => LAYERS[layer];

const nameOf = (layer: Layer): string => layer.toUpperCase();

function layerOf(layer: Layer, { scale }: Frame): DxfLayer {
	const { stroke, fill, width, dash = [] } = styleOf(layer);
	return { name: nameOf(layer), tone: stroke ?? fill ?? 'ink', width, dash: dash.map((length) => length * scale) };
}

function entityPairs(e: Entity, frame: Frame, records: DxfRecords): readonly Pair[] {
	if (e.kind === 'text') return textPairs(e, frame, records);
	if (!isDrawn(e, frame)) return [];
	const layer = nameOf(e.layer);
	return polylinesOf(e, frame).flatMap((line) =>
		e.layer === 'datum-sign' ? solid(line, layer, records) : linePairs(line, layer, records)
	);
}

function linePairs(line: Polyline, layer: string, records: DxfRecords): readonly Pair[] {
	if (line.circle) {
		const { centre, radius } = line.circle;
		return [...records.entity('CIRCLE', layer), [100, 'AcDbCircle'], ...at(10, centre), [40, radius]];
	}
	const points = line.points.flatMap(({ to: [x, y], bulge }): Pair[] => [
		[10, x],
		[20, y],
		...(bulge === 0 ? [] : [[42, bulge] as const])
	]);
	const head: readonly Pair[] = [
		[100, 'AcDbPolyline'],
		[90, line.points.length],
		[70, line.closed ? 1 : 0]
	];
	return [...records.entity('LWPOLYLINE', layer), ...head, ...points];
}

/** A filled triangle: the third corner is said twice. */
function solid({ points }: Polyline, layer: string, records: DxfRecords): readonly Pair[] {
	const [a, b, c] = points;
	if (!a || !b || !c) return [];
	const corners = [a, b, c, c].flatMap(({ to }, i) => at(10 + i, to));
	return [...records.entity('SOLID', layer), [100, 'AcDbTrace'], ...corners];
}

function textPairs(text: Text, frame: Frame, records: DxfRecords): readonly Pair[] {
	const own = text.picture === frame.picture;
	if (!own && text.picture !== undefined) return [];
	const place = at(10, spotIn(frame, text.at));
	const aligned = ALIGNED[text.anchor];
	return [
		...records.entity('TEXT', own ? TEXT : NOTES),
		[100, 'AcDbText'],
		...place,
		[40, text.size * PT * CAPITALS * frame.scale],
		[1, written(text.text)],
		[7, text.weight === 'semibold' ? 'SEMIBOLD' : 'STANDARD'],
		[72, aligned],
		// What is aligned otherwise than at its start has its point a second time.
		...(aligned === 0 ? [] : at(11, spotIn(frame, text.at))),
		[100, 'AcDbText']
	];
}

const at = (code: number, [x, y]: Spot): readonly Pair[] => [
	[code, x],
	[code + 10, y],
	[code + 20, 0]
];

const spotIn = ({ scale, origin }: Frame, [x, y]: Spot): Spot => [(x - origin[0]) * scale, (origin[1] - y) * scale];

/**
 * A text as a DXF has it: a minus that every font has, all else beyond ASCII by its number, and what would be taken for
 * a sign of control as itself.
 */
function written(text: string): string {
	const plain = text.replaceAll('\u2212', '-').replaceAll('^', '^ ').replaceAll('%%', '%%037%%037');
	return plain.replace(/[^ -~]/g, (c) => `\\U+${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`);
}
