import type { Mark } from '#core/case/accessory.ts';

/** How far a place has come, as it is said on the screen. */
export const STAGE_WORDS: Readonly<Record<Mark['stage'], string>> = {
	proposed: 'free',
	pinned: 'held here',
	tried: 'tried here',
	adopted: 'agreed here',
	marked: 'marked on the wall',
	built: 'built'
};
