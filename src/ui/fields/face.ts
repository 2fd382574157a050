import type { Estimate } from '#core/body/estimate.ts';
import type { Fact } from '#core/case/fact.ts';
import { valueAt } from '#core/log/change.ts';
import type { Json } from '#core/log/json.ts';
import type { Tape } from '#core/units/format.ts';
import { inches, mm } from '#core/units/length.ts';
import { figureOf } from './figure.ts';
import type { Known } from './known.ts';
import { showQuantity } from './quantity.ts';
import type { ChoiceField, Field, NumberField } from './spec.ts';

/** Half the band that holds nine of ten people, in standard deviations. */
const NINETY = 1.645;

/** What a cell shows of a field: its text, how it is known, and the band of an estimate. */
export interface Face {
	readonly text: string;
	readonly known: Known;
	readonly band?: string;
}

/** How lengths are shown, and whether what was typed stands before what is worked out. */
export interface Showing {
	readonly tape: Tape;
	readonly asTyped: boolean;
}

/** The face of one field; `estimate` stands in while nothing was measured. */
export function faceOf(field: Field, value: Json | undefined, showing: Showing, estimate?: Estimate): Face {
	if (value === undefined) return estimate ? estimatedFace(estimate, showing) : { text: '', known: 'not-asked' };
	if (field.plain) return { text: wordsOf(field, value, showing), known: 'chosen' };
	const fact = value as unknown as Fact<Json>;
	const typed = showing.asTyped && field.kind === 'number' ? typedText(field, fact.typed, showing) : undefined;
	return { text: typed ?? wordsOf(field, fact.value, showing), known: fact.how };
}

/** What was typed; a bare length is in the unit of the tape. */
function typedText({ quantity }: NumberField, typed: string | undefined, { tape }: Showing): string | undefined {
	if (typed === undefined || quantity !== 'length' || figureOf(typed).unit !== '') return typed;
	return `${typed.trim()} ${tape.unit}`;
}

/** The faces of a cell's fields as one text: "19 × 25 in" when both are in one unit. */
export function joinedText(faces: readonly Face[], between = ' × '): string {
	const texts = faces.map(({ text }) => text).filter((text) => text !== '');
	const units = texts.map((text) => figureOf(text).unit);
	const shared = units[0] ?? '';
	if (texts.some((text) => !/^-?\d/.test(text))) return texts.join(', ');
	if (texts.length < 2 || shared === '' || units.some((unit) => unit !== shared)) return texts.join(between);
	return `${texts.map((text) => bare(text, shared)).join(between)} ${shared}`;
}

const LEAST_SURE: readonly Known[] = ['not-asked', 'estimated', 'assumed'];

/** How sure a cell is: as its least sure field. */
export function joinedKnown(faces: readonly Face[]): Known {
	const all = faces.map(({ known }) => known);
	const weak = LEAST_SURE.find((one) => all.includes(one));
	return weak ?? all.find((one) => one !== 'chosen') ?? all[0] ?? 'not-asked';
}

function bare(text: string, unit: string): string {
	return text.trim().slice(0, -unit.length).trim();
}

function estimatedFace({ value, sd, how }: Estimate, { tape }: Showing): Face {
	// An estimate is never finer than a finger's width of the tape.
	const coarse: Tape = { unit: tape.unit, step: tape.unit === 'mm' ? mm(1) : inches(1 / 4) };
	const band = showQuantity(NINETY * sd, 'length', coarse);
	return { text: showQuantity(value, 'length', coarse), known: how, band: `± ${bare(band, tape.unit)}` };
}

function wordsOf(field: Field, value: Json, { tape }: Showing): string {
	if (field.kind === 'number') return showQuantity(Number(value), field.quantity, tape);
	if (field.kind === 'choice') return choiceWords(field, value);
	if (field.kind === 'words') return value as string;
	return leanWords(value as { kind: string; at?: number }, tape);
}

function choiceWords({ choices }: ChoiceField, value: Json): string {
	const chosen = choices.find((one) => one.value === value);
	return chosen?.short ?? chosen?.label ?? '';
}

function leanWords({ kind, at }: { kind: string; at?: number }, tape: Tape): string {
	if (kind === 'none') return 'not at all';
	return `${showQuantity(at ?? 0, 'length', tape)}, ${kind === 'holding' ? 'holding on' : 'free'}`;
}

/** The number of a field as the record has it, or undefined. */
export function numberOf(field: NumberField, value: Json | undefined): number | undefined {
	const path = [...(field.plain ? [] : ['value']), ...(field.within ? [field.within.key] : [])];
	const found = value === undefined ? undefined : valueAt(value, path);
	return typeof found === 'number' ? found : undefined;
}

/** What stands in the field itself: what was typed, else the value in the tape's unit. */
export function entryText(field: NumberField, value: Json | undefined, tape: Tape): string {
	const number = numberOf(field, value);
	if (number === undefined) return '';
	const typed = field.plain ? undefined : (value as unknown as Fact<Json>).typed;
	return typed ?? showQuantity(number, field.quantity, tape);
}
