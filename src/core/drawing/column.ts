import type { Block } from './block.ts';
import type { DrawnWall } from './drawn-wall.ts';
import type { Entity } from './entity.ts';
import { figure } from './figure.ts';
import { keyPlan } from './key-plan.ts';
import { questionBox, wallQuestions } from './question.ts';
import { schedule } from './schedule.ts';
import { cornerOf } from './setting-out.ts';
import { write } from './type.ts';

/** The column of words: key plan and questions above the datum line, the schedule below it. */
export function column(on: DrawnWall): readonly Entity[] {
	const { plan, wall, sets, unit, view } = on;
	const { column: box, datum } = view;
	const width = box.x1 - box.x0;
	const { room, holds } = plan.scene;
	const bands = [
		{ y0: box.y0, y1: Math.min(datum - 7, box.y1) },
		{ y0: datum + 4, y1: box.y1 }
	];
	const table = schedule({ sets, from: cornerOf(room, wall).from, unit, force: holds.demand.force, width });
	const questions = wallQuestions(plan, sets).map((q) => questionBox(q, width));
	const above = figure(-room.bathroomFloor, unit);
	const words = above === '0' ? 'Datum line: the floor F' : `Datum line, ${above} above F`;
	return [
		...placed([keyPlan(plan, wall, width)], bands, box.x0),
		...(sets.length > 0 ? placed([table], bands.toReversed(), box.x0) : []),
		...placed(questions, bands, box.x0),
		write('datum/words', words, [box.x0, datum - 1.5], { size: 10.5, weight: 'semibold', tone: 'datum' })
	];
}

function placed(blocks: readonly Block[], bands: { y0: number; y1: number }[], x: number): readonly Entity[] {
	return blocks.flatMap((block) => {
		const band = bands.find((b) => b.y1 - b.y0 >= block.height);
		if (!band) return [];
		const drawn = block.draw(x, band.y0);
		band.y0 += block.height;
		return drawn;
	});
}
