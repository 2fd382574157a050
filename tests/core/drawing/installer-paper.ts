import { overlap, widened, type Drawing, type Text } from '#core/drawing/entity.ts';
import { packOf } from '#core/drawing/pack.ts';
import { SHEET_NAMES, type OnPaper } from '#core/drawing/sheet.ts';
import { boxOf } from '#core/drawing/type.ts';
import type { Plan } from '#core/plan.ts';

/** Every size of sheet on both tapes, in one unit and in both, for whoever fits the parts. */
export const PAPERS: readonly OnPaper[] = SHEET_NAMES.flatMap((sheet, i) =>
	(['mm', 'in'] as const).map((unit): OnPaper => ({ reader: 'installer', sheet, tape: { unit }, both: i % 2 === 1 }))
);

/** A4 and Letter, each with the tape that is usual with it. */
export const USUAL: readonly OnPaper[] = [
	{ reader: 'installer', sheet: 'A4', tape: { unit: 'mm' } },
	{ reader: 'installer', sheet: 'Letter', tape: { unit: 'in' } }
];

export const texts = (d: Drawing): readonly Text[] => d.entities.filter((e): e is Text => e.kind === 'text');

/** Everything sheets say, a line of text a string, with the words for who cannot see them. */
export const saidOn = (pack: readonly Drawing[]): readonly string[] =>
	pack.flatMap((d) => [d.title, ...texts(d).map((t) => t.text), ...Object.values(d.pictures ?? {})]);

/** The same of the pack of a plan. */
export const saidIn = (plan: Plan, how: OnPaper): readonly string[] => saidOn(packOf(plan, how));

/** Texts that lie on one another. */
export function clashes(d: Drawing): readonly string[] {
	const boxes = texts(d)
		.filter((t) => t.text !== '')
		.map((t) => ({ t, box: widened(boxOf(t), -0.05) }));
	return boxes.flatMap(({ t, box }, i) =>
		boxes.slice(i + 1).flatMap((o) => (overlap(box, o.box) ? [`${t.id} "${t.text}" and ${o.t.id} "${o.t.text}"`] : []))
	);
}

/** Texts beyond the part of a sheet that may be drawn on. */
export function beyondSheet(d: Drawing): readonly string[] {
	const { width, height } = d.size;
	return texts(d).flatMap((t) => {
		const { x0, y0, x1, y1 } = boxOf(t);
		return x0 < 19.5 || x1 > width - 9.5 || y0 < 9 || y1 > height - 9 ? [`${t.id} "${t.text}"`] : [];
	});
}
