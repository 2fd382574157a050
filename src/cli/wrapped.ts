/** Columns of a terminal that most people have. */
const WIDTH = 100;

/** What would move the cursor, colour the text or turn it round. */
const UNPRINTED = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu;

/**
 * A line cut between words so that no part is wider than a terminal, further parts set in by four.
 * Shape: at least one part; what does not print is left out; a longer word is cut; a line of columns that fits stays whole.
 */
export function wrapped(line: string): string[] {
	const clean = line.replace(UNPRINTED, ' ');
	if (clean.length <= WIDTH) return [clean];
	const indent = /^ */.exec(clean)?.[0] ?? '';
	const parts: string[] = [];
	let part = indent;
	const most = WIDTH - indent.length - 4;
	const words = clean.trim().split(/ +/);
	for (const word of words.flatMap((one) => one.match(new RegExp(`.{1,${String(most)}}`, 'gsu')) ?? [])) {
		const longer = part.trim() === '' ? part + word : `${part} ${word}`;
		if (longer.length > WIDTH && part.trim() !== '') {
			parts.push(part);
			part = `${indent}    ${word}`;
		} else part = longer;
	}
	return [...parts, part];
}
