import type { Json } from '#core/log/json.ts';
import type { Quantity } from './quantity.ts';
import type { Cell, Field, FieldPath, NumberField, Whole, WholeKnown } from './spec.ts';

/** What a whole begins with beside its parts. */
type Begins = Readonly<Record<string, Json>>;

/** A cell of facts the record holds all at once or not at all: the paths of its fields begin below its own. */
export function wholeCell(
	cell: Omit<Cell, 'fields' | 'whole'>,
	{ path, known, begins = {} }: { readonly path: FieldPath; readonly known: WholeKnown; readonly begins?: Begins },
	fields: readonly [Field, ...Field[]]
): Cell {
	const fixed: Begins = known === 'kept' ? { ...begins, how: fields[0].how ?? 'measured' } : begins;
	const needs = fields.filter(({ needed }) => needed).map((field) => field.path);
	const whole: Whole = { path, needs, fixed };
	return {
		...cell,
		whole: { path, known },
		fields: fields.map((field) => ({ ...field, path: [...path, ...field.path], whole }))
	};
}

/** A number a whole cannot be without. */
export function part(label: string, key: string | FieldPath, quantity: Quantity = 'length'): NumberField {
	const path = typeof key === 'string' ? [key] : key;
	return { kind: 'number', label, path, quantity, plain: true, needed: true };
}
