/** A group code and its value. */
export type Pair = readonly [code: number, value: string | number];

/** Where everything drawn belongs. */
export const MODEL_SPACE = '1F';

/** Numbers the records of a DXF file. Shape: the same records in the same order have the same numbers. */
export class DxfRecords {
	/** The numbers below are those of the fixed records of `dxf-tables.ts`. */
	private last = 0xff;

	/** The next number. */
	handle(): string {
		this.last += 1;
		return this.last.toString(16).toUpperCase();
	}

	/** What a thing in the drawing begins with. */
	entity(kind: string, layer: string): readonly Pair[] {
		return [
			[0, kind],
			[5, this.handle()],
			[330, MODEL_SPACE],
			[100, 'AcDbEntity'],
			[8, layer]
		];
	}
}
