import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { call } from '../../data/api.js';
import type { Machine, Site, TelematicsUnit } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import style from './heard-from.module.css';

interface Props {
  readonly unit: TelematicsUnit;
  readonly machines: readonly Machine[];
  readonly sites: readonly Site[];
}

/** Says which of the shop's machines a unit is, or that it is none of them. */
export function MatchForm({ unit, machines, sites }: Props) {
  const { t } = useWords();
  const client = useQueryClient();
  const [chosen, setChosen] = useState('');
  const match = useMutation({
    mutationFn: (machineId: string | null) =>
      call<TelematicsUnit>('PUT', `/v1/telematics/units/${unit.id}/machine`, {
        body: { machineId },
        version: unit.version,
      }),
    onSettled: () =>
      client.invalidateQueries({
        predicate: ({ queryKey }) => ['telematics-units', 'readings', 'shop'].includes(String(queryKey[0])),
      }),
  });
  return (
    <form
      className={style.match}
      onSubmit={(event) => {
        event.preventDefault();
        if (chosen !== '') match.mutate(chosen);
      }}
    >
      <label className="field">
        <span className="label">{t('heard.which')}</span>
        <select value={chosen} onChange={(event) => setChosen(event.target.value)}>
          <option value="">–</option>
          {sites.map((site) => (
            <optgroup key={site.id} label={site.name}>
              {machines
                .filter((machine) => machine.siteId === site.id)
                .map((machine) => (
                  <option key={machine.id} value={machine.id}>
                    {[machine.code, machine.maker, machine.model, machine.serial].filter(Boolean).join(' · ')}
                  </option>
                ))}
            </optgroup>
          ))}
        </select>
      </label>
      <div className="row">
        <button type="submit" className="press" disabled={chosen === '' || match.isPending}>
          {t('heard.match')}
        </button>
        {unit.matchedBy === 'hand' ? null : (
          <button type="button" className="press-quiet" disabled={match.isPending} onClick={() => match.mutate(null)}>
            {t('heard.put-aside')}
          </button>
        )}
      </div>
      <Failure error={match.error} />
    </form>
  );
}
