import { useState } from 'react';
import type { FieldMachine } from '../data/types.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';
import style from './technician.module.css';

const FEELS = ['smooth', 'rough', 'locked'] as const;
const WEARS = ['good', 'glazed', 'cracked', 'frayed'] as const;
const MM_PER_INCH = 25.4;
const THICKNESS = { least: 2, most: 10, usual: 6.4 };

interface Props {
  readonly machine: FieldMachine;
  readonly record: Recorder;
}

/** What was measured or felt: sliders and choices, not prose. Each belongs to the work that it calls for. */
export function FindingForms({ machine, record }: Props) {
  const { t } = useWords();
  const has = (code: string) => machine.itemCodes.some((item) => item.code === code);
  return (
    <details>
      <summary>{t('finding.title')}</summary>
      <div className="stack">
        {has('replace-blades') ? <BladeThickness record={record} /> : null}
        {has('replace-spindle-bearings') ? <BearingFeel spindles={machine.spindles} record={record} /> : null}
        {has('replace-deck-belt') ? <BeltWear record={record} /> : null}
      </div>
    </details>
  );
}

function BladeThickness({ record }: { readonly record: Recorder }) {
  const { t, number, units } = useWords();
  const [mm, setMm] = useState(THICKNESS.usual);
  const metric = `${number(mm, 1)} mm`;
  const inches = `${number(mm / MM_PER_INCH, 3)} in`;
  const said = units === 'us' ? `${inches} (${metric})` : `${metric} (${inches})`;
  const words = t('finding.blade', { thickness: said });
  return (
    <fieldset className="stack">
      <legend>{t('finding.blade-title')}</legend>
      <label className="field">
        <span className={style.torque}>{said}</span>
        <input
          type="range"
          className={style.slider}
          aria-label={t('finding.blade-title')}
          min={THICKNESS.least}
          max={THICKNESS.most}
          step={0.1}
          value={mm}
          onChange={(event) => setMm(Number(event.target.value))}
        />
      </label>
      <button
        type="button"
        className="press-quiet"
        onClick={() =>
          void record(
            {
              kind: 'finding',
              itemCode: 'replace-blades',
              slot: null,
              observation: words,
              measures: { bladeThicknessMm: mm },
              followUp: null,
            },
            words,
          )
        }
      >
        {t('finding.save')}
      </button>
    </fieldset>
  );
}

function BearingFeel({ spindles, record }: { readonly spindles: number; readonly record: Recorder }) {
  const { t } = useWords();
  const [spindle, setSpindle] = useState(1);
  const [feel, setFeel] = useState<(typeof FEELS)[number] | null>(null);
  const save = () => {
    const words = t('finding.bearing', { n: spindle, feel: t(`feel.${feel!}`) });
    return record(
      {
        kind: 'finding',
        itemCode: 'replace-spindle-bearings',
        slot: `spindle ${spindle}`,
        observation: words,
        measures: { feel: feel! },
        followUp: feel === 'smooth' ? null : words,
      },
      words,
    );
  };
  return (
    <fieldset className="stack">
      <legend>{t('finding.bearing-title')}</legend>
      <div className={style.choices}>
        {Array.from({ length: spindles }, (_, index) => index + 1).map((n) => (
          <label key={n}>
            <input type="radio" name="spindle" checked={spindle === n} onChange={() => setSpindle(n)} />
            {t('slot.spindle', { n })}
          </label>
        ))}
      </div>
      <div className={style.choices}>
        {FEELS.map((each) => (
          <label key={each}>
            <input type="radio" name="feel" checked={feel === each} onChange={() => setFeel(each)} />
            {t(`feel.${each}`)}
          </label>
        ))}
      </div>
      <button type="button" className="press-quiet" disabled={feel === null} onClick={() => void save()}>
        {t('finding.save')}
      </button>
    </fieldset>
  );
}

function BeltWear({ record }: { readonly record: Recorder }) {
  const { t } = useWords();
  const [wear, setWear] = useState<(typeof WEARS)[number] | null>(null);
  const save = () => {
    const words = t('finding.belt', { wear: t(`wear.${wear!}`) });
    return record(
      {
        kind: 'finding',
        itemCode: 'replace-deck-belt',
        slot: null,
        observation: words,
        measures: { beltWear: wear! },
        followUp: wear === 'good' || wear === 'glazed' ? null : words,
      },
      words,
    );
  };
  return (
    <fieldset className="stack">
      <legend>{t('finding.belt-title')}</legend>
      <div className={style.choices}>
        {WEARS.map((each) => (
          <label key={each}>
            <input type="radio" name="wear" checked={wear === each} onChange={() => setWear(each)} />
            {t(`wear.${each}`)}
          </label>
        ))}
      </div>
      <button type="button" className="press-quiet" disabled={wear === null} onClick={() => void save()}>
        {t('finding.save')}
      </button>
    </fieldset>
  );
}
