import type { Drawing, Entity } from '#core/drawing/entity.ts';
import { pictured } from '#core/drawing/entity.ts';
import { packOf } from '#core/drawing/pack.ts';
import { rectangle } from '#core/drawing/path.ts';
import { write } from '#core/drawing/type.ts';
import { pdfOf } from '#core/render/pdf.ts';
import type { PDFPageProxy } from 'pdfjs-dist/types/src/display/api.js';
import { describe, expect, test } from 'vitest';
import { fixtureCase, fixturePlan } from '../drawing/fixture.ts';
import { FONTS } from './fonts.ts';
import { contentsOf, open } from './pdf-reader.ts';

const meta = { title: 't', digest: '0123456789abcdef0123456789abcdef' };
const plan = fixturePlan(fixtureCase());

/** What the reader gives; its own types leave the words out. */
interface Node {
	readonly role: string;
	readonly children: readonly (Node | { readonly type: 'content'; readonly id: string })[];
	readonly alt?: string;
	readonly lang?: string;
	readonly bbox?: readonly number[];
}

const isNode = (node: Node['children'][number]): node is Node => 'role' in node;

/** Every element under a node, before what is under it. */
const under = (node: Node): readonly Node[] => [node, ...node.children.filter(isNode).flatMap(under)];

/** The marked pieces an element holds itself. */
const idsOf = (node: Node): readonly string[] => node.children.flatMap((c) => (isNode(c) ? [] : [c.id]));

async function treeOf(page: PDFPageProxy): Promise<Node> {
	const tree = (await page.getStructTree()) as unknown as Node | null;
	if (!tree) throw new Error('not tagged');
	return tree;
}

/** What marked content begins with. */
interface Mark {
	readonly tag: string;
	readonly id?: string | null;
}

/** The texts of a page with the marked pieces round each, the innermost last. */
async function markedTexts(page: PDFPageProxy) {
	const { items } = await page.getTextContent({ includeMarkedContent: true, disableNormalization: true });
	const round: Mark[] = [];
	const texts: { text: string; within: readonly Mark[] }[] = [];
	for (const item of items) {
		if ('str' in item) texts.push({ text: item.str, within: [...round] });
		else if (item.type === 'endMarkedContent') round.pop();
		else round.push(item as unknown as Mark);
	}
	return { texts, open: round.length };
}

/** What each element of some roles says, in the order of the tree. */
async function heard(page: PDFPageProxy, roles: readonly string[]): Promise<readonly string[]> {
	const { texts } = await markedTexts(page);
	const says = (id: string) => texts.flatMap((t) => (t.within.some((w) => w.id === id) ? [t.text] : [])).join('');
	return under(await treeOf(page))
		.filter(({ role }) => roles.includes(role))
		.map((node) => `${node.role}: ${idsOf(node).map(says).join('')}`);
}

const sheet = (entities: readonly Entity[], more: Partial<Drawing> = {}): Drawing => ({
	title: 'A sheet',
	size: { width: 210, height: 297 },
	entities,
	...more
});

const box = { x0: 20, y0: 40, x1: 80, y1: 90 };

describe('a tagged PDF, read by an independent reader', () => {
	const drawings = packOf(plan, { reader: 'therapist', sheet: 'A4', tape: { unit: 'in' } });
	const bytes = pdfOf(drawings, meta, FONTS);

	test('[render R5] says that it is tagged, and in which language', async () => {
		const doc = await open(bytes);
		expect(await doc.getMarkInfo()).toMatchObject({ Marked: true });
		const words = [write('a', 'a', [20, 20], { size: 10 })];
		const spanish = await open(pdfOf([sheet(words, { language: 'es' }), sheet(words)], meta, FONTS));
		expect((await spanish.getMetadata()).info).toMatchObject({ Language: 'es' });
		const langs = async (n: number) =>
			under(await treeOf(await spanish.getPage(n))).flatMap(({ lang }) => (lang === undefined ? [] : [lang]));
		const pages = [await langs(1), await langs(2)];
		expect(pages).toEqual([['es'], ['en']]);
	});

	test('[render R5] every text is in the structure or an artifact, exactly once', async () => {
		const doc = await open(bytes);
		for (let n = 1; n <= doc.numPages; n++) {
			const page = await doc.getPage(n);
			const { texts, open: left } = await markedTexts(page);
			expect(left).toBe(0);
			expect(texts.length).toBeGreaterThan(5);
			const ids = under(await treeOf(page)).flatMap(idsOf);
			expect(new Set(ids).size).toBe(ids.length);
			for (const { text, within } of texts.filter((t) => t.text.trim() !== '')) {
				const [outer, ...inner] = within;
				expect([text, inner.every(({ tag }) => tag === 'Span')]).toEqual([text, true]);
				const held = outer?.tag === 'Artifact' ? !outer.id : ids.filter((id) => id === outer?.id).length === 1;
				expect([text, held]).toEqual([text, true]);
			}
		}
	});

	test('[render R5] every sheet has one first heading, which is its title', async () => {
		const doc = await open(bytes);
		for (const [i, d] of drawings.entries()) {
			expect(await heard(await doc.getPage(i + 1), ['H1'])).toEqual([`H1: ${d.title}`]);
		}
	});

	test('[render R5] the drawing of a wall is one figure that tells every mark with its letter and figures', async () => {
		const doc = await open(bytes);
		const number = drawings.findIndex((d) => d.title === 'Control wall');
		const figures = under(await treeOf(await doc.getPage(number + 1))).filter(({ role }) => role === 'Figure');
		const [wall] = figures.filter(({ alt = '' }) => alt.startsWith('Drawing of the control wall, '));
		expect(wall?.alt).toMatch(
			/\bD, Horizontal bar 23 5\/8 c\/c: .* from the corner, \u2212.* from the datum line, .* above the floor;/
		);
		for (const { alt } of figures) expect(alt).not.toBe('');
		expect(figures.length).toBe(Object.keys(drawings[number]?.pictures ?? {}).length);
	});

	test('[render R5] keeps headings, paragraphs and pictures in their order; lines are joined by a space', async () => {
		const drawing = sheet(
			[
				write('head', 'Marks', [20, 20], { size: 24, heading: 1 }),
				write('a/says/0', 'One sentence', [20, 25], { size: 10 }),
				write('a/says/1', 'on two lines.', [20, 30], { size: 10 }),
				rectangle('frame', 'frame', box),
				write('b/title', 'Part', [20, 35], { size: 12, heading: 2 }),
				write('b/says/0', 'Another.', [20, 38], { size: 10 }),
				...pictured('wall', [rectangle('wall', 'outline', box), write('wall/0', 'inside', [30, 60], { size: 10 })]),
				write('c/0', 'Last \u2212560.', [20, 120], { size: 10 })
			],
			{ pictures: { wall: 'A wall \u2013 with (one) \\ mark' } }
		);
		const made = pdfOf([drawing], meta, FONTS);
		// The reader leaves spaces at the end of a line out; in the file each sign has four digits.
		const shown = [...(contentsOf(made)[0] ?? '').matchAll(/<([0-9A-Fa-f]+)> Tj/g)].map(
			([, hex = '']) => hex.length / 4
		);
		expect(shown.slice(1, 3)).toEqual(['One sentence '.length, 'on two lines.'.length]);
		const page = await (await open(made)).getPage(1);
		expect(await heard(page, ['H1', 'H2', 'P', 'Figure'])).toEqual([
			'H1: Marks',
			'P: One sentenceon two lines.',
			'H2: Part',
			'P: Another.',
			'Figure: inside',
			'P: Last \u2212560.'
		]);
		const [figure] = under(await treeOf(page)).filter(({ role }) => role === 'Figure');
		expect(figure?.alt).toBe('A wall \u2013 with (one) \\ mark');
		const pt = 72 / 25.4;
		const corners = [box.x0, 297 - box.y1, box.x1, 297 - box.y0].map((n) => expect.closeTo(n * pt, 1) as number);
		if (figure?.bbox) expect(figure.bbox).toEqual(corners);
	});

	test('[render R5] a picture in two pieces is one figure; one without words is taken apart', async () => {
		const piece = (id: string, picture: string) => pictured(picture, [write(id, id, [20, 20], { size: 10 })]);
		const drawing = sheet([...piece('a', 'told'), ...piece('b', 'untold'), ...piece('c', 'told')], {
			pictures: { told: 'Both' }
		});
		const page = await (await open(pdfOf([drawing], meta, FONTS))).getPage(1);
		expect(await heard(page, ['P', 'Figure'])).toEqual(['Figure: ac', 'P: b']);
	});

	test('[render R5] a fraction is copied and read as 1/2', () => {
		const made = pdfOf([sheet([write('a', '\u221234 7/8', [20, 20], { size: 12 })])], meta, FONTS);
		// UTF-16 with its mark, as the minus is beyond ASCII.
		expect(contentsOf(made)[0]).toContain('/Span <</ActualText <FEFF22120033003400200037002F0038>>> BDC');
		const plain = pdfOf([sheet([write('a', '7/8', [20, 20], { size: 12 })])], meta, FONTS);
		expect(contentsOf(plain)[0]).toMatch(/\/P <<\/MCID 0>> BDC[^]*\/Span <<\/ActualText \(7\/8\)>> BDC[^]*EMC\nEMC/);
	});

	test('[render R1] its fonts are embedded', async () => {
		const page = await (await open(bytes)).getPage(1);
		await page.getOperatorList();
		const { styles } = await page.getTextContent();
		const fonts = Object.keys(styles).map((id) => page.commonObjs.get(id) as { missingFile?: boolean; name: string });
		expect(fonts.length).toBeGreaterThanOrEqual(2);
		for (const { missingFile, name } of fonts) expect([name, missingFile ?? false]).toEqual([name, false]);
	});

	test('[render R2] the same drawings give the same bytes, tags and all', () => {
		expect(Buffer.from(pdfOf(drawings, meta, FONTS)).equals(Buffer.from(bytes))).toBe(true);
	});
});
