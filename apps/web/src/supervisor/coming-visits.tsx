import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { api } from '../data/api.js';
import { useDraft } from '../data/draft.js';
import type { Machine, Visit, VisitAnswer } from '../data/types.js';
import { Failure } from '../design/failure.js';
import { addDays } from '../words/local-date.js';
import { useWords } from '../words/words.js';
import style from './grounds.module.css';

const SHOWN = 3;
/** Days after the planned one that can be ticked as suiting. */
const DAYS_OFFERED = 7;

interface Props {
  readonly visits: readonly Visit[];
  readonly machines: readonly Machine[];
}

/** The visits to come at a site: when, on which machines, and what we say to it. */
export function ComingVisits({ visits, machines }: Props) {
  const { t } = useWords();
  if (visits.length === 0) return <p>{t('grounds.no-visit')}</p>;
  return (
    <ol className={style.visits}>
      {visits.slice(0, SHOWN).map((visit) => (
        <li key={visit.id} className="stack">
          <ComingVisit visit={visit} machines={machines} />
        </li>
      ))}
    </ol>
  );
}

function ComingVisit({ visit, machines }: { readonly visit: Visit; readonly machines: readonly Machine[] }) {
  const { t, day, range, ...words } = useWords();
  const client = useQueryClient();
  const [isAsking, setAsking] = useState(false);
  const key = useRef(crypto.randomUUID());
  const say = useMutation({
    mutationFn: (body: { kind: 'suits' | 'move'; reason?: string; days?: readonly string[] }) =>
      api.post<VisitAnswer>(`/v1/visits/${visit.id}/answers`, body, key.current),
    onSuccess: () => setAsking(false),
    onSettled: () => {
      key.current = crypto.randomUUID();
      return client.invalidateQueries({ queryKey: ['visits'] });
    },
  });
  const slot = {
    day: day(visit.date),
    slot: range(visit.promisedFrom ?? visit.startAt, visit.promisedTo ?? visit.endAt),
  };
  const works = machines.flatMap(({ id, code }) => {
    const own = visit.items.filter((item) => item.machineId === id).map((item) => words.work(item));
    return own.length === 0 ? [] : [{ code, own }];
  });
  const isSettled = visit.answer?.kind === 'suits' && visit.answer.aboutStart === visit.startAt;
  const isOpen = visit.answer?.kind === 'move' && visit.answer.state === 'open';
  return (
    <>
      <p>
        <strong>{t(visit.state === 'confirmed' ? 'grounds.promised' : 'grounds.planned', slot)}</strong>
      </p>
      <details>
        <summary>{t('grounds.what', { n: works.length })}</summary>
        <ul>
          {works.map(({ code, own }) => (
            <li key={code}>
              <strong>{code}</strong> {own.join(', ')}
            </li>
          ))}
        </ul>
      </details>
      <Said visit={visit} />
      {isAsking ? (
        <AskToMove
          visit={visit}
          isBusy={say.isPending}
          onAsk={(body) => say.mutate(body)}
          onLeave={() => setAsking(false)}
        />
      ) : (
        <div className="row">
          {isSettled ? null : (
            <button
              type="button"
              className={isOpen ? 'press-quiet' : 'press'}
              disabled={say.isPending}
              onClick={() => say.mutate({ kind: 'suits' })}
            >
              {t('answer.say-suits')}
            </button>
          )}
          <button type="button" className="press-quiet" onClick={() => setAsking(true)}>
            {t(isOpen ? 'answer.ask-again' : 'answer.ask')}
          </button>
        </div>
      )}
      <Failure error={say.error} />
    </>
  );
}

/** What was said of the visit last, and what the shop said to that. */
function Said({ visit: { answer, startAt } }: { readonly visit: Visit }) {
  const { t, day } = useWords();
  if (!answer) return null;
  if (answer.kind === 'suits')
    return <p role="status">{t(answer.aboutStart === startAt ? 'answer.said-suits' : 'answer.time-changed')}</p>;
  const days = answer.days.length > 0 ? t('answer.days', { days: answer.days.map(day).join('; ') }) : '';
  return (
    <div className={answer.state === 'declined' ? 'note clay tight' : 'note tight'} role="status">
      <p>
        {t('answer.asked', { reason: answer.reason })} {days}
      </p>
      <p>
        <strong>{t(`answer.state.${answer.state as 'open' | 'met' | 'declined'}`)}</strong> {answer.reply}
      </p>
    </div>
  );
}

function AskToMove({
  visit,
  isBusy,
  onAsk,
  onLeave,
}: {
  readonly visit: Visit;
  readonly isBusy: boolean;
  readonly onAsk: (body: { kind: 'move'; reason: string; days: readonly string[] }) => void;
  readonly onLeave: () => void;
}) {
  const { t, day } = useWords();
  const draft = useDraft<{ reason: string; days: readonly string[] }>(`ask.${visit.id}`, { reason: '', days: [] });
  const { reason, days } = draft.value;
  const offered = Array.from({ length: DAYS_OFFERED }, (_, index) => addDays(visit.date, index + 1));
  const toggle = (date: string) =>
    draft.change({ days: days.includes(date) ? days.filter((each) => each !== date) : [...days, date] });
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        onAsk({ kind: 'move', reason: reason.trim(), days });
        draft.drop({ reason: '', days: [] });
      }}
    >
      <label className="field">
        <span className="label">{t('answer.why')}</span>
        <input value={reason} maxLength={500} onChange={(event) => draft.change({ reason: event.target.value })} />
      </label>
      <fieldset className="tight">
        <legend>{t('answer.which-days')}</legend>
        {offered.map((date) => (
          <label key={date} className={`check ${style.tick}`}>
            <input type="checkbox" checked={days.includes(date)} onChange={() => toggle(date)} />
            {day(date)}
          </label>
        ))}
      </fieldset>
      <div className="row">
        <button type="submit" className="press" disabled={reason.trim() === '' || isBusy}>
          {t('answer.ask-go')}
        </button>
        <button type="button" className="press-plain" onClick={onLeave}>
          {t('cancel')}
        </button>
      </div>
    </form>
  );
}
