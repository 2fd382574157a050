/** A quantity as it is set in type: the figure, its fraction, and the unit, each its own size. */
export interface Figure {
	readonly figure: string;
	readonly fraction: string;
	readonly unit: string;
}

const FIGURE = /^\s*([-−+]?)((?:\d[\d.,:]*|[.,]\d+)(?!\d*[/⁄]))?[ -]?(\d+[/⁄]\d+)?\s*(.*?)\s*$/;

/** Splits what was typed or formatted: "34 1/2 in", "86,5 cm", "71". What is no number stays whole as the figure. */
export function figureOf(text: string, unitWhenBare = ''): Figure {
	const [, sign = '', figure = '', fraction = '', unit = ''] = FIGURE.exec(text) ?? [];
	if (figure === '' && fraction === '') return { figure: text.trim(), fraction: '', unit: '' };
	return { figure: sign + figure, fraction, unit: unit === '' ? unitWhenBare : unit };
}
