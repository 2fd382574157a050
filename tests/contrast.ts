/** How much two colours stand apart, from 1 to 21. Source: WCAG 2.2, definitions of contrast ratio and relative luminance. */
export function contrast(a = '', b = ''): number {
	const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
	return (light + 0.05) / (dark + 0.05);
}

function luminance(hex: string): number {
	const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
		const share = parseInt(hex.slice(at, at + 2), 16) / 255;
		return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
