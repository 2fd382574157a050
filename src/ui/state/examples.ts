/** The example cases, as the text of their files. */
export const EXAMPLES: readonly string[] = Object.values(
	import.meta.glob<string>('../../../personas/clients/*/case.json', { query: '?raw', import: 'default', eager: true })
);
