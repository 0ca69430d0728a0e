import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { api, queryOf, send } from '../data/api.js';
import { useDraft } from '../data/draft.js';
import { symptomsQuery } from '../data/queries.js';
import type { Machine, RoadCall } from '../data/types.js';
import { ChooseFiles } from '../design/choose-files.js';
import { Failure } from '../design/failure.js';
import { shrinkPhoto } from '../offline/shrink-photo.js';
import { useWords } from '../words/words.js';

interface Draft {
  readonly code: string;
  readonly words: string;
  readonly answers: Readonly<Record<string, string>>;
  readonly usable: boolean;
}
const EMPTY: Draft = { code: '', words: '', answers: {}, usable: false };

interface SentReport {
  readonly callKey: string;
  readonly photoId: string;
  call: RoadCall | null;
}

function newReport(): SentReport {
  return {
    callKey: crypto.randomUUID(),
    photoId: crypto.randomUUID(),
    call: null,
  };
}

/** What the machine does, the questions that belong to it, a photo, and whether it can still be used. */
export function TroubleForm({ machine }: { readonly machine: Machine }) {
  const words = useWords();
  const { t } = words;
  const client = useQueryClient();
  const symptoms = useQuery(symptomsQuery).data?.items ?? [];
  const draft = useDraft<Draft>(`trouble.${machine.id}`, EMPTY);
  const [photo, setPhoto] = useState<Blob | null>(null);
  // Pressed again after half of it went through, only the other half is sent.
  const sent = useRef(newReport());
  const { code, answers, usable } = draft.value;
  const picked = symptoms.find((each) => each.code === code);
  const told = draft.value.words.trim();
  const report = useMutation({
    mutationFn: async () => {
      sent.current.call ??= await api.post<RoadCall>(
        '/v1/road-calls',
        {
          machineId: machine.id,
          symptom: told || picked?.title,
          usable,
          ...(picked ? { symptomCode: picked.code } : {}),
          answers: Object.fromEntries(Object.entries(answers).filter(([, answer]) => answer.trim() !== '')),
        },
        sent.current.callKey,
      );
      if (photo) {
        const { id: roadCallId, calledAt: takenAt } = sent.current.call;
        const place = queryOf({ machineId: machine.id, roadCallId, takenAt });
        await send('PUT', `/v1/photos/${sent.current.photoId}${place}`, { file: photo });
      }
    },
    onSuccess: async () => {
      sent.current = newReport();
      draft.drop(EMPTY);
      setPhoto(null);
      await client.invalidateQueries();
    },
  });
  return (
    <details>
      <summary>{t('trouble.title')}</summary>
      <div className="stack">
        <label className="field">
          <span className="label">{t('call.symptom')}</span>
          <select value={code} onChange={(event) => draft.change({ code: event.target.value, answers: {} })}>
            <option value="">{t('trouble.other')}</option>
            {symptoms.map((each) => (
              <option key={each.code} value={each.code}>
                {words.named(`symptom.${each.code}`, each.title)}
              </option>
            ))}
          </select>
        </label>
        {picked ? (
          <ul className="note clay">
            {picked.cautions.map((caution) => (
              <li key={caution}>{words.sentence(caution)}</li>
            ))}
          </ul>
        ) : null}
        {picked?.questions.map(({ code: name, question }) => (
          <label key={name} className="field">
            <span className="label">{words.named(`question.${name}`, question)}</span>
            <input
              value={answers[name] ?? ''}
              maxLength={500}
              onChange={(event) => draft.change({ answers: { ...answers, [name]: event.target.value } })}
            />
          </label>
        ))}
        <label className="field">
          <span className="label">{t('trouble.words')}</span>
          <textarea
            value={draft.value.words}
            maxLength={1000}
            onChange={(event) => draft.change({ words: event.target.value })}
          />
        </label>
        <div className="row">
          <ChooseFiles
            label={t(photo ? 'trouble.other-photo' : 'photo.take')}
            accept="image/*"
            camera
            onChoose={([file]) => {
              if (file) void shrinkPhoto(file).then(setPhoto);
            }}
          />
          {photo ? <span role="status">{t('trouble.has-photo')}</span> : null}
        </div>
        <label className="check">
          <input
            type="checkbox"
            checked={usable}
            onChange={(event) => draft.change({ usable: event.target.checked })}
          />
          {t('call.still-usable')}
        </label>
        <Failure error={report.error} />
        {report.isSuccess ? <p role="status">{t('trouble.told')}</p> : null}
        <button
          type="button"
          className="press"
          disabled={(!picked && told === '') || report.isPending}
          onClick={() => report.mutate()}
        >
          {t('trouble.go')}
        </button>
      </div>
    </details>
  );
}
