import type { Tone } from '#core/drawing/layers.ts';
import { MODEL_SPACE, type DxfRecords, type Pair } from './dxf-records.ts';

/** A layer and how what is on it is drawn. Units: `width` mm on paper, `dash` mm of the wall, on and off. */
export interface DxfLayer {
	readonly name: string;
	readonly tone: Tone;
	readonly width: number;
	readonly dash: readonly number[];
}

/** Source: AutoCAD colour index; 7 is black on white and white on black. */
const COLOURS: Readonly<Record<Tone, number>> = { ink: 7, grey: 8, pale: 9, tint: 9, cut: 9, paper: 7, datum: 5 };
/** Widths a layer can have. Units: 1/100 mm. Source: group 370, DXF reference. */
const WIDTHS = [0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211];
const MILLIMETRES = 4;
const PAPER_SPACE = '1B';
const DICTIONARY = 'C';
const GROUPS = 'D';

/**
 * A whole file of the version of AutoCAD 2000: header with units, tables, two empty blocks, what is drawn, one dictionary.
 * Shape: line ends of LF, no number of more than 6 digits behind the point.
 * Source: DXF reference, AutoCAD 2000 (AC1015).
 */
export function dxfFile(
	{ layers, entities }: { readonly layers: readonly DxfLayer[]; readonly entities: readonly Pair[] },
	records: DxfRecords
): string {
	const body = [
		...section('CLASSES', []),
		...section('TABLES', tables(layers, records)),
		...section('BLOCKS', [
			...block('*Model_Space', MODEL_SPACE, ['20', '21']),
			...block('*Paper_Space', PAPER_SPACE, ['1C', '1D'])
		]),
		...section('ENTITIES', entities),
		...section('OBJECTS', [
			...dictionary(DICTIONARY, '0', [['ACAD_GROUP', GROUPS]]),
			...dictionary(GROUPS, DICTIONARY, [])
		]),
		[0, 'EOF'] as const
	];
	// The next free number is known only when all are given.
	return spelled([...section('HEADER', header(records.handle())), ...body]);
}

const spelled = (pairs: readonly Pair[]): string =>
	pairs.map(([code, value]) => `${code}\n${valueOf(code, value)}\n`).join('');

/** Codes 10 to 59 and 140 are numbers with a point, all others whole ones or words. */
function valueOf(code: number, value: string | number): string {
	if (typeof value === 'string') return value;
	if (code < 60 || code === 140) return (Number(value.toFixed(6)) + 0).toFixed(6).replace(/(\.\d+?)0+$/, '$1');
	return String(value);
}

const section = (name: string, pairs: readonly Pair[]): readonly Pair[] => [
	[0, 'SECTION'],
	[2, name],
	...pairs,
	[0, 'ENDSEC']
];

const header = (next: string): readonly Pair[] => [
	...variable('$ACADVER', [1, 'AC1015']),
	...variable('$DWGCODEPAGE', [3, 'ANSI_1252']),
	...variable('$HANDSEED', [5, next]),
	...variable('$INSUNITS', [70, MILLIMETRES]),
	...variable('$MEASUREMENT', [70, 1]),
	...variable('$LTSCALE', [40, 1])
];

const variable = (name: string, value: Pair): readonly Pair[] => [[9, name], value];

function tables(layers: readonly DxfLayer[], records: DxfRecords): readonly Pair[] {
	const dashed = layers.filter(({ dash }) => dash.length > 0);
	return [
		...table('VPORT', '8', []),
		...table('LTYPE', '5', [
			...['ByBlock', 'ByLayer', 'CONTINUOUS'].map((name) => lineType(name, [], records)),
			...dashed.map(({ name, dash }) => lineType(name, dash, records))
		]),
		...table('LAYER', '2', [
			layerRecord({ name: '0', tone: 'ink', width: 0.25, dash: [] }, records),
			...layers.map((layer) => layerRecord(layer, records))
		]),
		...table('STYLE', '3', [style('STANDARD', 'arial.ttf', records), style('SEMIBOLD', 'arialbd.ttf', records)]),
		...table('VIEW', '6', []),
		...table('UCS', '7', []),
		...table('APPID', '9', [[...record('APPID', '9', 'AcDbRegAppTableRecord', records), [2, 'ACAD'], [70, 0]]]),
		...table('DIMSTYLE', 'A', []),
		...table('BLOCK_RECORD', '1', [blockRecord('*Model_Space', MODEL_SPACE), blockRecord('*Paper_Space', PAPER_SPACE)])
	];
}

function table(name: string, id: string, of: readonly (readonly Pair[])[]): readonly Pair[] {
	return [
		[0, 'TABLE'],
		[2, name],
		[5, id],
		[330, '0'],
		[100, 'AcDbSymbolTable'],
		[70, of.length],
		...(name === 'DIMSTYLE' ? [[100, 'AcDbDimStyleTable'] as const] : []),
		...of.flat(),
		[0, 'ENDTAB']
	];
}

function record(kind: string, table: string, is: string, records: DxfRecords): readonly Pair[] {
	return [
		[0, kind],
		[5, records.handle()],
		[330, table],
		[100, 'AcDbSymbolTableRecord'],
		[100, is]
	];
}

function lineType(name: string, dash: readonly number[], records: DxfRecords): readonly Pair[] {
	const total = dash.reduce((sum, length) => sum + length, 0);
	return [
		...record('LTYPE', '5', 'AcDbLinetypeTableRecord', records),
		[2, name],
		[70, 0],
		[3, ''],
		[72, 65],
		[73, dash.length],
		[40, total],
		...dash.flatMap((length, i): Pair[] => [
			[49, i % 2 === 0 ? length : -length],
			[74, 0]
		])
	];
}

function layerRecord({ name, tone, width, dash }: DxfLayer, records: DxfRecords): readonly Pair[] {
	return [
		...record('LAYER', '2', 'AcDbLayerTableRecord', records),
		[2, name],
		[70, 0],
		[62, COLOURS[tone]],
		[6, dash.length > 0 ? name : 'CONTINUOUS'],
		[370, nearest(width * 100)]
	];
}

const nearest = (wanted: number): number =>
	WIDTHS.reduce((best, width) => (Math.abs(width - wanted) < Math.abs(best - wanted) ? width : best));

const style = (name: string, file: string, records: DxfRecords): readonly Pair[] => [
	...record('STYLE', '3', 'AcDbTextStyleTableRecord', records),
	[2, name],
	[70, 0],
	[40, 0],
	[41, 1],
	[50, 0],
	[71, 0],
	[42, 2.5],
	[3, file],
	[4, '']
];

const blockRecord = (name: string, id: string): readonly Pair[] => [
	[0, 'BLOCK_RECORD'],
	[5, id],
	[330, '1'],
	[100, 'AcDbSymbolTableRecord'],
	[100, 'AcDbBlockTableRecord'],
	[2, name],
	[340, '0']
];

function block(name: string, owner: string, [begins, ends]: readonly [string, string]): readonly Pair[] {
	const part = (kind: string, id: string): readonly Pair[] => [
		[0, kind],
		[5, id],
		[330, owner],
		[100, 'AcDbEntity'],
		[8, '0']
	];
	return [
		...part('BLOCK', begins),
		[100, 'AcDbBlockBegin'],
		[2, name],
		[70, 0],
		[10, 0],
		[20, 0],
		[30, 0],
		[3, name],
		[1, ''],
		...part('ENDBLK', ends),
		[100, 'AcDbBlockEnd']
	];
}

function dictionary(id: string, owner: string, of: readonly (readonly [name: string, id: string])[]): readonly Pair[] {
	return [
		[0, 'DICTIONARY'],
		[5, id],
		[330, owner],
		[100, 'AcDbDictionary'],
		[281, 1],
		...of.flatMap(([name, to]): Pair[] => [
			[3, name],
			[350, to]
		])
	];
}
