import { readFileSync } from 'node:fs';

/** Advance widths of a TrueType file by code point, read straight from its tables cmap (format 4) and hmtx. */
export function advancesOf(file: string): ReadonlyMap<number, number> {
	const b = readFileSync(file);
	const tables = new Map(
		Array.from({ length: b.readUInt16BE(4) }, (_, i) => {
			const at = 12 + 16 * i;
			return [b.toString('latin1', at, at + 4), b.readUInt32BE(at + 8)] as const;
		})
	);
	const at = (name: string): number => tables.get(name) ?? 0;
	const metrics = b.readUInt16BE(at('hhea') + 34);
	const advance = (glyph: number) => b.readUInt16BE(at('hmtx') + 4 * Math.min(glyph, metrics - 1));
	const units = b.readUInt16BE(at('head') + 18);
	const subtables = Array.from({ length: b.readUInt16BE(at('cmap') + 2) }, (_, i) => {
		return at('cmap') + b.readUInt32BE(at('cmap') + 8 + 8 * i);
	});
	const map = subtables.find((offset) => b.readUInt16BE(offset) === 4) ?? 0;
	const segments = b.readUInt16BE(map + 6) / 2;
	const found = new Map<number, number>();
	for (let i = 0; i < segments; i++) {
		const end = b.readUInt16BE(map + 14 + 2 * i);
		const start = b.readUInt16BE(map + 16 + 2 * segments + 2 * i);
		const delta = b.readInt16BE(map + 16 + 4 * segments + 2 * i);
		const here = map + 16 + 6 * segments + 2 * i;
		const range = b.readUInt16BE(here);
		for (let code = start; code <= Math.min(end, 0xfffe); code++) {
			const raw = range === 0 ? code : b.readUInt16BE(here + range + 2 * (code - start));
			const glyph = range !== 0 && raw === 0 ? 0 : (raw + delta) & 0xffff;
			if (glyph !== 0) found.set(code, (advance(glyph) * 1000) / units);
		}
	}
	return found;
}
