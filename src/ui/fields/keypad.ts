/** What a key of the keypad does to what is typed. */
export type Key =
	| { readonly kind: 'digit'; readonly text: string }
	| { readonly kind: 'unit'; readonly text: string }
	| { readonly kind: 'fraction'; readonly text: string }
	| { readonly kind: 'back' };

const PARTS = /^(.*?)(?:[ -]?(\d+\/\d+))?(?: ?([^\d\s.,/:-]\D*))?$/;

/**
 * The text after a key: a digit goes before the unit, a unit replaces the unit, a fraction the fraction. Back takes the
 * last thing off: unit, fraction, then digit by digit.
 */
export function pressed(text: string, key: Key): string {
	const [, figure = '', fraction = '', unit = ''] = PARTS.exec(text.trim()) ?? [];
	switch (key.kind) {
		case 'digit':
			return joined(figure + key.text, fraction, unit);
		case 'unit':
			return joined(figure, fraction, key.text);
		case 'fraction':
			return joined(figure, key.text, unit === '' ? 'in' : unit);
		case 'back':
			if (unit !== '') return joined(figure, fraction, '');
			return fraction === '' ? figure.slice(0, -1) : figure;
	}
}

function joined(...parts: readonly string[]): string {
	return parts.filter((part) => part !== '').join(' ');
}
