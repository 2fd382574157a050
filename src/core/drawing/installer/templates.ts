import { isReadable } from '#core/case/read-off.ts';
import type { Plan } from '#core/plan.ts';
import { paragraph, space, stacked, type Block } from '../block.ts';
import type { Drawing, Entity } from '../entity.ts';
import { flowed } from '../flow.ts';
import { rectangle } from '../path.ts';
import { settingOut, wallName, type SetOut } from '../setting-out.ts';
import { inHand, SHEETS, type OnPaper } from '../sheet.ts';
import { write } from '../type.ts';
import { boredOf, type Bored } from './holes-bored.ts';
import { CHECK_BARS, checks, CHECKS_FOOT } from './template-checks.ts';
import { idsOf, template } from './template.ts';

const TITLE = 'Templates 1:1';
/** Margin that most printers keep. Units: mm. Source: structure-and-drawing 5.4. */
const MARGIN = 10;
/** From the edge of the art to the templates: what is checked upright stands there. Units: mm. */
const STRIP = 10;
const HEAD = 21;
/** Between templates, so that each is cut out by itself. Units: mm. */
const GAP = 4;

/**
 * Templates at 1:1, one a bracket, of every part that was read off, with what a print is checked by on every sheet, and
 * which marks have none. Both brackets of a bar never fit on one: read off they are 200 apart or more with flanges of
 * 40 or more, and a sheet has 239 for templates at most.
 * Units and frame: mm of the sheet, seen from inside the room. Shape: none where nothing was read off.
 */
export function templatesOf(plan: Plan, how: OnPaper): readonly Drawing[] {
	const { sheet } = inHand(how);
	const { width, height } = SHEETS[sheet];
	const art = { x0: MARGIN, y0: MARGIN, x1: width - MARGIN, y1: height - MARGIN };
	const column = { x: art.x0 + STRIP, y0: art.y0 + HEAD, y1: art.y1 - CHECKS_FOOT };
	const wide = art.x1 - column.x;
	const on = { plan, width: wide, unit: how.tape.unit, both: how.both ?? false };
	const all = boredOf(plan).filter(({ set }) => set.mark.stage !== 'built');
	const made = all.map((bored) => ({ bored, block: template(bored, on) }));
	const fits = ({ bored, block }: (typeof made)[number]): boolean =>
		2 * bored.flange.radius + GAP <= wide && block.height + GAP <= column.y1 - column.y0;
	const kept = made.filter(fits);
	const drawn = kept.map(({ bored }) => bored);
	if (drawn.length === 0) return [];
	const blocks = [...kept.map(({ block }) => stacked(block, space(GAP))), withoutBlock(plan, drawn, wide)];
	return flowed(blocks, column).map((entities) => ({
		title: TITLE,
		size: { width, height },
		pictures: { ...CHECK_BARS, ...shown(plan, drawn, entities) },
		entities: [
			rectangle('sheet', 'sheet', { x0: 0, y0: 0, x1: width, y1: height }),
			write('head/title', TITLE, [column.x, 18.2], { size: 24, weight: 'semibold', heading: 1 }),
			write('head/says', idsOf(plan), [column.x, 24], { size: 10.5, tone: 'grey' }),
			...checks(art, how.tape.unit),
			...entities
		]
	}));
}

/** What each template of a sheet shows. */
const shown = (plan: Plan, bored: readonly Bored[], entities: readonly Entity[]): Readonly<Record<string, string>> =>
	Object.fromEntries(
		bored
			.map((one) => [`template/${one.id}`, alternative(plan, one)] as const)
			.filter(([key]) => entities.some(({ picture }) => picture === key))
	);

/** What the picture of a template shows. */
const alternative = (plan: Plan, { id, side, set, holes }: Bored): string =>
	`Template at full size of the ${side} bracket of ${set.letter}, ${id}, on the ${wallName(plan, set.mark.place.wall).toLowerCase()}: its flange with ${String(holes.length)} holes, the level line and the way up.`;

/** Which marks have no template, and why. */
function withoutBlock(plan: Plan, drawn: readonly Bored[], width: number): Block {
	const rest = settingOut(plan).filter(({ id }) => !drawn.some(({ set }) => set.id === id));
	const reasons = [...new Set(rest.map(whyNone))];
	const says = reasons.map((why) => {
		const letters = rest.filter((set) => whyNone(set) === why).map(({ letter }) => letter);
		return `${letters.join(' ')}: ${why}.`;
	});
	if (says.length === 0) return space(0);
	return paragraph('templates/without', `No template for ${says.join(' ')}`, { size: 10, width });
}

function whyNone({ mark: { stage, variant } }: SetOut): string {
	if (stage === 'built') return 'on the wall already';
	if (variant.brackets.some(({ flange }) => flange)) return 'the flange is larger than this sheet';
	if (variant.brackets.length === 0) return 'no screws are set out';
	return isReadable(variant.kind)
		? 'the part is not read off yet'
		: 'holes of such a part are not read off here, take them from the part itself';
}
