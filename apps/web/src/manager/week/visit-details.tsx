import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import { api, queryOf } from '../../data/api.js';
import type { Machine, Site, Technician, Visit, VisitItem } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { FileButton } from '../../design/file-button.js';
import { Why } from '../../design/why.js';
import { useWords, type Words } from '../../words/words.js';
import { AnswerOfSite } from './answer-of-site.js';
import { Evidence } from './evidence.js';
import { HoldAndBar } from './hold-and-bar.js';
import type { Hindrance } from './unmade-visits.js';
import style from './week.module.css';

interface Props {
  readonly visit: Visit;
  readonly sites: readonly Site[];
  readonly machines: readonly Machine[];
  readonly technicians: readonly Technician[];
  /** Why nobody can make it where it stands, if so. */
  readonly hindrance: Hindrance | null;
  readonly onMove: () => void;
  readonly onClose: () => void;
}

/** Why this visit, what is done there, and the promise to the customer. */
export function VisitDetails({ visit, sites, machines, technicians, hindrance, onMove, onClose }: Props) {
  const technician = technicians.find((each) => each.id === visit.technicianId);
  const { t, day, range, minutes, money, ...words } = useWords();
  const site = sites.find((each) => each.id === visit.siteId);
  const machineOf = new Map(machines.map((machine) => [machine.id, machine]));
  const groups = Map.groupBy(visit.items, (item) => item.machineId);
  const sheet = useRef<HTMLElement>(null);
  // On a phone the details stand below the strips: they come into view when a visit is chosen.
  useEffect(() => {
    if (visit.id !== '' && matchMedia('(max-width: 900px)').matches) sheet.current?.scrollIntoView({ block: 'start' });
  }, [visit.id]);
  return (
    <section ref={sheet} className={style.details} aria-labelledby="visit-title">
      <div className="row" style={{ justifyContent: 'space-between' }}>
        <h2 id="visit-title">{site?.name}</h2>
        <button type="button" className="press-plain" onClick={onClose}>
          {t('close')}
        </button>
      </div>
      <p>
        {day(visit.date)}, <span className="figure">{range(visit.startAt, visit.endAt)}</span> ·{' '}
        {t(`visit.${visit.state}`)}
      </p>
      {hindrance === null ? null : (
        <p className={style.breaks}>
          ✕ {t('unmade.here', { why: t(`unmade.${hindrance}`, { technician: technician?.name ?? t('unknown') }) })}
        </p>
      )}
      <p>{visitReason(visit, { t, money, minutes })}</p>
      {visit.answer ? <AnswerOfSite key={visit.answer.id} visit={visit} answer={visit.answer} /> : null}
      <PromiseForm key={visit.id + visit.version} visit={visit} canBeMade={hindrance === null} />
      {visit.state === 'done' ? null : <HoldAndBar key={visit.id} visit={visit} onMove={onMove} />}
      <FileButton path={`/v1/visits/${visit.id}/visit-sheet.pdf${queryOf({ language: words.language })}`}>
        {t('print.visit-sheet')}
      </FileButton>
      <ul className={style.machines}>
        {[...groups].map(([machineId, items]) => (
          <li key={machineId}>
            <h3>
              <Link to="/machines/$id/forecast" params={{ id: machineId }}>
                {machineOf.get(machineId)?.code ?? t('unknown')}
              </Link>{' '}
              <span className="pencil">{words.named(`class.${machineOf.get(machineId)?.machineClass}`, '')}</span>
            </h3>
            {items.some((item) => item.isElsewhere) ? (
              <p className={style.breaks}>
                ✕{' '}
                {t('elsewhere.here', {
                  site: sites.find(({ id }) => id === machineOf.get(machineId)?.siteId)?.name ?? t('unknown'),
                })}
              </p>
            ) : null}
            <ul>
              {items.map((item) => (
                <li key={item.id}>
                  <Why label={words.work(item)} title={words.work(item)}>
                    <p>{itemReason(item, { t, money, minutes })}</p>
                    <Evidence item={item} />
                  </Why>{' '}
                  <span className="figure pencil">{minutes(item.minutes)}</span>{' '}
                  <span className={style.role}>{t(`role.${item.role}`)}</span>
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
      {site?.gateNotes ? (
        <p className="note">
          <strong>{t('visit.gate')}</strong> {site.gateNotes}
        </p>
      ) : null}
      {site?.cautions ? (
        <p className="note straw">
          <strong>{t('visit.cautions')}</strong> {site.cautions}
        </p>
      ) : null}
      <p className="small pencil">{t('safety')}</p>
    </section>
  );
}

type Speaker = Pick<Words, 't' | 'money' | 'minutes'>;

/** The planner's figures as a sentence in the reader's language. */
function visitReason(visit: Visit, { t, money, minutes }: Speaker): string {
  const count = (role: VisitItem['role']) => visit.items.filter((item) => item.role === role).length;
  const [must, anchors, riders] = [count('must-do'), count('anchor'), count('rider')];
  const shared = visit.items.reduce((sum, item) => sum + item.sharedMinutes, 0);
  const saves = visit.marginalCents;
  return [
    must > 0 ? t('why.must', { n: must, riders }) : t('why.anchors', { n: anchors, riders }),
    shared > 0 ? t('why.shared', { time: minutes(shared) }) : '',
    saves === null
      ? ''
      : saves < 0
        ? t('why.saves', { money: money(-saves) })
        : t('why.costs', { money: money(saves) }),
  ]
    .filter(Boolean)
    .join(' ');
}

function itemReason(item: VisitItem, { t, money, minutes }: Speaker): string {
  return [
    t(`role-why.${item.role}`),
    item.sharedMinutes > 0 ? t('why.item-shared', { time: minutes(item.sharedMinutes) }) : '',
    (item.waitingCents ?? 0) > 0 ? t('why.item-waiting', { money: money(item.waitingCents!) }) : '',
  ]
    .filter(Boolean)
    .join(' ');
}

const SLOT_MINUTES = [15, 30, 60, 120] as const;

/** Promises the visit, or takes it out; what a broken promise is worth is the shop's to say. */
function PromiseForm({ visit, canBeMade }: { readonly visit: Visit; readonly canBeMade: boolean }) {
  const { t, range } = useWords();
  const client = useQueryClient();
  const [slot, setSlot] = useState<number>(30);
  const [sure, setSure] = useState(false);
  const around = (minutes: number) => new Date(Date.parse(visit.startAt) + minutes * 60_000).toISOString();
  const change = useMutation({
    mutationFn: (body: object) => api.patch<Visit>(`/v1/visits/${visit.id}`, body, visit.version),
    onSettled: () => client.invalidateQueries(),
  });
  if (visit.state === 'done') return null;
  return (
    <div className="tight">
      {visit.promisedFrom !== null && visit.promisedTo !== null ? (
        <p>
          <strong>{t('promise.is', { slot: range(visit.promisedFrom, visit.promisedTo) })}</strong>
        </p>
      ) : null}
      <div className="row">
        {canBeMade ? (
          <>
            <button
              type="button"
              className="press"
              disabled={change.isPending}
              onClick={() =>
                change.mutate({ state: 'confirmed', promisedFrom: around(-slot), promisedTo: around(slot) })
              }
            >
              {t(visit.state === 'confirmed' ? 'promise.anew' : 'promise.do', {
                slot: range(around(-slot), around(slot)),
              })}
            </button>
            <label className="small pencil">
              {t('promise.slot')}{' '}
              <select className={style.choice} value={slot} onChange={(event) => setSlot(Number(event.target.value))}>
                {SLOT_MINUTES.map((each) => (
                  <option key={each} value={each}>
                    ± {each} min
                  </option>
                ))}
              </select>
            </label>
          </>
        ) : null}
        {sure ? (
          <button type="button" className="press-quiet" onClick={() => change.mutate({ state: 'cancelled' })}>
            {t('visit.take-out-sure')}
          </button>
        ) : (
          <button type="button" className="press-plain" onClick={() => setSure(true)}>
            {t('visit.take-out')}
          </button>
        )}
      </div>
      <Failure error={change.error} />
    </div>
  );
}
