import type { Block } from '../block.ts';
import { line } from '../path.ts';
import { widthOf, write } from '../type.ts';
import { nameOf, type HerItem } from './item.ts';
import { DISC, LINE, numberDisc, part, quiet, said, SIZE, squares, toFill, type Page } from './page.ts';
import type { Told } from './told.ts';

/** The one thing to keep in mind. */
export function mindPart({ words, width }: Page, { mind, then }: Told): Block {
	const { title, says, lean } = words.mind;
	const more = then === undefined ? [] : [then === 'sit-back' ? says['sit-back'] : lean(then.lean)];
	return part('mind', title, width, said('mind/says', [says[mind], ...more].join(' '), width));
}

/** From when it may be used. */
export function whenPart({ words, width }: Page, { bars }: Told): Block {
	const { title, bars: pulled, parts } = words.when;
	return part('when', title, width, said('when/says', bars ? pulled : parts, width));
}

/** When to stop and whom to ring. */
export function wrongPart({ words, width }: Page, { wrong }: Told): Block {
	const { title, says, ring } = words.wrong;
	const list = wrong.map((one) => says[one]);
	return part('wrong', title, width, squares('wrong', list, width), toFill('wrong/ring', ring, width));
}

/** For how heavy a person it is planned. */
export function loadPart({ words, width, plan }: Page, { most }: Told): Block {
	const { title, says, more } = words.load;
	return part('load', title, width, said('load/says', `${says(most, plan.scene.c.tape.unit)} ${more}`, width));
}

/** Blanks for what each part that holds a person can take; nothing where none does. */
export function ratingParts(page: Page, { items }: Told): readonly Block[] {
	const { words, width } = page;
	const { table, lowest } = words.load;
	const rows = items.filter(({ holds }) => holds).map((item) => ratingRow(page, item));
	return rows.length > 0 ? [part('load/table', table, width, quiet('load/lowest', lowest, width), ...rows)] : [];
}

const BLANK = 44;

/** A thing with a line to write on what it can take. */
function ratingRow({ words, width }: Page, item: HerItem): Block {
	const id = `rating/${item.id}`;
	const left = 2 * DISC.picture + 4;
	const unit = words.load.unit;
	const end = width - widthOf(unit, SIZE.small) - 2;
	const name = said(`${id}/name`, nameOf(item, words), end - BLANK - 4 - left);
	const height = Math.max(name.height, LINE) + 2.8;
	return {
		height,
		draw: (x, y) => [
			...numberDisc(`${id}/number`, item, [x + DISC.picture, y + 1.6 + LINE / 2], DISC.picture),
			...name.draw(x + left, y + 1.6),
			line(`${id}/line`, 'cell', [x + end - BLANK, y + height - 1.6], [x + end, y + height - 1.6]),
			write(`${id}/unit`, unit, [x + width, y + height - 2.2], { size: SIZE.small, tone: 'grey', anchor: 'end' })
		]
	};
}

/** When it is looked at again, and by whom. */
export function againPart({ words, width }: Page, { every }: Told): Block {
	const { title, says, sooner, who } = words.again;
	return part(
		'again',
		title,
		width,
		said('again/says', `${says(every)} ${sooner}`, width),
		toFill('again/who', who, width)
	);
}

/** How she washes until all is fitted; nothing where nothing is for later. */
export function untilParts({ words, width }: Page, { until }: Told): readonly Block[] {
	if (until === undefined) return [];
	const { title, says } = words.until;
	return [part('until', title, width, said('until/says', says[until], width))];
}
