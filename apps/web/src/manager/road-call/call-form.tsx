import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useRef } from 'react';
import { api, Refused } from '../../data/api.js';
import { useDraft } from '../../data/draft.js';
import { symptomsQuery } from '../../data/queries.js';
import type { Machine, RoadCall, Site } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';

interface Draft {
  readonly machine: string;
  readonly symptomCode: string;
  readonly symptom: string;
  readonly answers: Readonly<Record<string, string>>;
  readonly usable: boolean;
}
const EMPTY: Draft = { machine: '', symptomCode: '', symptom: '', answers: {}, usable: false };

interface Props {
  readonly machines: readonly Machine[];
  readonly sites: readonly Site[];
  readonly onTaken: (id: string) => void;
}

/** What the caller says: which machine, what it does, and the questions that belong to it. */
export function CallForm({ machines, sites, onTaken }: Props) {
  const words = useWords();
  const { t } = words;
  const client = useQueryClient();
  const draft = useDraft<Draft>('road-call', EMPTY);
  const symptoms = useQuery(symptomsQuery).data?.items ?? [];
  const key = useRef(crypto.randomUUID());
  const { machine: typed, symptomCode, symptom, answers, usable } = draft.value;
  const machine = machines.find((each) => each.code.toLowerCase() === typed.split(' ')[0]?.toLowerCase());
  const picked = symptoms.find((each) => each.code === symptomCode);
  const siteOf = new Map(sites.map((site) => [site.id, site.name]));
  const take = useMutation({
    mutationFn: () =>
      api.post<RoadCall>(
        '/v1/road-calls',
        {
          machineId: machine!.id,
          symptom: symptom.trim() || picked?.title,
          usable,
          ...(picked ? { symptomCode: picked.code } : {}),
          answers: Object.fromEntries(Object.entries(answers).filter(([, answer]) => answer.trim() !== '')),
        },
        key.current,
      ),
    onSuccess: async (call) => {
      key.current = crypto.randomUUID();
      draft.drop(EMPTY);
      await client.invalidateQueries();
      onTaken(call.id);
    },
    onError: (error) => {
      if (error instanceof Refused) key.current = crypto.randomUUID();
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    take.mutate();
  };
  const isWhole = machine !== undefined && (picked !== undefined || symptom.trim() !== '');
  return (
    <form className="stack" onSubmit={submit}>
      <div className="field">
        <label htmlFor="call-machine">{t('due.machine')}</label>
        <input
          id="call-machine"
          list="call-machines"
          autoComplete="off"
          value={typed}
          onChange={(event) => draft.change({ machine: event.target.value })}
        />
        <datalist id="call-machines">
          {machines.map((each) => (
            <option key={each.id} value={`${each.code} ${siteOf.get(each.siteId) ?? ''}`} />
          ))}
        </datalist>
        {typed !== '' && !machine ? <span className="small pencil">{t('call.no-machine')}</span> : null}
      </div>
      <div className="field">
        <label htmlFor="call-symptom">{t('call.symptom')}</label>
        <select
          id="call-symptom"
          value={symptomCode}
          onChange={(event) => draft.change({ symptomCode: event.target.value, answers: {} })}
        >
          <option value="">{t('call.other')}</option>
          {symptoms.map((each) => (
            <option key={each.code} value={each.code}>
              {words.named(`symptom.${each.code}`, each.title)}
            </option>
          ))}
        </select>
      </div>
      {picked?.questions.map((question) => (
        <label key={question.code} className="field">
          <span className="label">{words.named(`question.${question.code}`, question.question)}</span>
          <input
            value={answers[question.code] ?? ''}
            onChange={(event) => draft.change({ answers: { ...answers, [question.code]: event.target.value } })}
          />
        </label>
      ))}
      <label className="field">
        <span className="label">{t('call.words')}</span>
        <textarea value={symptom} onChange={(event) => draft.change({ symptom: event.target.value })} />
      </label>
      <label className="check">
        <input type="checkbox" checked={usable} onChange={(event) => draft.change({ usable: event.target.checked })} />
        {t('call.still-usable')}
      </label>
      <Failure error={take.error} />
      <div className="row">
        <button type="submit" className="press" disabled={!isWhole || take.isPending}>
          {t('call.take')}
        </button>
        {draft.touched ? (
          <button type="button" className="press-plain" onClick={() => draft.drop(EMPTY)}>
            {t('draft.drop')}
          </button>
        ) : null}
      </div>
    </form>
  );
}
