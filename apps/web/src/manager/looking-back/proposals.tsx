import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { api, call } from '../../data/api.js';
import { serviceItemsQuery } from '../../data/queries.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import style from './looking-back.module.css';
import { type LifeRun, type Proposal, proposalsQuery, refitQuery } from './queries.js';
import { twoDigits } from './two-digits.js';

type Decision = 'accept' | 'refuse' | 'reverse';

/** Interval changes that the shop's own failures speak for. A person decides; what was accepted can be taken back. */
export function Proposals() {
  const { t } = useWords();
  const { data, error } = useQuery(proposalsQuery);
  if (error) return <Failure error={error} />;
  if (!data) return null;
  const open = data.filter((each) => each.state === 'proposed');
  const decided = data.filter((each) => each.state === 'accepted' || each.state === 'reversed').toReversed();
  return (
    <section className="stack" aria-labelledby="proposals">
      <div className="row">
        <h2 id="proposals">{t('proposals.title', { n: open.length })}</h2>
        <Refit />
      </div>
      {open.map((each) => (
        <OneProposal key={each.id} proposal={each} />
      ))}
      {decided.length === 0 ? null : (
        <details>
          <summary>{t('proposals.decided', { n: decided.length })}</summary>
          <div className="stack">
            {decided.map((each) => (
              <OneProposal key={each.id} proposal={each} />
            ))}
          </div>
        </details>
      )}
    </section>
  );
}

function OneProposal({ proposal }: { readonly proposal: Proposal }) {
  const words = useWords();
  const { t, hours, money, named, number, day, moment } = words;
  const { evidence, currentHours, proposedHours, state } = proposal;
  const client = useQueryClient();
  const [note, setNote] = useState('');
  const decide = useMutation({
    mutationFn: (what: Decision) =>
      call<Proposal>('POST', `/v1/reliability/interval-proposals/${proposal.id}/${what}`, {
        body: { note },
        version: proposal.version,
      }),
    onSettled: () =>
      client.invalidateQueries({
        predicate: ({ queryKey }) =>
          queryKey[0] === 'reliability' || queryKey[0] === serviceItemsQuery.queryKey[0] || queryKey[0] === 'due',
      }),
  });
  const press = (what: Decision, className: string) => (
    <button type="button" className={className} disabled={decide.isPending} onClick={() => decide.mutate(what)}>
      {t(`proposals.${what}`)}
    </button>
  );
  const work = words.work({ code: proposal.itemCode, title: proposal.itemTitle });
  return (
    <article className={style.proposal} aria-label={work}>
      <div className="tight">
        <h3>
          {work}, {named(`class.${proposal.machineClass}`, proposal.machineClass)}
        </h3>
        <p className={style.change}>
          <span className="figure">{currentHours === null ? '–' : hours(Number(currentHours))}</span> →{' '}
          <strong className="figure">{hours(Number(proposedHours))}</strong>
        </p>
        <p>{t('proposals.saves', { saves: money(proposal.savesCentsPerThousandHours) })}</p>
        <p>
          {t('proposals.evidence', {
            low: evidence.lowHours === null ? '–' : hours(twoDigits(evidence.lowHours)),
            high: evidence.highHours === null ? t('back.open') : hours(twoDigits(evidence.highHours)),
            failures: evidence.failures,
            lives: evidence.lives,
          })}
        </p>
        <p className="small pencil">
          {t('proposals.proposed-on', { day: day(proposal.proposedOn) })}
          {proposal.decidedAt === null ? null : ` ${t('proposals.accepted-on', { day: moment(proposal.decidedAt) })}`}
          {proposal.reversedAt === null ? null : ` ${t('proposals.reversed-on', { day: moment(proposal.reversedAt) })}`}
          {proposal.decisionNote === '' ? null : ` “${proposal.decisionNote}”`}
        </p>
        <details className="small">
          <summary>{t('back.assumptions')}</summary>
          <p>
            {t(`proposals.rests-on-${evidence.basis}`, {
              failures: evidence.failures,
              shape: number(evidence.shape, 1),
              scale: hours(twoDigits(evidence.scaleHours)),
            })}
          </p>
        </details>
      </div>
      {state === 'reversed' ? null : (
        <div className="tight">
          <label className="field">
            <span className="label">{t('proposals.note')}</span>
            <input value={note} maxLength={500} onChange={(event) => setNote(event.target.value)} />
          </label>
          <div className="row">
            {state === 'proposed' ? (
              <>
                {press('accept', 'press')}
                {press('refuse', 'press-quiet')}
              </>
            ) : (
              press('reverse', 'press-quiet')
            )}
          </div>
          <Failure error={decide.error} />
        </div>
      )}
    </article>
  );
}

/** Lives are re-fitted each month by themselves; this asks for it now. */
function Refit() {
  const { t } = useWords();
  const client = useQueryClient();
  const ask = useMutation({ mutationFn: () => api.post<LifeRun>('/v1/reliability/refits', {}) });
  const run = useQuery({
    ...refitQuery(ask.data?.id ?? ''),
    enabled: ask.data !== undefined,
    refetchInterval: ({ state }) => (isUnderWay(state.data) ? 1000 : false),
  }).data;
  const isDone = run?.status === 'done';
  useEffect(() => {
    if (isDone) void client.invalidateQueries({ queryKey: proposalsQuery.queryKey });
  }, [isDone, client]);
  const isBusy = ask.isPending || (ask.data !== undefined && isUnderWay(run));
  return (
    <>
      <button type="button" className="press-quiet" disabled={isBusy} onClick={() => ask.mutate()}>
        {t(isBusy ? 'proposals.fitting' : 'proposals.refit')}
      </button>
      <Failure error={ask.error} />
      {run?.status === 'failed' ? <span className="note clay">{run.error}</span> : null}
      {isDone ? <span role="status">{t('proposals.fitted')}</span> : null}
    </>
  );
}

function isUnderWay(run: LifeRun | undefined): boolean {
  return run === undefined || run.status === 'asked' || run.status === 'running';
}
