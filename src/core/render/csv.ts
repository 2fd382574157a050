import type { Table } from '#core/drawing/mark-table.ts';

/**
 * A table as comma-separated values with line ends of RFC 4180.
 * Shape: a text a spreadsheet would take for a formula begins with an apostrophe; numbers stay numbers.
 * Source: RFC 4180; what starts a formula after OWASP, CSV injection.
 */
export const csvOf = (table: Table): string => table.map((row) => `${row.map(cell).join(',')}\r\n`).join('');

function cell(value: string | number): string {
	if (typeof value === 'number') return String(value);
	const plain = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
	return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
