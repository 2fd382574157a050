import type { LengthUnit } from '#core/units/length.ts';

/** The three lights of the screen. */
const THEMES = ['paper', 'night', 'sun'] as const;

/** One of the three lights. */
export type Theme = (typeof THEMES)[number];

/** What each light is called. */
export const THEME_WORDS: Readonly<Record<Theme, string>> = { paper: 'paper', night: 'night', sun: 'bright sun' };

const KEPT_AT = 'graspline-theme';

/** What belongs to this device and this reader, never to a case. What is displayed moves nothing. */
class Settings {
	theme = $state<Theme>('paper');
	/** The unit lengths are shown in; the case's own tape when null. */
	shownUnit = $state<LengthUnit | null>(null);

	/** Takes the light this device had last time. */
	wake(): void {
		const kept = localStorage.getItem(KEPT_AT);
		this.show(THEMES.find((theme) => theme === kept) ?? 'paper');
	}

	nextTheme(): void {
		this.show(THEMES[(THEMES.indexOf(this.theme) + 1) % THEMES.length] ?? 'paper');
		localStorage.setItem(KEPT_AT, this.theme);
	}

	private show(theme: Theme): void {
		this.theme = theme;
		document.documentElement.dataset['theme'] = theme;
	}
}

/** The one settings of this page. */
export const settings = new Settings();
