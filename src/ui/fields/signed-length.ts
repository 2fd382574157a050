import type { Tape } from '#core/units/format.ts';
import { readQuantity, type Quantity, type Reading } from './quantity.ts';

/** Reads a number of a wall table: heights below the datum line carry a minus. */
export function readSigned(text: string, quantity: Quantity, tape: Tape): Reading {
	const [, below, rest = text] = /^\s*([-−–])\s*(.*)$/.exec(text) ?? [];
	const read = readQuantity(rest, quantity, tape);
	return below !== undefined && read.kind === 'value' ? { kind: 'value', value: 0 - read.value } : read;
}
