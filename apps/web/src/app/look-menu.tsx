import { LANGUAGES, type Language } from '../words/language.js';
import { setLanguage, useWords } from '../words/words.js';
import { type Preferences, preferences, usePreferences } from './preferences.js';
import style from './shell.module.css';

const NAMES: Readonly<Record<Language, string>> = { en: 'English', es: 'Español' };

/** Language and light of this device. */
export function LookMenu() {
  const { t } = useWords();
  const { language, light } = usePreferences();
  return (
    <div className={style.look}>
      <label>
        <span className="unseen">{t('look.language')}</span>
        <select value={language} onChange={(event) => setLanguage(event.target.value as Language)}>
          {LANGUAGES.map((each) => (
            <option key={each} value={each} lang={each}>
              {NAMES[each]}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span className="unseen">{t('look.light')}</span>
        <select
          value={light}
          onChange={(event) => preferences.change({ light: event.target.value as Preferences['light'] })}
        >
          <option value="auto">{t('look.auto')}</option>
          <option value="light">{t('look.day')}</option>
          <option value="dark">{t('look.dark')}</option>
        </select>
      </label>
    </div>
  );
}
