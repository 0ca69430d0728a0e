import { Link } from '@tanstack/react-router';
import type { KeptRecord } from '../offline/field-store.js';
import { outbox, useNotSent, useOutbox } from '../offline/outbox.js';
import { useWords } from '../words/words.js';
import { SentBar } from './sent-bar.js';
import style from './technician.module.css';
import { WhyRefused } from './why-refused.js';

/** What is still only on this device, and what the service refused: why, and what can be done. */
export function UnsentPage() {
  const { t } = useWords();
  const records = useNotSent();
  const { sent, waiting, refused } = useOutbox();
  const list = (state: KeptRecord['state']) => records.filter((record) => record.state === state);
  return (
    <div className={style.page}>
      <title>{t('unsent.page')}</title>
      <Link to="/day" className="press-plain">
        {t('at.back-day')}
      </Link>
      <h1 className={style.answer}>{t('unsent.title', { n: waiting + refused })}</h1>
      <p className="pencil">{t('unsent.what', { sent })}</p>
      {refused > 0 ? (
        <section className="stack">
          <h2>{t('unsent.refused')}</h2>
          {list('refused').map((record) => (
            <Refusal key={record.id} record={record} />
          ))}
        </section>
      ) : null}
      {waiting > 0 ? (
        <section className="stack">
          <h2>{t('unsent.waiting')}</h2>
          <ul className={style.stops}>
            {list('waiting').map((record) => (
              <Waiting key={record.id} record={record} />
            ))}
          </ul>
          <button type="button" className="press" onClick={() => void outbox.sendAll()}>
            {t('unsent.try')}
          </button>
        </section>
      ) : null}
      <SentBar />
    </div>
  );
}

function Waiting({ record }: { readonly record: KeptRecord }) {
  const { t, moment } = useWords();
  return (
    <li>
      <p>{record.about}</p>
      <p className="pencil figure">{moment(record.at)}</p>
      <button type="button" className="press-plain" onClick={() => void outbox.takeBack(record)}>
        {t('unsent.take-back')}
      </button>
    </li>
  );
}

function Refusal({ record }: { readonly record: KeptRecord }) {
  const { t, moment } = useWords();
  return (
    <div className="note clay stack">
      <p>
        <strong>{record.about}</strong> <span className="figure">{moment(record.at)}</span>
      </p>
      <WhyRefused record={record} />
      <p>{t('unsent.refused-what')}</p>
      <div className="row">
        <button type="button" className="press-quiet" onClick={() => void outbox.sendAgain(record)}>
          {t('unsent.again')}
        </button>
        <button type="button" className="press-quiet" onClick={() => void outbox.takeBack(record)}>
          {t('unsent.throw-away')}
        </button>
      </div>
    </div>
  );
}
