/** What this person chose on this device. */

export const themes = ['paper', 'night', 'sun'] as const;
export type Theme = (typeof themes)[number];
export const languages = ['en', 'fr'] as const;
export type ScreenLanguage = (typeof languages)[number];

export interface Settings {
  language: ScreenLanguage;
  theme: Theme;
  /** Who types; a role, as in "Recorder A". */
  who: string;
  /** The survey that was last open. */
  surveyId: string | null;
}

const place = 'slateline-settings';

export const settings: Settings = $state(readSettings());

export function keepSettings(): void {
  document.documentElement.lang = settings.language;
  document.documentElement.dataset['theme'] = settings.theme;
  try {
    localStorage.setItem(place, JSON.stringify(settings));
  } catch {
    // A browser that keeps nothing still shows everything.
  }
}

function readSettings(): Settings {
  const usual: Settings = {
    language: navigator.language.startsWith('fr') ? 'fr' : 'en',
    theme: matchMedia('(prefers-color-scheme: dark)').matches ? 'night' : 'paper',
    who: '',
    surveyId: null,
  };
  try {
    const kept = JSON.parse(localStorage.getItem(place) ?? '{}') as Partial<Settings>;
    return {
      language: languages.find((one) => one === kept.language) ?? usual.language,
      theme: themes.find((one) => one === kept.theme) ?? usual.theme,
      who: typeof kept.who === 'string' ? kept.who : '',
      surveyId: typeof kept.surveyId === 'string' ? kept.surveyId : null,
    };
  } catch {
    return usual;
  }
}
