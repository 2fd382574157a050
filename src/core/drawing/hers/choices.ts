import { indented, space, stacked, type Block } from '../block.ts';
import { line, rounded } from '../path.ts';
import { PT, widthOf, write } from '../type.ts';
import { nameOf, thingNamed, type HerItem } from './item.ts';
import { DISC, headed, numberDisc, said, SIZE, toFill, type Page } from './page.ts';
import type { Told } from './told.ts';

/** A box to tick, and from one to the next. Units: mm. Source: house design. */
const TICK = { side: 7.4, pitch: 10.8, gap: 4, radius: 0.7 };
const LEFT = 14;
const BETWEEN = 6;

/** Every thing with what it is for, how it is used, and three boxes to tick; then what has no wall. */
export function choiceBlocks(page: Page, { items }: Told): readonly Block[] {
	return [...items.map((item) => choice(page, item)), ...nowhere(page)];
}

function choice(page: Page, item: HerItem): Block {
	const { words, width } = page;
	const { answers, states, hand, helped } = words.choices;
	const id = `choice/${item.id}`;
	const column = Math.max(...answers.map((answer) => widthOf(answer, SIZE.text))) + TICK.side + TICK.gap;
	const wide = width - LEFT - column - BETWEEN;
	const { purpose, how } = words.uses[item.use];
	const steps = [...(item.hand ? [hand[item.hand]] : []), how, ...(item.test ? [words.tests[item.test]] : [])];
	const bold = (name: string, says: string) => said(`${id}/${name}`, says, wide, { weight: 'semibold' });
	const text = stacked(
		headed(`${id}/name`, nameOf(item, words), wide),
		...(item.state ? [bold('state', states[item.state])] : []),
		...(item.helped ? [bold('helped', helped[item.helped])] : []),
		said(`${id}/purpose`, purpose, wide),
		space(1.2),
		said(`${id}/how`, steps.join(' '), wide)
	);
	const height = Math.max(text.height, TICK.pitch * answers.length) + 2;
	return {
		height: height + 4,
		draw: (x, y) => [
			...numberDisc(`${id}/number`, item, [x + DISC.list, y + DISC.list], DISC.list),
			...indented(LEFT, text).draw(x, y),
			...answers.flatMap((answer, i) => {
				const [left, top] = [x + width - column, y + 0.8 + i * TICK.pitch];
				const box = { x0: left, y0: top, x1: left + TICK.side, y1: top + TICK.side };
				const base = top + TICK.side / 2 + 0.33 * SIZE.text * PT;
				return [
					rounded(`${id}/tick/${String(i)}`, 'frame', box, TICK.radius),
					write(`${id}/answer/${String(i)}`, answer, [box.x1 + TICK.gap, base], { size: SIZE.text })
				];
			}),
			line(`${id}/rule`, 'rule', [x, y + height], [x + width, y + height])
		]
	};
}

/** What is wanted and has no wall it could go to. */
function nowhere({ plan, words, width }: Page): readonly Block[] {
	if (plan.nowhere.length === 0) return [];
	const names = plan.nowhere.map((accessory) => words.things[thingNamed(accessory)]).join(', ');
	return [stacked(said('nowhere', words.choices.nowhere(names), width), space(5))];
}

/** What was talked about is signed: by her, by who read it with her, and by the owner of the walls where one is to agree. */
export function signing({ words, width }: Page, { owner }: Told): Block {
	const { says, name, date, signed, helped, owner: owners, ownerSigns } = words.signing;
	const half = (width - 6) * 0.6;
	const from = Math.max(widthOf(name, SIZE.small), widthOf(signed, SIZE.small)) + 3;
	const beside = (left: Block, right: Block): Block => ({
		height: Math.max(left.height, right.height),
		draw: (x, y) => [...left.draw(x, y), ...right.draw(x + half + 6, y)]
	});
	return stacked(
		said('signing/says', says, width, { weight: 'semibold' }),
		beside(toFill('signing/name', name, half, from), toFill('signing/date', date, width - half - 6)),
		toFill('signing/signed', signed, width, from),
		toFill('signing/helped', helped, width),
		...(owner
			? [space(4), said('signing/owner', owners[owner], width), toFill('signing/owner-signs', ownerSigns, width)]
			: [])
	);
}
